package org.seafettle.difference;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.seafettle.assessment.Result;
import org.seafettle.catalogue.Check;
import org.seafettle.catalogue.Criterion;
import org.seafettle.catalogue.Facts;
import org.seafettle.catalogue.ReadingSpec;
import org.seafettle.quantity.Quantity;
import org.seafettle.survey.Component;
import org.seafettle.survey.Evidence;
import org.seafettle.survey.Finding;
import org.seafettle.survey.Survey;

/**
 * One reading then and now, in the catalogue's unit.
 *
 * @param check the check
 * @param component on what
 * @param spec which reading
 * @param then as it was read then
 * @param now as it was read now
 */
public record ReadingChange(
    Check check, Component component, ReadingSpec spec, Value then, Value now) {

  /**
   * A value.
   *
   * @param recorded as it was written down
   * @param value in the unit of the catalogue
   * @param uncertainty expanded, k = 2, in that unit: as stated, else as usual for the instrument;
   *     empty where neither is known
   */
  public record Value(Quantity recorded, double value, OptionalDouble uncertainty) {}

  /** Whether a difference is one. */
  public enum Proof {
    RISEN,
    FALLEN,
    /** The difference is no larger than its own uncertainty. */
    NOT_PROVEN,
    /** The uncertainty of at least one of the two is not known. */
    UNKNOWN
  }

  /** Now less then. */
  public double by() {
    return now.value() - then.value();
  }

  /** The expanded uncertainty of the difference of two independent readings: JCGM 100, 5.1. */
  public OptionalDouble uncertainty() {
    return then.uncertainty().isPresent() && now.uncertainty().isPresent()
        ? OptionalDouble.of(
            Math.hypot(then.uncertainty().getAsDouble(), now.uncertainty().getAsDouble()))
        : OptionalDouble.empty();
  }

  public Proof proof() {
    if (uncertainty().isEmpty()) {
      return Proof.UNKNOWN;
    }
    if (Math.abs(by()) <= uncertainty().getAsDouble()) {
      return Proof.NOT_PROVEN;
    }
    return by() > 0 ? Proof.RISEN : Proof.FALLEN;
  }

  /** Whether it is what its check asks first, and not read beside it. */
  public boolean first() {
    return check.criterion().readings().indexOf(spec) == 0;
  }

  static Stream<ReadingChange> of(Survey before, Result then, Survey today, Result now) {
    return now.check().criterion().readings().stream()
        .flatMap(
            spec ->
                value(before, then, spec)
                    .flatMap(
                        one ->
                            value(today, now, spec)
                                .map(
                                    other ->
                                        new ReadingChange(
                                            now.check(), now.component(), spec, one, other)))
                    .stream());
  }

  /** Several values of several cells or cylinders are no single reading. */
  private static Optional<Value> value(Survey survey, Result result, ReadingSpec spec) {
    var evidence = result.finding().map(Finding::evidence).orElse(Evidence.NONE);
    var all = evidence.all(spec.name());
    if (all.size() != 1) {
      return Optional.empty();
    }
    var facts = new Facts(survey, result.component(), result.check().id(), evidence);
    return Optional.of(
        new Value(
            all.get(0),
            all.get(0).in(spec.unit()),
            Criterion.uncertainty(facts, spec, all.get(0))));
  }
}

package org.seafettle.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.seafettle.quantity.MeasuredUnit;
import org.seafettle.quantity.Quantity;
import org.seafettle.survey.EngineType;

/**
 * How a check is judged. Each kind turns the facts into one number and the limits that hold for it;
 * a choice needs no number, since the surveyor's word is the outcome.
 */
public sealed interface Criterion permits Criterion.Choice, Criterion.Numbered, Interval {

  /** The readings that a finding may give. */
  List<ReadingSpec> readings();

  /** The names of the outcomes that the number can lead to. */
  List<String> reachable();

  /** The same on one kind of engine. */
  default List<String> reachable(EngineType engine) {
    return reachable();
  }

  /** Whether it can be judged by what the survey says of the component alone. */
  default boolean knowsWithoutReading() {
    return false;
  }

  /**
   * The number and its limits.
   *
   * @throws Unjudgeable where the facts do not suffice
   * @throws org.seafettle.problem.Refused where a formula does not hold for them
   */
  Measure measure(Facts facts);

  /** One of several words. */
  record Choice() implements Criterion {

    @Override
    public List<ReadingSpec> readings() {
      return List.of();
    }

    @Override
    public List<String> reachable() {
      return List.of();
    }

    @Override
    public Measure measure(Facts facts) {
      throw new Unjudgeable(Reason.of(Reason.Kind.NOT_RECORDED));
    }
  }

  /** A number that is held against limits. */
  sealed interface Numbered extends Criterion permits Scale, Derived, Spread {

    Limits limits();

    /** The unit of the number and its limits. */
    MeasuredUnit unit();

    @Override
    default List<String> reachable() {
      return limits().reachable();
    }

    @Override
    default List<String> reachable(EngineType engine) {
      return limits().reachable(engine);
    }
  }

  /**
   * A reading on a scale.
   *
   * @param reading what is read
   * @param limits the limits; without a case that covers, only the maker's limit can judge
   */
  record Scale(ReadingSpec reading, Limits limits) implements Numbered {

    @Override
    public MeasuredUnit unit() {
      return reading.unit();
    }

    @Override
    public List<ReadingSpec> readings() {
      return List.of(reading);
    }

    @Override
    public Measure measure(Facts facts) {
      var read = required(facts, reading);
      return limits.hold(
          facts,
          reading.name(),
          read.in(reading.unit()),
          reading.unit(),
          uncertainty(facts, reading, read),
          List.of(new Measure.Shown(reading.name(), read)));
    }
  }

  /**
   * A number computed from readings and from what is known of the component.
   *
   * @param derivation the computation
   * @param readings what it needs
   * @param unit the unit of its result
   * @param limits the limits of its result
   */
  record Derived(
      Derivation derivation, List<ReadingSpec> readings, MeasuredUnit unit, Limits limits)
      implements Numbered {

    public Derived {
      readings = List.copyOf(readings);
    }

    @Override
    public boolean knowsWithoutReading() {
      return derivation.knowsWithoutReading();
    }

    @Override
    public Measure measure(Facts facts) {
      var inputs = derivation.asTaken(Inputs.of(facts, readings));
      double value = derivation.derive(inputs);
      var shown = new ArrayList<Measure.Shown>();
      for (var spec : readings) {
        facts
            .evidence()
            .all(spec.name())
            .forEach(q -> shown.add(new Measure.Shown(spec.name(), q)));
      }
      return limits.hold(
          facts, derivation.word(), value, unit, inputs.spread(derivation::derive), shown);
    }
  }

  /**
   * How far several readings of one kind lie apart.
   *
   * @param reading what is read, once a cell or cylinder
   * @param relative whether the difference counts in per cent of the highest, or as it is
   * @param unit the unit of the difference
   * @param limits the limits of the difference
   */
  record Spread(ReadingSpec reading, boolean relative, MeasuredUnit unit, Limits limits)
      implements Numbered {

    @Override
    public List<ReadingSpec> readings() {
      return List.of(reading);
    }

    @Override
    public Measure measure(Facts facts) {
      var all = facts.evidence().all(reading.name());
      if (all.size() < 2) {
        throw new Unjudgeable(new Reason(Reason.Kind.READING_MISSING, reading.name()));
      }
      ToDoubleFunction<Quantity> value = q -> q.in(reading.unit());
      double highest = all.stream().mapToDouble(value).max().orElseThrow();
      double lowest = all.stream().mapToDouble(value).min().orElseThrow();
      // nothing in any cylinder is as far apart from sound as can be
      double share = highest == 0 ? 100 : 100 * (highest - lowest) / highest;
      double apart = relative ? share : highest - lowest;
      return limits.hold(
          facts,
          reading.name(),
          apart,
          unit,
          OptionalDouble.empty(),
          all.stream().map(q -> new Measure.Shown(reading.name(), q)).toList());
    }
  }

  /** The facts do not suffice to judge; carries why. */
  final class Unjudgeable extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient Reason reason;

    public Unjudgeable(Reason reason) {
      super(reason.kind() + " " + reason.text());
      this.reason = reason;
    }

    public Reason reason() {
      return reason;
    }
  }

  private static Quantity required(Facts facts, ReadingSpec spec) {
    return facts
        .evidence()
        .reading(spec.name())
        .orElseThrow(() -> new Unjudgeable(new Reason(Reason.Kind.READING_MISSING, spec.name())));
  }

  /**
   * The expanded uncertainty of a reading: as stated, else as usual for the instrument; and never
   * less than what the missing condition costs.
   */
  static OptionalDouble uncertainty(Facts facts, ReadingSpec spec, Quantity read) {
    var instrument =
        read.uncertaintyIn(spec.unit()).isPresent()
            ? read.uncertaintyIn(spec.unit())
            : spec.usualUncertainty();
    return spec.condition()
        .filter(c -> !facts.evidence().conditions().contains(c.word()))
        .map(c -> OptionalDouble.of(Math.max(c.otherwise(), instrument.orElse(0))))
        .orElse(instrument);
  }
}

package org.seafettle.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.seafettle.quantity.MeasuredUnit;
import org.seafettle.quantity.Quantity;
import org.seafettle.survey.MakersLimit;

/**
 * How a check is judged. Each kind turns the facts into one number and the limits that hold for it;
 * a choice needs no number, since the surveyor's word is the outcome.
 */
public sealed interface Criterion
    permits Criterion.Choice, Criterion.Scale, Criterion.Derived, Criterion.Spread, Interval {

  /** The readings that a finding may give. */
  List<ReadingSpec> readings();

  /** The names of the outcomes that the number can lead to. */
  List<String> reachable();

  /** The limits of the number; an interval and a choice have none of this kind. */
  default Optional<Limits> onNumber() {
    return Optional.empty();
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

  /**
   * A reading on a scale.
   *
   * @param reading what is read
   * @param limits the limits; without a case that covers, only the maker's limit can judge
   */
  record Scale(ReadingSpec reading, Limits limits) implements Criterion {

    @Override
    public List<ReadingSpec> readings() {
      return List.of(reading);
    }

    @Override
    public List<String> reachable() {
      return limits.reachable();
    }

    @Override
    public Optional<Limits> onNumber() {
      return Optional.of(limits);
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
      implements Criterion {

    public Derived {
      readings = List.copyOf(readings);
    }

    @Override
    public List<String> reachable() {
      return limits.reachable();
    }

    @Override
    public Optional<Limits> onNumber() {
      return Optional.of(limits);
    }

    @Override
    public Measure measure(Facts facts) {
      var inputs = Inputs.of(facts, readings);
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
      implements Criterion {

    @Override
    public List<ReadingSpec> readings() {
      return List.of(reading);
    }

    @Override
    public List<String> reachable() {
      return limits.reachable();
    }

    @Override
    public Optional<Limits> onNumber() {
      return Optional.of(limits);
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

  /**
   * The limits of a number: the catalogue's by case, and what a maker's limit leads to.
   *
   * @param steps the catalogue's own
   * @param belowMaker the outcome below the lowest value that the maker allows
   * @param withinMaker the outcome where the maker's limit is kept
   * @param aboveMaker the outcome above the highest value that the maker allows
   */
  record Limits(
      Cases<Steps> steps,
      Optional<String> belowMaker,
      Optional<String> withinMaker,
      Optional<String> aboveMaker) {

    List<String> reachable() {
      var names = new ArrayList<String>();
      steps.cases().forEach(c -> names.addAll(c.value().names()));
      List.of(belowMaker, withinMaker, aboveMaker).forEach(name -> name.ifPresent(names::add));
      return names.stream().distinct().toList();
    }

    Measure hold(
        Facts facts,
        String name,
        double value,
        MeasuredUnit unit,
        OptionalDouble uncertainty,
        List<Measure.Shown> shown) {
      var maker = facts.makersLimit().filter(limit -> makers(limit, unit).isPresent());
      var holding =
          maker
              .flatMap(limit -> makers(limit, unit))
              .or(() -> steps.pick(facts.survey(), facts.component()))
              .orElseThrow(() -> new Unjudgeable(Reason.of(Reason.Kind.NO_MAKERS_LIMIT)));
      return new Measure(name, value, unit, uncertainty, holding, maker, shown, Optional.empty());
    }

    /** The steps that a maker's limit makes, where this check can use one. */
    private Optional<Steps> makers(MakersLimit limit, MeasuredUnit unit) {
      var names = new ArrayList<String>();
      var edges = new ArrayList<Double>();
      if (withinMaker.isEmpty()) {
        return Optional.empty();
      }
      names.add(withinMaker.get());
      if (limit.lowest().isPresent() && belowMaker.isPresent()) {
        names.add(0, belowMaker.get());
        edges.add(limit.lowest().get().in(unit));
      }
      if (limit.highest().isPresent() && aboveMaker.isPresent()) {
        names.add(aboveMaker.get());
        edges.add(limit.highest().get().in(unit));
      }
      return edges.isEmpty() ? Optional.empty() : Optional.of(new Steps(names, edges));
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

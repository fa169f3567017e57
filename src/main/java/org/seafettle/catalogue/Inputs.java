package org.seafettle.catalogue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.IntToDoubleFunction;
import java.util.function.ToDoubleFunction;
import org.seafettle.problem.Refused;

/**
 * The readings of a derivation as plain numbers in the units of their limits, with their
 * uncertainties.
 */
public final class Inputs {

  private final Facts facts;
  private final Map<String, Double> values;
  private final Map<String, Double> uncertainties;
  private final Map<String, List<Double>> several;
  private final Map<String, List<Double>> severalUncertainties;

  private Inputs(
      Facts facts,
      Map<String, Double> values,
      Map<String, Double> uncertainties,
      Map<String, List<Double>> several,
      Map<String, List<Double>> severalUncertainties) {
    this.facts = facts;
    this.values = values;
    this.uncertainties = uncertainties;
    this.several = several;
    this.severalUncertainties = severalUncertainties;
  }

  static Inputs of(Facts facts, List<ReadingSpec> specs) {
    var values = new LinkedHashMap<String, Double>();
    var uncertainties = new LinkedHashMap<String, Double>();
    var several = new LinkedHashMap<String, List<Double>>();
    var severalUncertainties = new LinkedHashMap<String, List<Double>>();
    for (var spec : specs) {
      var read = facts.evidence().reading(spec.name());
      if (read.isEmpty() && spec.required()) {
        throw new Criterion.Unjudgeable(new Reason(Reason.Kind.READING_MISSING, spec.name()));
      }
      if (spec.many()) {
        var all = facts.evidence().all(spec.name());
        several.put(spec.name(), all.stream().map(q -> q.in(spec.unit())).toList());
        severalUncertainties.put(
            spec.name(),
            all.stream().map(q -> Criterion.uncertainty(facts, spec, q).orElse(0)).toList());
        continue;
      }
      read.ifPresent(
          q -> {
            values.put(spec.name(), q.in(spec.unit()));
            Criterion.uncertainty(facts, spec, q).ifPresent(u -> uncertainties.put(spec.name(), u));
          });
    }
    return new Inputs(facts, values, uncertainties, several, severalUncertainties);
  }

  public Facts facts() {
    return facts;
  }

  /** The same with at least this expanded uncertainty of a reading, in the unit of the check. */
  Inputs atLeast(String name, double uncertainty) {
    var wider = new LinkedHashMap<>(uncertainties);
    wider.merge(name, uncertainty, Math::max);
    return new Inputs(facts, values, wider, several, severalUncertainties);
  }

  /** A required reading, in the unit that the check states. */
  public double get(String name) {
    var value = values.get(name);
    if (value == null) {
      throw new Criterion.Unjudgeable(new Reason(Reason.Kind.READING_MISSING, name));
    }
    return value;
  }

  /** Every value of a reading that is taken once a cell or cylinder, as it was read. */
  public List<Double> all(String name) {
    return several.getOrDefault(name, List.of());
  }

  public OptionalDouble find(String name) {
    var value = values.get(name);
    return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
  }

  /**
   * The expanded uncertainty of a result from those of its inputs, taken as uncorrelated (JCGM
   * 100:2008, 5.1): each input is moved by its own uncertainty to both sides. Empty where no input
   * has one.
   */
  OptionalDouble spread(ToDoubleFunction<Inputs> derive) {
    double sum = 0;
    for (var u : uncertainties.entrySet()) {
      sum += squared(derive, u.getValue(), by -> moved(u.getKey(), by));
    }
    for (var u : severalUncertainties.entrySet()) {
      sum += ofSeveral(derive, u.getKey(), u.getValue());
    }
    boolean none =
        uncertainties.isEmpty()
            && severalUncertainties.values().stream().flatMap(List::stream).allMatch(u -> u == 0);
    return none ? OptionalDouble.empty() : OptionalDouble.of(Math.sqrt(sum));
  }

  /**
   * Of cells or cylinders: whether their errors are their own, or all of one gauge and one cold
   * engine, is not known, so the larger counts.
   */
  private double ofSeveral(ToDoubleFunction<Inputs> derive, String name, List<Double> halves) {
    double own = 0;
    for (int i = 0; i < halves.size(); i++) {
      int which = i;
      own += squared(derive, halves.get(i), by -> moved(name, each -> each == which ? by : 0));
    }
    double most = halves.stream().mapToDouble(h -> h).max().orElse(0);
    return Math.max(own, squared(derive, most, by -> moved(name, each -> by)));
  }

  /** Both sides count: what is taken as the highest or the lowest may move the same way on both. */
  private double squared(
      ToDoubleFunction<Inputs> derive, double uncertainty, DoubleFunction<Inputs> moved) {
    double here = derive.applyAsDouble(this);
    double above = Math.abs(value(derive, moved.apply(uncertainty)) - here);
    double below = Math.abs(value(derive, moved.apply(-uncertainty)) - here);
    double half = (above + below) / 2;
    return half * half;
  }

  private double value(ToDoubleFunction<Inputs> derive, Inputs elsewhere) {
    try {
      return derive.applyAsDouble(elsewhere);
    } catch (Refused beyondValidity) {
      return derive.applyAsDouble(this);
    }
  }

  private Inputs moved(String name, double by) {
    var elsewhere = new LinkedHashMap<>(values);
    elsewhere.merge(name, by, Double::sum);
    return new Inputs(facts, elsewhere, Map.of(), several, Map.of());
  }

  private Inputs moved(String name, IntToDoubleFunction by) {
    var moved = new ArrayList<>(all(name));
    for (int i = 0; i < moved.size(); i++) {
      moved.set(i, moved.get(i) + by.applyAsDouble(i));
    }
    var elsewhere = new LinkedHashMap<>(several);
    elsewhere.put(name, moved);
    return new Inputs(facts, values, Map.of(), elsewhere, Map.of());
  }
}

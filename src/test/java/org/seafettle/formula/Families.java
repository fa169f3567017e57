package org.seafettle.formula;

import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.seafettle.quantity.MeasuredUnit;
import org.seafettle.quantity.Quantity;

/** Which formula computes which family of check values; the family is the id without its number. */
final class Families {

  private final Map<String, Function<Inputs, String>> byFamily = new TreeMap<>();

  static Families all() {
    var families = new Families();
    ElectricalFamilies.addTo(families);
    BilgeFamilies.addTo(families);
    OilFamilies.addTo(families);
    CoolingFamilies.addTo(families);
    FuelFamilies.addTo(families);
    PowerheadFamilies.addTo(families);
    JudgementFamilies.addTo(families);
    TrendFamilies.addTo(families);
    return families;
  }

  /** A family whose formula gives one number. */
  void number(String family, ToDoubleFunction<Inputs> formula) {
    words(family, in -> Double.toString(formula.applyAsDouble(in)));
  }

  /** A family whose formula gives words, or several numbers. */
  void words(String family, Function<Inputs, String> formula) {
    if (byFamily.put(family, formula) != null) {
      throw new AssertionError("two formulas for " + family);
    }
  }

  /** The family of a row: its id without the number. */
  static String family(String id) {
    return id.substring(0, id.lastIndexOf('-'));
  }

  Function<Inputs, String> of(String id) {
    var formula = byFamily.get(family(id));
    if (formula == null) {
      throw new AssertionError("no formula is named for " + id);
    }
    return formula;
  }

  Set<String> names() {
    return byFamily.keySet();
  }

  /** {@code CONDITIONAL_PASS} as the rows write it. */
  static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The input named like the unit, in another unit. */
  static double converted(Inputs in, String from, String to) {
    return Quantity.parse(in.text(from) + " " + from).in(MeasuredUnit.of(to));
  }

  static double converted(double value, MeasuredUnit from, MeasuredUnit to) {
    return Quantity.of(value, from).in(to);
  }
}

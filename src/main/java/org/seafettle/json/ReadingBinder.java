package org.seafettle.json;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.seafettle.catalogue.ReadingSpec;
import org.seafettle.problem.Refused;
import org.seafettle.quantity.MeasuredUnit;
import org.seafettle.quantity.Quantity;

/** Reads what was measured. */
final class ReadingBinder {

  private static final Pattern BARE = Pattern.compile("[-+\u2212\u2013]?\\d+(?:\\.\\d+)?");

  private ReadingBinder() {}

  /** The values of a reading that can be read and are plausible. */
  static List<Quantity> bind(Field field, ReadingSpec spec) {
    var values = new ArrayList<Quantity>();
    for (var item : field.oneOrMore()) {
      value(item, spec.unit()).filter(q -> plausible(item, q, spec)).ifPresent(values::add);
    }
    return values;
  }

  /** A quantity in a unit's kind; a number alone where the unit is 1. */
  static Optional<Quantity> value(Field field, MeasuredUnit unit) {
    var written = field.node().isNumber() ? number(field) : field.text();
    return written
        .filter(text -> hasUnit(field, text, unit))
        .flatMap(text -> parsed(field, text, unit));
  }

  private static Optional<String> number(Field field) {
    return Optional.of(field.node().decimalValue().toPlainString());
  }

  private static boolean hasUnit(Field field, String written, MeasuredUnit unit) {
    boolean bare = unit != MeasuredUnit.ONE && BARE.matcher(written).matches();
    if (bare) {
      field.blame(
          field.node() + " has no unit.",
          "Write it with its unit, such as \"" + written + " " + unit.symbol() + "\".");
    }
    return !bare;
  }

  private static Optional<Quantity> parsed(Field field, String written, MeasuredUnit unit) {
    try {
      return Optional.of(Quantity.parse(written).as(unit.kind()));
    } catch (Refused e) {
      var problem = e.problems().get(0);
      field.blame(problem.fault(), problem.remedy());
      return Optional.empty();
    }
  }

  private static boolean plausible(Field field, Quantity quantity, ReadingSpec spec) {
    double value = quantity.in(spec.unit());
    if (value >= spec.least() && value <= spec.most()) {
      return true;
    }
    field.blame(
        "\"" + quantity.written() + "\" is not plausible for \"" + spec.name() + "\".",
        "Read it again; it lies between "
            + edge(spec.least(), spec.unit())
            + " and "
            + edge(spec.most(), spec.unit())
            + ".");
    return false;
  }

  private static String edge(double value, MeasuredUnit unit) {
    var digits = BigDecimal.valueOf(value).stripTrailingZeros();
    var whole = digits.scale() < 0 ? digits.setScale(0) : digits;
    return new Quantity(whole, Optional.empty(), unit).written();
  }
}

package org.seafettle.formula;

import java.math.BigDecimal;
import java.util.List;
import org.seafettle.formula.DoesNotHold.Value;
import org.seafettle.problem.Refused;

/** Refuses what lies outside the range in which a formula holds. */
public final class Validity {

  private Validity() {}

  /**
   * The value itself, if it lies within the range, both ends included.
   *
   * @param what the name of the quantity with its article, such as {@code a water temperature}
   * @param unit as printed after the number, empty for a plain number
   * @throws Refused when it lies outside or is not a number
   */
  public static double within(String what, double value, double low, double high, String unit) {
    if (value >= low && value <= high) {
      return value;
    }
    if (!Double.isFinite(value)) {
      throw noNumber(what);
    }
    throw DoesNotHold.of(
        "outside",
        what,
        List.of(new Value(value, unit), new Value(low, unit), new Value(high, unit)),
        what
            + " of "
            + text(value, unit)
            + " lies outside "
            + text(low, "")
            + " to "
            + text(high, unit)
            + ", where the formula holds.");
  }

  /**
   * The value itself, if it is finite and above zero.
   *
   * @throws Refused when it is not
   */
  public static double positive(String what, double value, String unit) {
    if (value > 0 && value < Double.POSITIVE_INFINITY) {
      return value;
    }
    if (!Double.isFinite(value)) {
      throw noNumber(what);
    }
    throw DoesNotHold.of(
        "not-above-zero",
        what,
        List.of(new Value(value, unit)),
        what + " of " + text(value, unit) + " is not above zero.");
  }

  private static DoesNotHold noNumber(String what) {
    return DoesNotHold.of("no-number", what, List.of(), what + " comes out as no number.");
  }

  /**
   * The value itself, if it is finite and not below zero.
   *
   * @throws Refused when it is not
   */
  public static double notNegative(String what, double value, String unit) {
    return value == 0 ? 0 : positive(what, value, unit);
  }

  private static String text(double value, String unit) {
    var number = BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    return unit.isEmpty() ? number : number + " " + unit;
  }
}

package org.seafettle.formula;

import java.math.BigDecimal;
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
    throw Refused.because(
        what
            + " of "
            + text(value, unit)
            + " lies outside "
            + text(low, "")
            + " to "
            + text(high, unit)
            + ", where the formula holds.",
        "Check the reading and its unit.");
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
    throw Refused.because(
        what + " of " + text(value, unit) + " is not above zero.",
        "Check the reading and its unit.");
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
    var number =
        Double.isFinite(value)
            ? BigDecimal.valueOf(value).stripTrailingZeros().toPlainString()
            : "no number";
    return unit.isEmpty() ? number : number + " " + unit;
  }
}

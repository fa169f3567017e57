package org.seafettle.formula.oil;

import org.seafettle.formula.Validity;

/** How much of an oil's use is left, and how much of it is in the engine. */
public final class Condition {

  private Condition() {}

  /**
   * Base number left, percent of the new oil's. Both by one method: D2896 and D4739 differ. A loss
   * of half is the usual sign to change (nolab.no, secondary).
   *
   * @param used 0 to 60 mgKOH/g
   * @param whenNew 2 to 60 mgKOH/g
   */
  public static double baseNumberPercent(double used, double whenNew) {
    Validity.within("A used oil's base number", used, 0, 60, "mgKOH/g");
    return 100 * used / Validity.within("A new oil's base number", whenNew, 2, 60, "mgKOH/g");
  }

  /** Whether the acid has met the base, the classic point of change (machinerylubrication.com). */
  public static boolean acidMeetsBase(double acidNumber, double baseNumber) {
    return Validity.within("An acid number", acidNumber, 0, 60, "mgKOH/g")
        >= Validity.within("A base number", baseNumber, 0, 60, "mgKOH/g");
  }

  /**
   * Where the oil stands between the dipstick's marks: 0 at the lower, 1 at the upper, below and
   * above beyond them. All three from one end of the stick, in one unit.
   *
   * @throws org.seafettle.problem.Refused where the marks are not in order or the result lies
   *     outside -1 to 2
   */
  public static double dipstickPosition(double level, double lowerMark, double upperMark) {
    Validity.positive("A distance between the marks", upperMark - lowerMark, "");
    return Validity.within(
        "A level on the dipstick", (level - lowerMark) / (upperMark - lowerMark), -1, 2, "");
  }
}

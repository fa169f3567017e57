package org.seafettle.formula.pump;

import org.seafettle.formula.Validity;

/** What a bilge pump really moves, and what the bilge really takes in. */
public final class Delivery {

  private Delivery() {}

  /**
   * The share of its rating that a pump really moves where nobody measured it: half, after hose,
   * lift and sagging volts (Ocean Navigator, June 2021, secondary; as a rule a program default).
   */
  public static final double USUAL_SHARE = 0.5;

  /** Flow from a bucket test, {@code V/t}: litres in seconds give litres a minute. */
  public static double litresPerMinute(double litres, double seconds) {
    return 60
        * Validity.positive("A bucket's volume", litres, "L")
        / Validity.positive("A filling time", seconds, "s");
  }

  /**
   * Real over rated flow, both in one unit. After hose, lift and sagging volts about half is usual
   * (Ocean Navigator, June 2021, secondary).
   */
  public static double shareOfRated(double realFlow, double ratedFlow) {
    return Validity.notNegative("A measured flow", realFlow, "")
        / Validity.positive("A rated flow", ratedFlow, "");
  }

  /**
   * Inflow in litres an hour from a pump that cycles by its float: {@code cycles x litres each/h}.
   *
   * @param litresPerCycle what one run pumps out, from flow and run time
   * @param hours over which the cycles were counted
   */
  public static double inflowLitresPerHour(double cycles, double litresPerCycle, double hours) {
    return Validity.notNegative("A number of cycles", cycles, "")
        * Validity.notNegative("A volume for each cycle", litresPerCycle, "L")
        / Validity.positive("A counting time", hours, "h");
  }
}

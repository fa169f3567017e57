package org.seafettle.formula.engine;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.seafettle.formula.Validity;
import org.seafettle.problem.Refused;

/**
 * Exhaust limits of US outboards and personal watercraft, {@code c (151 + 557/P^0.9) + d} g/kWh of
 * hydrocarbons and nitrogen oxides, P in kW. 2010: 40 CFR 1045.103; 1998 and 2006: US Bureau of
 * Transportation Statistics, marine spark-ignition standards, note c.
 */
public enum EmissionLimit {
  OF_1998(0.917, 2.44, 2),
  OF_2006(0.250, 6.00, 2),
  OF_2010(0.09, 2.1, 1);

  private static final double SMALL_ENGINE_KW = 4.3;

  private final double slope;
  private final double offset;
  private final int decimals;

  EmissionLimit(double slope, double offset, int decimals) {
    this.slope = slope;
    this.offset = offset;
    this.decimals = decimals;
  }

  /**
   * Hydrocarbons and nitrogen oxides, g/kWh, rounded as the rule prints it. For 2010 engines up to
   * 4.3 kW 30.0; the older rules hold above that power here.
   *
   * @param kilowatts rated power, above 0 to 600 kW
   */
  public double hydrocarbonsAndNitrogenOxides(double kilowatts) {
    if (power(kilowatts) <= SMALL_ENGINE_KW) {
      return smallEngine();
    }
    return rounded(slope * (151 + 557 / Math.pow(kilowatts, 0.9)) + offset, decimals);
  }

  private double smallEngine() {
    if (this == OF_2010) {
      return 30.0;
    }
    throw Refused.because(
        "The rule before 2010 is not known for engines up to 4.3 kW.",
        "Read the limit from the emission label.");
  }

  /** Carbon monoxide of engines from 2010, g/kWh: {@code 500 - 5P} to 40 kW, else 300. */
  public static double carbonMonoxide2010(double kilowatts) {
    return power(kilowatts) <= 40 ? rounded(500 - 5 * kilowatts, 0) : 300;
  }

  private static double power(double kilowatts) {
    Validity.positive("A power", kilowatts, "kW");
    return Validity.within("A power", kilowatts, 0, 600, "kW");
  }

  private static double rounded(double value, int decimals) {
    return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).doubleValue();
  }
}

package org.seafettle.formula.engine;

import org.seafettle.formula.Validity;

/** A pressure test on a closed case, such as a gearcase, while its air changes temperature. */
public final class SealedCase {

  private static final double ZERO_C_IN_KELVIN = 273.15;

  private SealedCase() {}

  /**
   * The gauge pressure that a tight case shows at the second temperature, {@code (P1 + Pa) T2/T1 -
   * Pa} with T in kelvin: the ideal gas law.
   *
   * @param gauge pressure at the start, in the unit of the air pressure; vacuum is negative
   * @param startC temperature of the enclosed air at the start, -40 to 120 °C
   * @param endC temperature at the end, -40 to 120 °C
   * @param air pressure of the surrounding air, 101.325 kPa or 14.6959 psi at sea level
   */
  public static double tightPressure(double gauge, double startC, double endC, double air) {
    Validity.within("A temperature at the start", startC, -40, 120, "°C");
    Validity.within("A temperature at the end", endC, -40, 120, "°C");
    Validity.positive("An air pressure", air, "");
    Validity.positive("An absolute pressure", gauge + air, "");
    return (gauge + air) * (endC + ZERO_C_IN_KELVIN) / (startC + ZERO_C_IN_KELVIN) - air;
  }

  /** How much of the drop is left for a leak once the temperature is taken out. */
  public static double correctedDrop(
      double startGauge, double endGauge, double startC, double endC, double air) {
    return tightPressure(startGauge, startC, endC, air) - endGauge;
  }
}

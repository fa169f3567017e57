package org.seafettle.formula.water;

import org.seafettle.formula.Validity;

/** The heat that raw water carries away, and whether it can be true. */
public final class CoolingHeat {

  private CoolingHeat() {}

  /** Kilograms a second of a flow in litres a minute, at the inlet's density. */
  public static double kilogramsPerSecond(double litresPerMinute, double salinity, double inletC) {
    Validity.within("A raw-water flow", litresPerMinute, 1, 1000, "L/min");
    return litresPerMinute / 60_000 * Seawater.density(salinity, inletC);
  }

  /**
   * Kilowatts: {@code flow x density at the inlet x specific heat at the mean x rise}. The mean of
   * both temperatures must stay within 0 to 40 °C.
   *
   * @param litresPerMinute 1 to 1000 L/min
   * @param outletC not below the inlet, to 90 °C
   */
  public static double kilowatts(
      double litresPerMinute, double salinity, double inletC, double outletC) {
    Validity.within("An outlet temperature", outletC, inletC, 90, "°C");
    return kilogramsPerSecond(litresPerMinute, salinity, inletC)
        * Seawater.specificHeat(salinity, (inletC + outletC) / 2)
        * (outletC - inletC)
        / 1000;
  }

  /**
   * The power in the fuel, kW, from that at the shaft: {@code P/efficiency}.
   *
   * @param efficiency 0.1 to 0.5
   */
  public static double fuelKilowatts(double shaftKilowatts, double efficiency) {
    return Validity.positive("A shaft power", shaftKilowatts, "kW")
        / Validity.within("An engine's efficiency", efficiency, 0.1, 0.5, "");
  }

  /** Heat over fuel power at the load of the test. */
  public static double share(double heatKilowatts, double fuelKilowatts) {
    return Validity.notNegative("A heat flow", heatKilowatts, "kW")
        / Validity.positive("A fuel power", fuelKilowatts, "kW");
  }

  /**
   * Whether a share can be true: 10 to 70 % of the fuel power, a program default; coolants take 20
   * to 35 % (weak secondary), and a wet exhaust more. Outside, flow or load was misjudged.
   */
  public static boolean plausible(double share) {
    return share >= 0.10 && share <= 0.70;
  }
}

package org.seafettle.formula.fuel;

import org.seafettle.formula.Validity;

/** Density of fuels and how they swell. */
public final class Density {

  /** Of water at 60 °F, kg/m3: what a specific gravity of 1 stands for in volume tables. */
  private static final double WATER_60F = 999.012;

  private Density() {}

  /** Specific gravity at 60 °F from degrees API, {@code 141.5/(API + 131.5)}; 5 to 90 °API. */
  public static double gravityFromApi(double degreesApi) {
    return 141.5 / (Validity.within("A gravity", degreesApi, 5, 90, "°API") + 131.5);
  }

  /** Degrees API from the specific gravity at 60 °F, 0.6 to 1.1; US Army quartermaster text. */
  public static double apiFromGravity(double gravity60F) {
    return 141.5 / Validity.within("A specific gravity", gravity60F, 0.6, 1.1, "") - 131.5;
  }

  /**
   * Expansion for each °C by the density at 15 °C: the ASTM D1250-80 form, table 54B (coefficients
   * secondary, the same in several open implementations). Gasoline 653 to 770.5 kg/m3, {@code
   * K0/d^2 + K1/d}; between 2680.3206/d^2 - 0.00336312; kerosene and winter diesel from 787.5
   * {@code 594.5418/d^2}; fuel oils 839 to 1075.
   */
  public static double expansionPerC(double density15C) {
    double d = Validity.within("A fuel density", density15C, 653, 1075, "kg/m³");
    if (d <= 770.5) {
      return 346.4228 / (d * d) + 0.4388 / d;
    }
    if (d < 787.5) {
      return 2680.3206 / (d * d) - 0.00336312;
    }
    return d < 839 ? 594.5418 / (d * d) : 186.9696 / (d * d) + 0.4862 / d;
  }

  /**
   * Volume at 60 °F over volume at a temperature, {@code exp(-a dT (1 + 0.8 a dT))} with dT in °C;
   * -40 to 150 °F.
   */
  public static double volumeAt60FOver(double gravity60F, double temperatureF) {
    Validity.within("A fuel temperature", temperatureF, -40, 150, "°F");
    double swelling = expansionPerC(gravity60F * WATER_60F) * (temperatureF - 60) / 1.8;
    return Math.exp(-swelling * (1 + 0.8 * swelling));
  }

  /**
   * A volume after warming, {@code V (1 + a dT)}, in its own unit.
   *
   * @param perC expansion for each °C, 0.0005 to 0.002
   * @param warmedC -80 to 80 °C
   */
  public static double swollenVolume(double volume, double perC, double warmedC) {
    return Validity.positive("A fuel volume", volume, "") * (1 + swelling(perC, warmedC));
  }

  /** Room that a full tank needs to warm by so much, percent of the fuel. */
  public static double ullagePercent(double perC, double warmedC) {
    return 100 * swelling(perC, Validity.notNegative("A warming", warmedC, "°C"));
  }

  private static double swelling(double perC, double warmedC) {
    Validity.within("An expansion", perC, 0.0005, 0.002, "/°C");
    return perC * Validity.within("A warming", warmedC, -80, 80, "°C");
  }
}

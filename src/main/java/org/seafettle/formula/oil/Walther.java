package org.seafettle.formula.oil;

import org.seafettle.formula.Validity;
import org.seafettle.problem.Refused;

/**
 * Viscosity of an oil at one temperature from two others: {@code log log (v + 0.7) = A - B log T},
 * T in kelvin. The simple form of ASTM D341, for more than 2 mm2/s (secondary).
 *
 * @param a the constant A
 * @param b the slope B
 */
public record Walther(double a, double b) {

  private static final double ZERO_C_IN_KELVIN = 273.15;

  /**
   * The line through two measured points, each 2 to 100 000 mm2/s at 0 to 150 °C.
   *
   * @throws Refused when the temperatures are equal or the oil thickens as it warms
   */
  public static Walther through(
      double viscosity1, double celsius1, double viscosity2, double celsius2) {
    double y1 = doubleLog(viscosity(viscosity1));
    double y2 = doubleLog(viscosity(viscosity2));
    double x1 = Math.log10(kelvin(celsius1));
    double x2 = Math.log10(kelvin(celsius2));
    double slope = (y1 - y2) / (x2 - x1);
    if (!(slope > 0) || Double.isInfinite(slope)) {
      throw Refused.because(
          "These two viscosities are not those of one oil that thins as it warms.",
          "Give two different temperatures, the thinner oil at the warmer one.");
    }
    return new Walther(y1 + slope * x1, slope);
  }

  /**
   * Viscosity in mm2/s at 0 to 150 °C. Below the oil's cloud or pour point it does not hold.
   *
   * @throws Refused where the result falls to 2 mm2/s or less
   */
  public double at(double celsius) {
    double y = a - b * Math.log10(kelvin(celsius));
    return viscosity(Math.pow(10, Math.pow(10, y)) - 0.7);
  }

  private static double doubleLog(double viscosity) {
    return Math.log10(Math.log10(viscosity + 0.7));
  }

  private static double viscosity(double viscosity) {
    return Validity.within("A kinematic viscosity", viscosity, 2, 100_000, "mm²/s");
  }

  private static double kelvin(double celsius) {
    return Validity.within("An oil temperature", celsius, 0, 150, "°C") + ZERO_C_IN_KELVIN;
  }
}

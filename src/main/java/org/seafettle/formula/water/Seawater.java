package org.seafettle.formula.water;

import org.seafettle.formula.Validity;

/**
 * Density and specific heat of sea water and fresh water at the surface. UNESCO Technical Papers in
 * Marine Science 44 (1983), pp. 17 and 32. Salinity on the practical scale, 0 to 40; temperature 0
 * to 40 °C (the paper states 0 to 35 °C for the specific heat, and its own table goes on to 40).
 */
public final class Seawater {

  private static final double[] PURE_DENSITY = {
    999.842594, 6.793952e-2, -9.095290e-3, 1.001685e-4, -1.120083e-6, 6.536332e-9
  };
  private static final double[] DENSITY_S = {
    0.824493, -4.0899e-3, 7.6438e-5, -8.2467e-7, 5.3875e-9
  };
  private static final double[] DENSITY_S_3_2 = {-5.72466e-3, 1.0227e-4, -1.6546e-6};
  private static final double DENSITY_S_2 = 4.8314e-4;

  private static final double[] PURE_HEAT = {
    4217.4, -3.720283, 0.1412855, -2.654387e-3, 2.093236e-5
  };
  private static final double[] HEAT_S = {-7.643575, 0.1072763, -1.38385e-3};
  private static final double[] HEAT_S_3_2 = {0.1770383, -4.07718e-3, 5.148e-5};

  private Seawater() {}

  /** Density at one atmosphere, kg/m3: the equation of state EOS-80. */
  public static double density(double salinity, double celsius) {
    double s = salinity(salinity);
    double t = celsius(celsius);
    return polynomial(PURE_DENSITY, t)
        + polynomial(DENSITY_S, t) * s
        + polynomial(DENSITY_S_3_2, t) * Math.pow(s, 1.5)
        + DENSITY_S_2 * s * s;
  }

  /** Specific heat at constant pressure at the surface, J/(kg K); standard deviation 0.5. */
  public static double specificHeat(double salinity, double celsius) {
    double s = salinity(salinity);
    double t = celsius(celsius);
    return polynomial(PURE_HEAT, t)
        + polynomial(HEAT_S, t) * s
        + polynomial(HEAT_S_3_2, t) * Math.pow(s, 1.5);
  }

  private static double polynomial(double[] coefficients, double x) {
    double sum = 0;
    for (int i = coefficients.length - 1; i >= 0; i--) {
      sum = sum * x + coefficients[i];
    }
    return sum;
  }

  private static double salinity(double salinity) {
    return Validity.within("A salinity", salinity, 0, 40, "");
  }

  private static double celsius(double celsius) {
    return Validity.within("A water temperature", celsius, 0, 40, "°C");
  }
}

package org.seafettle.formula.fuel;

import org.seafettle.formula.Validity;

/**
 * The pressure to which a builder tests a gasoline system: 33 CFR 183.542, the greater of 3 psi and
 * one and a half times the static head at overflow. Law for gasoline boats other than outboards, a
 * benchmark elsewhere; never done on a system in service but by a licensed technician.
 */
public final class SystemTest {

  private static final double LEAST_PSI = 3;
  private static final double PASCALS_PER_PSI = 6894.757293168;
  private static final double GRAVITY = 9.80665;

  private SystemTest() {}

  /**
   * Static head, psi.
   *
   * @param density of the fuel, 650 to 1000 kg/m3
   * @param headMetres from the lowest point up to the overflow, 0 to 10 m
   */
  public static double headPsi(double density, double headMetres) {
    Validity.within("A fuel density", density, 650, 1000, "kg/m³");
    Validity.within("A head", headMetres, 0, 10, "m");
    return density * GRAVITY * headMetres / PASCALS_PER_PSI;
  }

  /** The test pressure that governs, psi. */
  public static double testPsi(double density, double headMetres) {
    return Math.max(LEAST_PSI, 1.5 * headPsi(density, headMetres));
  }

  /** The head above which one and a half times it exceeds 3 psi, m. */
  public static double governingHeadMetres(double density) {
    return LEAST_PSI / (1.5 * headPsi(density, 1));
  }
}

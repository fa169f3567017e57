package org.seafettle.formula.fuel;

import org.seafettle.formula.Validity;

/** Vacuum at the engine's fuel inlet, and what of it only lifts the fuel. */
public final class Restriction {

  private static final double GRAVITY = 9.80665;

  private Restriction() {}

  /**
   * The vacuum that lifting the fuel takes, kPa: {@code rho g h}.
   *
   * @param density of the fuel, 650 to 1000 kg/m3
   * @param liftMetres from the fuel's surface up to the gauge, -5 to 5 m; negative where the tank
   *     stands higher
   */
  public static double liftKilopascals(double density, double liftMetres) {
    Validity.within("A fuel density", density, 650, 1000, "kg/m³");
    Validity.within("A lift", liftMetres, -5, 5, "m");
    return density * GRAVITY * liftMetres / 1000;
  }

  /**
   * What the lines, valve and filter alone take, kPa: the vacuum at full load less the lift.
   *
   * @param vacuumKilopascals as read below the air's pressure, 0 to 85 kPa
   */
  public static double lineKilopascals(
      double vacuumKilopascals, double density, double liftMetres) {
    Validity.within("A fuel vacuum", vacuumKilopascals, 0, 85, "kPa");
    return vacuumKilopascals - liftKilopascals(density, liftMetres);
  }
}

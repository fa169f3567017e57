package org.seafettle.formula.oil;

import org.seafettle.formula.Validity;

/** Oil that had to be made up between changes. */
public final class Consumption {

  private Consumption() {}

  /** Percent of the fuel burned: {@code 100 oil/fuel}, both in litres. */
  public static double percentOfFuel(double oilLitres, double fuelLitres) {
    return 100
        * Validity.notNegative("A make-up volume", oilLitres, "L")
        / Validity.positive("A fuel volume", fuelLitres, "L");
  }

  /** Millilitres an hour: {@code 1000 oil/h}. */
  public static double millilitresPerHour(double oilLitres, double hours) {
    return 1000
        * Validity.notNegative("A make-up volume", oilLitres, "L")
        / Validity.positive("A running time", hours, "h");
  }
}

package org.seafettle.formula.fuel;

import org.seafettle.formula.Validity;

/** Fuel that an engine burns at a power. */
public enum Burn {
  GASOLINE(0.50, 6.2),
  DIESEL(0.40, 6.9);

  private final double poundsPerHorsepowerHour;
  private final double poundsPerGallon;

  Burn(double poundsPerHorsepowerHour, double poundsPerGallon) {
    this.poundsPerHorsepowerHour = poundsPerHorsepowerHour;
    this.poundsPerGallon = poundsPerGallon;
  }

  /**
   * US gallons an hour, {@code hp x lb/(hp h) / (lb/gal)}; boatgph.com, secondary (0.50 and 6.2 for
   * gasoline, 0.40 and 6.9 for diesel).
   *
   * @param horsepower at the shaft, above 0 to 10 000 hp
   */
  public double gallonsPerHour(double horsepower) {
    Validity.positive("A power", horsepower, "hp");
    Validity.within("A power", horsepower, 0, 10_000, "hp");
    return horsepower * poundsPerHorsepowerHour / poundsPerGallon;
  }
}

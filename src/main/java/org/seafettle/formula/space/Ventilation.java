package org.seafettle.formula.space;

import org.seafettle.formula.Validity;

/**
 * Air for a closed space with a gasoline engine: 33 CFR 183.610 and 183.630, 2015. The powered
 * blower is asked for where the engine is permanently installed and has a cranking motor.
 *
 * @param ratedCubicFeetPerMinute the blower's rating Fr
 * @param outputCubicFeetPerMinute what must come out of the duct, Fo, with the engine stopped
 */
public record Ventilation(double ratedCubicFeetPerMinute, double outputCubicFeetPerMinute) {

  /**
   * The blower for a net volume: below 34 ft3 50 and 20; to 100 ft3 1.5V and 0.6V; above V/2 + 100
   * and 0.2V + 40. Section 183.610(b) and (c).
   *
   * @param cubicFeet above 0 to 5000 ft3
   */
  public static Ventilation blower(double cubicFeet) {
    double volume = volume(cubicFeet);
    if (volume < 34) {
      return new Ventilation(50, 20);
    }
    return volume <= 100
        ? new Ventilation(1.5 * volume, 0.6 * volume)
        : new Ventilation(volume / 2 + 100, 0.2 * volume + 40);
  }

  /**
   * The least area of a natural ventilation opening, in2: {@code 5 ln(V/5)}, and never 3 in2 or
   * less. Section 183.630.
   */
  public static double naturalOpeningSquareInches(double cubicFeet) {
    return Math.max(3, 5 * Math.log(volume(cubicFeet) / 5));
  }

  private static double volume(double cubicFeet) {
    Validity.positive("A net volume", cubicFeet, "ft³");
    return Validity.within("A net volume", cubicFeet, 0, 5000, "ft³");
  }
}

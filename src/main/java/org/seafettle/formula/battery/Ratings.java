package org.seafettle.formula.battery;

import org.seafettle.formula.Validity;

/** How the ratings on a battery's label turn into each other, and what is left of them. */
public final class Ratings {

  private Ratings() {}

  /** Marine cranking amperes (0 °C) from cold ones (-18 °C): x 1.3. marinemechanic.com, p. 32. */
  public static double marineFromCold(double coldAmperes) {
    return 1.3 * cranking(coldAmperes);
  }

  /** Cold cranking amperes (-18 °C) from marine ones (0 °C): x 0.77. marinemechanic.com, p. 32. */
  public static double coldFromMarine(double marineAmperes) {
    return 0.77 * cranking(marineAmperes);
  }

  /** Measured over rated cranking amperes, both on one scale; 0 to 1.5. */
  public static double crankingRatio(double measuredAmperes, double ratedAmperes) {
    double ratio = Validity.notNegative("A measured rating", measuredAmperes, "A");
    return Validity.within("A ratio of ratings", ratio / cranking(ratedAmperes), 0, 1.5, "");
  }

  /** Ampere hours at 25 A from the reserve capacity: {@code RC x 25/60}, by its definition. */
  public static double ampereHoursAt25A(double reserveMinutes) {
    return reserve(reserveMinutes) * 25 / 60;
  }

  /** The 20-hour capacity for planning, {@code 0.6 RC}. GM bulletin text, secondary. */
  public static double planningAmpereHours(double reserveMinutes) {
    return 0.6 * reserve(reserveMinutes);
  }

  /** Ampere hours of the 20-hour rating from its constant current. */
  public static double ampereHoursAt20Hours(double amperes) {
    return 20 * Validity.positive("A 20-hour current", amperes, "A");
  }

  private static double cranking(double amperes) {
    return Validity.within("A cranking rating", amperes, 20, 3000, "A");
  }

  private static double reserve(double minutes) {
    return Validity.within("A reserve capacity", minutes, 1, 1000, "min");
  }
}

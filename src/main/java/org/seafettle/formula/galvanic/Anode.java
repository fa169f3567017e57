package org.seafettle.formula.galvanic;

import org.seafettle.formula.Validity;

/** How much of an anode is gone and how long the rest lasts. */
public final class Anode {

  /** Zinc to MIL-A-18001K, ampere hours for a kilogram; anode makers' pages, secondary. */
  public static final double ZINC_AMPERE_HOURS = 780;

  /** The share of an anode that is used before it falls off; a program default. */
  public static final double UTILISATION = 0.85;

  private static final double HOURS_PER_YEAR = 8760;

  private Anode() {}

  /** Percent lost, from weights or volumes in one unit. */
  public static double lossPercent(double now, double whenNew) {
    Validity.positive("A new anode's size", whenNew, "");
    Validity.within("An anode's size", now, 0, whenNew, "");
    return 100 * (whenNew - now) / whenNew;
  }

  /**
   * Years that an anode lasts, {@code kg x capacity x share/(A x 8760)}: Faraday's law.
   *
   * @param ampereHoursPerKilogram of the alloy
   * @param share used, above 0 to 1
   * @param amperes the mean protective current
   */
  public static double years(
      double kilograms, double ampereHoursPerKilogram, double share, double amperes) {
    Validity.positive("An anode's mass", kilograms, "kg");
    Validity.within("An alloy's capacity", ampereHoursPerKilogram, 500, 3000, "Ah/kg");
    Validity.within("A used share", share, 0, 1, "");
    Validity.positive("A protective current", amperes, "A");
    return kilograms * ampereHoursPerKilogram * share / (amperes * HOURS_PER_YEAR);
  }
}

package org.seafettle.formula.oil;

import org.seafettle.formula.Validity;

/** Metal that wears into the oil. Program rules: no uniform limit condemns an engine. */
public final class Wear {

  private Wear() {}

  /**
   * Metal gained in 100 h of oil life, ppm: {@code 100 (C - C0)/h}.
   *
   * @param usedPpm in the used oil, 0 to 5000 ppm, corrected for make-up
   * @param newPpm in the new oil, 0 to 5000 ppm
   * @param oilHours since the change, from 5 h: less says nothing
   */
  public static double per100Hours(double usedPpm, double newPpm, double oilHours) {
    ppm(usedPpm);
    Validity.within("A time on the oil", oilHours, 5, 5000, "h");
    return 100 * (usedPpm - ppm(newPpm)) / oilHours;
  }

  /** What the metal would be without the oil that was added: {@code C (1 + added/sump)}. */
  public static double correctedForMakeUp(double ppm, double addedLitres, double sumpLitres) {
    Validity.positive("A sump", sumpLitres, "L");
    return ppm(ppm)
        * (1
            + Validity.within("A make-up volume", addedLitres, 0, 3 * sumpLitres, "L")
                / sumpLitres);
  }

  private static double ppm(double ppm) {
    return Validity.within("A metal content", ppm, 0, 5000, "ppm");
  }
}

package org.seafettle.formula.oil;

import org.seafettle.formula.Validity;

/** Fuel in engine oil. */
public final class Dilution {

  /** Viscosity of the heavy ends of gasoline that stay in oil, mm2/s; a program default. */
  private static final double HEAVY_ENDS = 0.6;

  private Dilution() {}

  /**
   * Percent by volume from the rise of the level with nothing added: {@code 100 dV/(V + dV)}.
   *
   * @param oilLitres in the engine at the mark
   * @param riseLitres above it, not more than the oil itself
   */
  public static double percentFromLevelRise(double oilLitres, double riseLitres) {
    Validity.positive("An oil volume", oilLitres, "L");
    Validity.within("A rise of the level", riseLitres, 0, oilLitres, "L");
    return 100 * riseLitres / (oilLitres + riseLitres);
  }

  /**
   * Percent from the loss of viscosity at 100 °C, {@code 100 ln(vn/vu)/ln(vn/0.6)}: logarithmic
   * mixing with 0.6 mm2/s for what gasoline leaves behind, a program default. Indicative, plus or
   * minus half: shear thins oil too and soot thickens it.
   *
   * @param newViscosity of the fresh oil, 2 to 40 mm2/s
   * @param usedViscosity of the used oil, 2 mm2/s to that of the fresh
   */
  public static double percentFromViscosity(double newViscosity, double usedViscosity) {
    Validity.within("A fresh oil's viscosity", newViscosity, 2, 40, "mm²/s");
    Validity.within("A used oil's viscosity", usedViscosity, 2, newViscosity, "mm²/s");
    return 100 * Math.log(newViscosity / usedViscosity) / Math.log(newViscosity / HEAVY_ENDS);
  }
}

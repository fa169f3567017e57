package org.seafettle.formula.water;

import org.seafettle.formula.Rows;
import org.seafettle.formula.Validity;

/**
 * Inhibited antifreeze: where the first ice forms. Not the burst rating on a retail bottle, which
 * is far colder.
 *
 * <p>Straight lines between the rows of the Liebert XD technical guide, table 51 (after a glycol
 * maker), and 0 °C for water without glycol. Percent by volume. Below 30 % the inhibitor must be
 * made up.
 */
public enum Glycol {
  PROPYLENE(0, 32, 18, 20, 29, 10, 36, 0, 42, -10, 46, -20, 50, -30, 54, -40, 57, -50),
  ETHYLENE(0, 32, 17, 20, 26, 10, 35, 0, 41, -10, 46, -20, 50, -30, 55, -40, 59, -50);

  private final Rows freezingF;

  Glycol(double... percentAndDegreesF) {
    freezingF = new Rows("A glycol content", "%", percentAndDegreesF);
  }

  /**
   * Where ice begins to form, °C.
   *
   * @param percent by volume, 0 to the last row: 57 % propylene, 59 % ethylene glycol
   */
  public double freezingPointC(double percent) {
    return (freezingF.at(percent) - 32) / 1.8;
  }

  /**
   * The percentage that is left after mixing with water that stayed in the block: {@code label x
   * Va/(Va + Vw)}.
   *
   * @param labelPercent glycol in the antifreeze as bought or mixed, 0 to 100 %
   */
  public static double dilutedPercent(
      double labelPercent, double antifreezeLitres, double waterLitres) {
    Validity.within("A glycol content", labelPercent, 0, 100, "%");
    Validity.positive("An antifreeze volume", antifreezeLitres, "L");
    Validity.notNegative("A volume of water left", waterLitres, "L");
    return labelPercent * antifreezeLitres / (antifreezeLitres + waterLitres);
  }
}

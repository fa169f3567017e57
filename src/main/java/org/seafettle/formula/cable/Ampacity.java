package org.seafettle.formula.cable;

import java.util.Map;
import org.seafettle.formula.DoesNotHold;
import org.seafettle.formula.Validity;

/**
 * The amperes that a copper conductor may carry: 33 CFR 183.425, table 5, with its notes 1 (engine
 * spaces) and 2 (bundles). US law for gasoline boats other than outboards; a benchmark elsewhere.
 */
public final class Ampacity {

  private static final int[] RATINGS = {60, 75, 80, 90, 105, 125, 200};

  private static final double[] ENGINE_SPACE = {0.58, 0.75, 0.78, 0.82, 0.85, 0.89, 1.00};

  private static final Map<Gauge, int[]> TABLE_5 =
      Map.ofEntries(
          row(Gauge.AWG_18, 10, 10, 15, 20, 20, 25, 25),
          row(Gauge.AWG_16, 15, 15, 20, 25, 25, 30, 35),
          row(Gauge.AWG_14, 20, 20, 25, 30, 35, 40, 45),
          row(Gauge.AWG_12, 25, 25, 35, 40, 45, 50, 55),
          row(Gauge.AWG_10, 40, 40, 50, 55, 60, 70, 70),
          row(Gauge.AWG_8, 55, 65, 70, 70, 80, 90, 100),
          row(Gauge.AWG_6, 80, 95, 100, 100, 120, 125, 135),
          row(Gauge.AWG_4, 105, 125, 130, 135, 160, 170, 180),
          row(Gauge.AWG_3, 120, 145, 150, 155, 180, 195, 210),
          row(Gauge.AWG_2, 140, 170, 175, 180, 210, 225, 240),
          row(Gauge.AWG_1, 165, 195, 210, 210, 245, 265, 280),
          row(Gauge.AWG_1_0, 195, 230, 245, 245, 285, 305, 325),
          row(Gauge.AWG_2_0, 225, 265, 285, 285, 330, 355, 370),
          row(Gauge.AWG_3_0, 260, 310, 330, 330, 385, 410, 430),
          row(Gauge.AWG_4_0, 300, 360, 385, 385, 445, 475, 510));

  private Ampacity() {}

  /**
   * Table 5.
   *
   * @param insulationC temperature rating of the insulation: 60, 75, 80, 90, 105, 125 or 200 °C
   */
  public static double amperes(Gauge gauge, int insulationC) {
    return TABLE_5.get(gauge)[column(insulationC)];
  }

  /** Note 1: the factor inside an engine space, by the insulation's rating. */
  public static double engineSpaceFactor(int insulationC) {
    return ENGINE_SPACE[column(insulationC)];
  }

  /**
   * Note 2: the factor for a bundle, by the number of current-carrying conductors; one below three.
   * The law counts only conductors of 50 V and more; the same factors on direct current are good
   * practice.
   */
  public static double bundleFactor(int conductors) {
    Validity.within("A number of conductors", conductors, 1, 1000, "");
    if (conductors < 3) {
      return 1;
    }
    if (conductors <= 6) {
      return conductors == 3 ? 0.70 : 0.60;
    }
    return conductors < 25 ? 0.50 : 0.40;
  }

  /** Table 5 with both notes applied. */
  public static double amperes(Gauge gauge, int insulationC, int conductors, boolean engineSpace) {
    return amperes(gauge, insulationC)
        * (engineSpace ? engineSpaceFactor(insulationC) : 1)
        * bundleFactor(conductors);
  }

  private static int column(int insulationC) {
    for (int i = 0; i < RATINGS.length; i++) {
      if (RATINGS[i] == insulationC) {
        return i;
      }
    }
    throw DoesNotHold.because(
        "no-such-insulation",
        "The table has no column for insulation rated " + insulationC + " °C.",
        "Read the rating on the wire: 60, 75, 80, 90, 105, 125 or 200 °C; where it cannot be read"
            + " take 60 °C.");
  }

  private static Map.Entry<Gauge, int[]> row(Gauge gauge, int... amperes) {
    return Map.entry(gauge, amperes);
  }
}

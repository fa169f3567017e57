package org.seafettle.formula.battery;

import java.util.Collections;
import java.util.List;
import org.seafettle.formula.DoesNotHold;
import org.seafettle.formula.Rows;
import org.seafettle.formula.Validity;

/** The acid of a flooded lead-acid battery: its specific gravity and what that says. */
public final class Electrolyte {

  private static final String GRAVITY = "A specific gravity";

  private static final Rows CHARGE =
      new Rows(GRAVITY, "", 1.130, 0, 1.190, 25, 1.220, 50, 1.250, 75, 1.280, 100);

  private static final Rows FREEZING_F =
      new Rows(GRAVITY, "", 1.000, 32, 1.100, 19, 1.150, 5, 1.200, -16, 1.250, -62, 1.280, -90);

  /** A difference of two readings in thousandths misses them by less than this. */
  private static final double ROUNDING = 1e-9;

  private Electrolyte() {}

  /**
   * A hydrometer's reading as it would be at 80 °F: {@code SG80 = SG + 0.004 (T - 80)/10}.
   *
   * <p>Kohler TP-5606 section 3, figure 3-17; Trojan user guide 7.3.
   *
   * @param gravity as read, 1.000 to 1.350
   * @param temperatureF of the acid, -65 to 130 °F
   */
  public static double correctedTo80F(double gravity, double temperatureF) {
    return gravity(gravity) + 0.004 * (temperature(temperatureF) - 80) / 10;
  }

  /** What the hydrometer reads at a temperature; the inverse of {@link #correctedTo80F}. */
  public static double readingAt(double gravityAt80F, double temperatureF) {
    return gravity(gravityAt80F) - 0.004 * (temperature(temperatureF) - 80) / 10;
  }

  /**
   * The metric form of the correction, to 20 °C: {@code SG20 = SG + 0.0007 (T - 20)}. Mitsubishi
   * Airtrek service manual.
   *
   * @param temperatureC of the acid, -40 to 55 °C
   */
  public static double correctedTo20C(double gravity, double temperatureC) {
    Validity.within("An acid temperature", temperatureC, -40, 55, "°C");
    return gravity(gravity) + 0.0007 * (temperatureC - 20);
  }

  /**
   * Percent of charge from the gravity at 80 °F, straight lines between 1.280 (100 %), 1.250,
   * 1.220, 1.190 (25 %) and 1.130 (0 %): US Army TM 5-1185, table II, for batteries that hold 1.280
   * when full. For another full gravity every row is moved by the difference, a program default.
   *
   * @param fullGravity the maker's gravity of a full battery, 1.250 to 1.300
   */
  public static double chargePercent(double gravityAt80F, double fullGravity) {
    Validity.within("A full battery's gravity", fullGravity, 1.250, 1.300, "");
    return CHARGE.atOrNearestEnd(gravity(gravityAt80F) + (1.280 - fullGravity));
  }

  /**
   * Where the acid begins to freeze, °F, straight lines between published rows: US Army OD 1002, p.
   * 54, and TM 5-1185, table III. Holds from 1.000 to 1.280.
   */
  public static double freezingPointF(double gravityAt80F) {
    return FREEZING_F.at(gravityAt80F);
  }

  /** How many degrees Celsius the coldest weather stays above the freezing point. */
  public static double freezeMarginC(double coldestC, double gravityAt80F) {
    Validity.within("A coldest temperature", coldestC, -60, 60, "°C");
    return coldestC - (freezingPointF(gravityAt80F) - 32) / 1.8;
  }

  /**
   * Open-circuit volts of six cells from the gravity, {@code 6 (SG + 0.845)}; agrees with published
   * charts within 0.10 V. Secondary: giantbatteryco.com.
   */
  public static double restedVolts(double gravity) {
    return 6 * (gravity(gravity) + 0.845);
  }

  /** Gravity from the open-circuit volts of one cell; the inverse of {@link #restedVolts}. */
  public static double fromCellVolts(double cellVolts) {
    Validity.within("A cell voltage", cellVolts, 1.845, 2.195, "V");
    return cellVolts - 0.845;
  }

  /** The largest difference between cells. */
  public static double cellSpread(List<Double> gravities) {
    if (gravities.size() < 2) {
      throw DoesNotHold.because(
          "too-few-cells", "A spread needs at least two cells.", "Read every cell.");
    }
    gravities.forEach(Electrolyte::gravity);
    return Collections.max(gravities) - Collections.min(gravities);
  }

  /**
   * Whether a fully charged battery is unserviceable for its spread: above 0.025. US Army TM
   * 9-6140-200-14 (1998), 4-7. Trojan asks to equalise from 0.030 and to judge after that.
   */
  public static boolean spreadRejects(double spread) {
    return Validity.within("A spread of gravities", spread, 0, 0.35, "") > 0.025 + ROUNDING;
  }

  private static double gravity(double gravity) {
    return Validity.within(GRAVITY, gravity, 1.000, 1.350, "");
  }

  private static double temperature(double temperatureF) {
    return Validity.within("An acid temperature", temperatureF, -65, 130, "°F");
  }
}

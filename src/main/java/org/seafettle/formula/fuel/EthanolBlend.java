package org.seafettle.formula.fuel;

import org.seafettle.formula.Validity;

/**
 * How much water gasoline with 10 % ethanol (E10) keeps dissolved before a layer of water and
 * ethanol falls out of it.
 *
 * <p>{@code W % = 0.30 + 0.004 (T - 10)}, T in °F from 10 to 60: a straight line, as a program
 * default, through two secondary points (0.5 % at 60 °F, 0.3 % at 10 °F). Laboratories differ by
 * about ±0.1 %: the University of Nebraska measured 0.40 %.
 */
public final class EthanolBlend {

  private static final double ML_PER_TEASPOON = 4.92892159375;
  private static final double ML_PER_GALLON = 3785.411784;

  private EthanolBlend() {}

  /** Percent of water by volume that E10 holds at a temperature, 10 to 60 °F. */
  public static double tolerancePercent(double temperatureF) {
    return 0.30 + 0.004 * (Validity.within("A fuel temperature", temperatureF, 10, 60, "°F") - 10);
  }

  /** The same as a volume, in the unit of the fuel's volume. */
  public static double toleratedVolume(double fuelVolume, double temperatureF) {
    return Validity.positive("A fuel volume", fuelVolume, "")
        * tolerancePercent(temperatureF)
        / 100;
  }

  /**
   * What falls out when fuel with dissolved water cools, in the unit of the volumes; zero when
   * everything stays dissolved. The ethanol that goes with it comes on top.
   */
  public static double separatesOnCooling(
      double fuelVolume, double dissolvedWater, double coldestF) {
    Validity.notNegative("A water volume", dissolvedWater, "");
    return Math.max(0, dissolvedWater - toleratedVolume(fuelVolume, coldestF));
  }

  /** Percentage points left before water falls out at the coldest temperature; below 0 it does. */
  public static double marginPercent(double waterPercent, double coldestF) {
    return tolerancePercent(coldestF) - Validity.within("A water content", waterPercent, 0, 5, "%");
  }

  /** Percent by volume of a volume of water in a volume of fuel, both in one unit. */
  public static double waterPercent(double waterVolume, double fuelVolume) {
    return 100
        * Validity.notNegative("A water volume", waterVolume, "")
        / Validity.positive("A fuel volume", fuelVolume, "");
  }

  /** Percent by volume from US teaspoons in a US gallon. */
  public static double percentFromTeaspoonsPerGallon(double teaspoons) {
    return waterPercent(teaspoons * ML_PER_TEASPOON, ML_PER_GALLON);
  }
}

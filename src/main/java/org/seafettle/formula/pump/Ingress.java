package org.seafettle.formula.pump;

import org.seafettle.formula.Validity;

/**
 * Water through a hole below the waterline: {@code Q = Cd A sqrt(2 g h)}, g 9.80665 m/s2.
 *
 * <p>Discharge coefficient: 0.61 for a sharp edge (from memory; the accuracy of ±2 % is in USBR
 * Water Measurement Manual, chapter 9); 0.6 for typical damage and 1.0 as the worst case. The usual
 * printed tables take 1.0 without saying so.
 */
public final class Ingress {

  /** For typical damage. */
  public static final double TYPICAL = 0.6;

  private static final double GRAVITY = 9.80665;

  /** Sea water, pounds-force on a square inch for each foot: US Army TM 55-1915-200-SDC, 8-8. */
  private static final double PSI_PER_FOOT = 0.444;

  /** Pounds in a US gallon of sea water: W. H. Seward Yacht Club, Boat Flooding Rates. */
  private static final double POUNDS_PER_GALLON = 8.6;

  private Ingress() {}

  /**
   * Litres a minute.
   *
   * @param millimetres diameter of the hole, above 0 to 300 mm
   * @param metres depth of its middle below the water, 0 to 10 m
   * @param coefficient of discharge, 0.4 to 1
   */
  public static double litresPerMinute(double millimetres, double metres, double coefficient) {
    Validity.within("A hole's diameter", millimetres, 0, 300, "mm");
    double area = Math.PI / 4 * Math.pow(millimetres / 1000, 2);
    return 60_000 * coefficient(coefficient) * area * velocity(metres);
  }

  /** The hole that a flow in litres a minute just balances, mm; the inverse. */
  public static double balancedMillimetres(
      double litresPerMinute, double metres, double coefficient) {
    Validity.notNegative("A pump's flow", litresPerMinute, "L/min");
    Validity.positive("A depth", metres, "m");
    double area = litresPerMinute / 60_000 / (coefficient(coefficient) * velocity(metres));
    return 1000 * Math.sqrt(4 * area / Math.PI);
  }

  /** Seconds to fill a space, volume and flow in one unit of volume, the flow a minute. */
  public static double fillingSeconds(double volume, double flowPerMinute) {
    return 60
        * Validity.positive("A volume", volume, "")
        / Validity.positive("A flow", flowPerMinute, "");
  }

  /** Pounds of sea water that come in each minute at a flow in US gallons a minute. */
  public static double poundsPerMinute(double gallonsPerMinute) {
    return POUNDS_PER_GALLON * Validity.notNegative("A flow", gallonsPerMinute, "gal/min");
  }

  /** The force on a plug, pounds-force, from the hole's diameter in inches and depth in feet. */
  public static double plugPounds(double inches, double feet) {
    Validity.within("A hole's diameter", inches, 0, 12, "in");
    Validity.within("A depth", feet, 0, 33, "ft");
    return Math.PI / 4 * inches * inches * PSI_PER_FOOT * feet;
  }

  private static double velocity(double metres) {
    return Math.sqrt(2 * GRAVITY * Validity.within("A depth", metres, 0, 10, "m"));
  }

  private static double coefficient(double coefficient) {
    return Validity.within("A discharge coefficient", coefficient, 0.4, 1, "");
  }
}

package org.seafettle.formula.battery;

import org.seafettle.formula.Validity;

/** How long a battery left alone still starts the engine. */
public final class Endurance {

  /**
   * The share of the charge that may be used before the engine no longer starts: 0.4, from a GM
   * bulletin text (secondary).
   */
  public static final double CRANKING_RESERVE = 0.4;

  private Endurance() {}

  /**
   * Hours of a constant draw, such as a pump stuck on, until only the cranking reserve is left:
   * {@code Peukert hours x state of charge x share}. The rated-hour form of Peukert's law is used.
   *
   * @param stateOfCharge 0 to 1, where known times measured over rated cranking amperes
   * @param share of the charge that may be used, above 0 to 1; {@link #CRANKING_RESERVE}
   */
  public static double hours(
      double ampereHours,
      double ratedHours,
      double exponent,
      double amperes,
      double stateOfCharge,
      double share) {
    Validity.within("A state of charge", stateOfCharge, 0, 1, "");
    Validity.within("A usable share", share, 0, 1, "");
    return Peukert.hoursRated(ampereHours, ratedHours, exponent, amperes) * stateOfCharge * share;
  }

  /**
   * Days of storage under a small key-off draw: {@code Ah x share/(24 A)}. Agrees with the
   * parasitic-load table of Odyssey batteries. Self-discharge comes on top.
   *
   * @param share of the capacity that may be used, 0 to 1
   */
  public static double storageDays(double ampereHours, double share, double amperes) {
    Validity.positive("A capacity", ampereHours, "Ah");
    Validity.within("A usable share", share, 0, 1, "");
    return ampereHours * share / (24 * Validity.positive("A key-off draw", amperes, "A"));
  }
}

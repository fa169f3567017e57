package org.seafettle.formula.battery;

import org.seafettle.formula.Validity;

/**
 * How long a battery carries a constant current. Two forms are in use, and mixing them is the usual
 * mistake: this class names each.
 */
public final class Peukert {

  private Peukert() {}

  /**
   * The rated-hour form, {@code t = H (C/(I H))^k}: hours until a full battery is flat. Below the
   * rated current the capacity is taken as it is rated, without bonus (Xantrex Link 20 manual, p.
   * 26). Form: batterystuff.com, secondary.
   *
   * @param ampereHours the nameplate capacity C
   * @param ratedHours the hours H of that rating, usually 20
   * @param exponent k, 1 to 1.6; Xantrex takes 1.25 where it is not known
   * @param amperes the draw I
   */
  public static double hoursRated(
      double ampereHours, double ratedHours, double exponent, double amperes) {
    Validity.positive("A capacity", ampereHours, "Ah");
    Validity.within("A rating's time", ratedHours, 1, 100, "h");
    Validity.positive("A draw", amperes, "A");
    double k = exponent(exponent);
    double linear = ampereHours / amperes;
    return linear >= ratedHours ? linear : ratedHours * Math.pow(linear / ratedHours, k);
  }

  /**
   * The one-ampere form, {@code t = Cp/I^k}. Cp is the Peukert capacity, not the nameplate's.
   * electrotechnik.net 2010, secondary.
   */
  public static double hoursOneAmpere(double peukertCapacity, double exponent, double amperes) {
    Validity.positive("A Peukert capacity", peukertCapacity, "Ah");
    Validity.positive("A draw", amperes, "A");
    return peukertCapacity / Math.pow(amperes, exponent(exponent));
  }

  /**
   * The exponent from two discharges, {@code k = (ln t2 - ln t1)/(ln I1 - ln I2)}. Xantrex Link 20
   * manual, p. 26.
   */
  public static double exponent(double amperes1, double hours1, double amperes2, double hours2) {
    Validity.positive("A draw", amperes1, "A");
    Validity.positive("A draw", amperes2, "A");
    Validity.positive("A time", hours1, "h");
    Validity.positive("A time", hours2, "h");
    return exponent(Math.log(hours2 / hours1) / Math.log(amperes1 / amperes2));
  }

  private static double exponent(double exponent) {
    return Validity.within("A Peukert exponent", exponent, 1, 1.6, "");
  }
}

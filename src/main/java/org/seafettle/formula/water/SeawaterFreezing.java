package org.seafettle.formula.water;

import org.seafettle.formula.Validity;

/** Where sea water begins to freeze. */
public final class SeawaterFreezing {

  private SeawaterFreezing() {}

  /**
   * {@code Tf = (-0.0575 + 1.710523e-3 sqrt(S) - 2.154996e-4 S) S - 7.53e-4 p}, °C; error about
   * 0.003 °C. UNESCO Technical Papers in Marine Science 44 (1983), p. 29. Below a salinity of 4
   * water is to be taken as fresh, freezing at 0 °C.
   *
   * @param salinity practical salinity, 4 to 40
   * @param decibars pressure below the surface, 0 to 500 dbar
   */
  public static double pointC(double salinity, double decibars) {
    Validity.within("A salinity", salinity, 4, 40, "");
    Validity.within("A pressure below the surface", decibars, 0, 500, "dbar");
    return (-0.0575 + 1.710523e-3 * Math.sqrt(salinity) - 2.154996e-4 * salinity) * salinity
        - 7.53e-4 * decibars;
  }
}

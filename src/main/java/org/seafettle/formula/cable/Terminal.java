package org.seafettle.formula.cable;

import static org.seafettle.formula.cable.Gauge.AWG_1;
import static org.seafettle.formula.cable.Gauge.AWG_10;
import static org.seafettle.formula.cable.Gauge.AWG_12;
import static org.seafettle.formula.cable.Gauge.AWG_14;
import static org.seafettle.formula.cable.Gauge.AWG_16;
import static org.seafettle.formula.cable.Gauge.AWG_18;
import static org.seafettle.formula.cable.Gauge.AWG_2;
import static org.seafettle.formula.cable.Gauge.AWG_3;
import static org.seafettle.formula.cable.Gauge.AWG_4;

import java.util.Map;
import java.util.Optional;
import org.seafettle.formula.DoesNotHold;
import org.seafettle.formula.Validity;
import org.seafettle.problem.Refused;

/** The joint at a wire's end: how tight the nut, how fast the crimp. */
public final class Terminal {

  /** Mercury 90-8M0099748 (December 2015), p. 4D-28: battery hex nuts, no wing nuts. */
  public static final double MERCURY_BATTERY_NUT_NM = 13.5;

  private static final Map<Gauge, Integer> CRIMP_POUNDS =
      Map.of(
          AWG_18, 10, AWG_16, 15, AWG_14, 30, AWG_12, 35, AWG_10, 40, AWG_4, 70, AWG_3, 80, AWG_2,
          90, AWG_1, 100);

  private Terminal() {}

  /**
   * How far a torque lies outside the maker's range, in percent of the nearer end; zero inside,
   * negative below, positive above.
   *
   * @param newtonMetres as measured, 0 to 100
   */
  public static double torqueDeviationPercent(double newtonMetres, double low, double high) {
    Validity.within("A torque", newtonMetres, 0, 100, "N·m");
    Validity.positive("The maker's lowest torque", low, "N·m");
    Validity.within("The maker's highest torque", high, low, 100, "N·m");
    if (newtonMetres > high) {
      return 100 * (newtonMetres - high) / high;
    }
    return newtonMetres < low ? 100 * (newtonMetres - low) / low : 0;
  }

  /**
   * The least pull that a crimp must hold for one minute, pounds-force. Boatowner's Illustrated
   * Electrical Handbook, table 6.7 (after ABYC E-11), and Boating, December 2019; secondary. A tug
   * in the field is no proof test, and nothing in service is pulled.
   *
   * @throws Refused for sizes whose figure could not be verified: 8, 6 and from 1/0
   */
  public static double crimpPounds(Gauge gauge) {
    return Optional.ofNullable(CRIMP_POUNDS.get(gauge))
        .orElseThrow(
            () ->
                DoesNotHold.because(
                    "no-crimp-figure",
                    "No verified crimp pull is known for " + gauge.label() + " AWG.",
                    "Take the figure from the terminal maker's data sheet."));
  }
}

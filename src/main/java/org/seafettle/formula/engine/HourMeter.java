package org.seafettle.formula.engine;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.seafettle.formula.DoesNotHold;
import org.seafettle.formula.Validity;
import org.seafettle.problem.Refused;

/** Whether the hours of an engine agree with each other and with its age. Program defaults. */
public final class HourMeter {

  private static final double DAYS_PER_YEAR = 365.25;

  private HourMeter() {}

  /** Whether control unit and panel differ by more than 5 h and 5 % of the larger. */
  public static boolean metersDisagree(double controlUnitHours, double panelHours) {
    return disagreement(controlUnitHours, panelHours) > 1;
  }

  /**
   * How far control unit and panel differ over what is allowed: the larger of 5 h and 5 % of the
   * larger of both.
   *
   * @param controlUnitHours 0 to 30,000 h
   * @param panelHours 0 to 30,000 h
   */
  public static double disagreement(double controlUnitHours, double panelHours) {
    double larger = Math.max(hours(controlUnitHours), hours(panelHours));
    return Math.abs(controlUnitHours - panelHours) / Math.max(5, 0.05 * larger);
  }

  /** Whether the meter shows less than at an earlier survey: replaced, reset or misread. */
  public static boolean wentBack(double earlierHours, double hoursNow) {
    return hours(hoursNow) < hours(earlierHours);
  }

  /**
   * Hours a year between two readings.
   *
   * @throws Refused when the meter went back, or the readings lie less than 30 days apart
   */
  public static double hoursPerYear(
      double earlierHours, LocalDate earlier, double hoursNow, LocalDate now) {
    if (wentBack(earlierHours, hoursNow)) {
      throw DoesNotHold.because(
          "meter-went-back",
          "The hour meter shows less than before.",
          "Say whether the meter was replaced or reset, and give the hours of both.");
    }
    double days =
        Validity.within(
            "A time between two readings", ChronoUnit.DAYS.between(earlier, now), 30, 36_525, "d");
    return (hoursNow - earlierHours) / days * DAYS_PER_YEAR;
  }

  private static double hours(double hours) {
    return Validity.within("A reading of the hour meter", hours, 0, 30_000, "h");
  }
}

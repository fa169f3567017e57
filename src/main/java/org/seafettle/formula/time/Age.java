package org.seafettle.formula.time;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.seafettle.problem.Refused;

/** Age on the day of the survey, counted on the calendar. */
public final class Age {

  private Age() {}

  /**
   * Days, such as those of fuel in its tank.
   *
   * @throws Refused when the beginning lies after the survey
   */
  public static long days(LocalDate since, LocalDate surveyed) {
    return ChronoUnit.DAYS.between(inOrder(since, surveyed), surveyed);
  }

  /** Whole years, such as those of a hose; a year is full on the same day of the month. */
  public static long years(LocalDate since, LocalDate surveyed) {
    return ChronoUnit.YEARS.between(inOrder(since, surveyed), surveyed);
  }

  private static LocalDate inOrder(LocalDate since, LocalDate surveyed) {
    if (since.isAfter(surveyed)) {
      throw Refused.because(
          "The date " + since + " lies after the survey of " + surveyed + ".", "Check both dates.");
    }
    return since;
  }
}

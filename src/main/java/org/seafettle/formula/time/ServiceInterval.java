package org.seafettle.formula.time;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.seafettle.formula.DoesNotHold;
import org.seafettle.formula.Validity;
import org.seafettle.problem.Refused;

/**
 * A maker's interval in hours and calendar months, whichever comes first. Months are counted on the
 * calendar: a year after 29 February is 28 February.
 *
 * @param hours running hours between services, above zero
 * @param months calendar months between services, 1 to 600
 */
public record ServiceInterval(double hours, int months) {

  public ServiceInterval {
    Validity.positive("A service interval", hours, "h");
    Validity.within("A service interval", months, 1, 600, "months");
  }

  /** The share of the hours that is used, above 1 where it is overrun. */
  public double usedByHours(double hoursSinceService) {
    return Validity.notNegative("A time since service", hoursSinceService, "h") / hours;
  }

  /**
   * The share of the calendar interval that is used, in days, above 1 where it is overrun.
   *
   * @throws Refused when the service lies after the day of the survey
   */
  public double usedByCalendar(LocalDate serviced, LocalDate surveyed) {
    return usedByCalendar(serviced, surveyed, months);
  }

  /** The same for what falls due on the calendar alone. */
  public static double usedByCalendar(LocalDate serviced, LocalDate surveyed, int months) {
    if (serviced.isAfter(surveyed)) {
      throw DoesNotHold.because(
          "service-after-survey",
          "The service of " + serviced + " lies after the survey of " + surveyed + ".",
          "Check both dates.");
    }
    double interval = ChronoUnit.DAYS.between(serviced, serviced.plusMonths(months));
    return ChronoUnit.DAYS.between(serviced, surveyed) / interval;
  }

  /** The larger of both shares. */
  public double used(double hoursSinceService, LocalDate serviced, LocalDate surveyed) {
    return Math.max(usedByHours(hoursSinceService), usedByCalendar(serviced, surveyed));
  }

  /** The last day of the calendar interval. */
  public LocalDate dueByCalendar(LocalDate serviced) {
    return serviced.plusMonths(months);
  }

  /** Hours that are left, below zero where the interval is overrun. */
  public double hoursLeft(double hoursSinceService) {
    return hours - Validity.notNegative("A time since service", hoursSinceService, "h");
  }
}

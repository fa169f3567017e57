package org.seafettle.formula.time;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/** Stands in until the real one lands. */
public final class ServiceInterval {
  private ServiceInterval() {}

  public static double monthsBetween(LocalDate from, LocalDate to) {
    return ChronoUnit.DAYS.between(from, to) / 30.4375;
  }

  public static double calendarShare(LocalDate from, LocalDate to, double months) {
    return monthsBetween(from, to) / months;
  }
}

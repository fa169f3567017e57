package org.seafettle.formula.time;

import java.time.LocalDate;
import java.time.MonthDay;
import java.time.temporal.ChronoUnit;

/**
 * The part of the year in which the boat is used, both days included; it may run over the new year.
 *
 * @param from first day
 * @param to last day
 */
public record Season(MonthDay from, MonthDay to) {

  /** A common year, for a length that does not change with leap years. */
  private static final int COMMON_YEAR = 2025;

  /** Days in a common year, both ends included. */
  public long days() {
    var first = from.atYear(COMMON_YEAR);
    var last = to.atYear(isOverNewYear() ? COMMON_YEAR + 1 : COMMON_YEAR);
    return ChronoUnit.DAYS.between(first, last) + 1;
  }

  public boolean contains(LocalDate date) {
    var day = MonthDay.from(date);
    boolean started = !day.isBefore(from);
    boolean notOver = !day.isAfter(to);
    return isOverNewYear() ? started || notOver : started && notOver;
  }

  private boolean isOverNewYear() {
    return to.isBefore(from);
  }
}

package org.seafettle.formula.time;

import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.seafettle.formula.Validity;

/**
 * When the hours of an interval will have run out, and the earlier of that and the calendar. Hours
 * accrue in the season only, evenly over its days: a program rule. A rate over the whole year would
 * be weeks wrong.
 */
public final class DueDate {

  /** Beyond this many seasons the hours never run out for any practical purpose. */
  private static final int MOST_SEASONS = 50;

  private static final double ROUNDING = 1e-9;

  private DueDate() {}

  /**
   * The day on which the hours run out; the day of the survey where they already have; empty where
   * the boat is not used or would need more than fifty seasons.
   *
   * @param hoursLeft of the interval, below zero where it is overrun
   * @param hoursPerSeason 0 to 8760 h
   */
  public static Optional<LocalDate> byHours(
      Season season, LocalDate surveyed, double hoursLeft, double hoursPerSeason) {
    if (hoursLeft <= 0) {
      return Optional.of(surveyed);
    }
    Validity.positive("The hours left", hoursLeft, "h");
    Validity.within("The hours of a season", hoursPerSeason, 0, 8760, "h");
    if (hoursLeft > MOST_SEASONS * hoursPerSeason) {
      return Optional.empty();
    }
    var day = surveyed;
    for (long needed = seasonDays(season, hoursLeft, hoursPerSeason); needed > 0; ) {
      day = day.plusDays(1);
      needed -= season.contains(day) ? 1 : 0;
    }
    return Optional.of(day);
  }

  /** The number of days in season that use up the hours, the last one counted whole. */
  public static long seasonDays(Season season, double hoursLeft, double hoursPerSeason) {
    double perDay = Validity.positive("The hours of a season", hoursPerSeason, "h") / season.days();
    return (long) Math.ceil(hoursLeft / perDay - ROUNDING);
  }

  /** Whichever comes first, of the date by hours (where there is one) and that by the calendar. */
  public static LocalDate earlier(Optional<LocalDate> byHours, LocalDate byCalendar) {
    return byHours.filter(date -> date.isBefore(byCalendar)).orElse(byCalendar);
  }

  /**
   * The span from a busy season to a quiet one.
   *
   * @param fast at the most hours of any season known
   * @param slow at the fewest; empty where that many seasons never use the hours up
   */
  public record Span(Optional<LocalDate> fast, Optional<LocalDate> slow) {}

  /**
   * The span of due dates from the hours of past seasons.
   *
   * @param seasons hours of at least one past season
   */
  public static Span span(
      Season season, LocalDate surveyed, double hoursLeft, List<Double> seasons) {
    Validity.positive("A number of past seasons", seasons.size(), "");
    return new Span(
        byHours(season, surveyed, hoursLeft, Collections.max(seasons)),
        byHours(season, surveyed, hoursLeft, Collections.min(seasons)));
  }
}

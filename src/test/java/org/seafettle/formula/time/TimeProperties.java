package org.seafettle.formula.time;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.MonthDay;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

class TimeProperties {

  private static final Season SUMMER = new Season(MonthDay.of(5, 1), MonthDay.of(9, 30));

  @Property
  void the_due_date_lies_in_the_season_and_after_the_survey(
      @ForAll @IntRange(max = 20_000) int day,
      @ForAll @DoubleRange(min = 0.1, max = 300) double left,
      @ForAll @DoubleRange(min = 20, max = 300) double perSeason) {
    var surveyed = LocalDate.ofEpochDay(day);
    var due = DueDate.byHours(SUMMER, surveyed, left, perSeason).orElseThrow();
    assertThat(SUMMER.contains(due)).isTrue();
    assertThat(due).isAfter(surveyed);
  }

  @Property
  void more_hours_left_never_fall_due_earlier(
      @ForAll @IntRange(max = 20_000) int day,
      @ForAll @DoubleRange(min = 0.1, max = 100) double left,
      @ForAll @DoubleRange(min = 0, max = 100) double more) {
    var surveyed = LocalDate.ofEpochDay(day);
    var sooner = DueDate.byHours(SUMMER, surveyed, left, 60).orElseThrow();
    var later = DueDate.byHours(SUMMER, surveyed, left + more, 60).orElseThrow();
    assertThat(later).isAfterOrEqualTo(sooner);
  }

  @Property
  void the_share_of_the_calendar_is_one_on_the_due_day_whatever_the_leap_years(
      @ForAll @IntRange(max = 20_000) int day, @ForAll @IntRange(min = 1, max = 120) int months) {
    var serviced = LocalDate.ofEpochDay(day);
    var interval = new ServiceInterval(100, months);
    var due = interval.dueByCalendar(serviced);
    assertThat(interval.usedByCalendar(serviced, due)).isEqualTo(1);
    assertThat(interval.usedByCalendar(serviced, due.minusDays(1))).isLessThan(1);
    assertThat(interval.usedByCalendar(serviced, due.plusDays(1))).isGreaterThan(1);
  }

  @Property
  void a_season_has_as_many_days_as_it_contains(
      @ForAll @IntRange(min = 1, max = 365) int from,
      @ForAll @IntRange(min = 1, max = 365) int to) {
    var season =
        new Season(
            MonthDay.from(LocalDate.ofYearDay(2025, from)),
            MonthDay.from(LocalDate.ofYearDay(2025, to)));
    long contained =
        LocalDate.of(2025, 1, 1)
            .datesUntil(LocalDate.of(2026, 1, 1))
            .filter(season::contains)
            .count();
    assertThat(season.days()).isEqualTo(contained);
  }
}

package org.seafettle.formula.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.seafettle.problem.Refused;

class DueDateTest {

  private static final Season SUMMER = new Season(MonthDay.of(5, 1), MonthDay.of(9, 30));
  private static final Season SOUTHERN = new Season(MonthDay.of(11, 1), MonthDay.of(3, 31));
  private static final LocalDate LAY_UP = LocalDate.of(2025, 9, 30);

  @Test
  void a_busy_season_brings_the_date_forward_and_a_quiet_one_puts_it_off() {
    var span = DueDate.span(SUMMER, LAY_UP, 50, List.of(61.2, 76.5, 45.9));
    assertThat(span.fast()).contains(LocalDate.of(2026, 8, 8));
    assertThat(span.slow()).contains(LocalDate.of(2027, 5, 14));
    assertThatThrownBy(() -> DueDate.span(SUMMER, LAY_UP, 50, List.of()))
        .isInstanceOf(Refused.class);
  }

  @Test
  void an_interval_that_is_used_up_is_due_on_the_day_of_the_survey() {
    assertThat(DueDate.byHours(SUMMER, LAY_UP, 0, 61.2)).contains(LAY_UP);
    assertThat(DueDate.byHours(SUMMER, LAY_UP, -12, 61.2)).contains(LAY_UP);
  }

  @Test
  void a_boat_that_is_not_used_goes_by_the_calendar_alone() {
    var byHours = DueDate.byHours(SUMMER, LAY_UP, 50, 0);
    assertThat(byHours).isEmpty();
    var calendar = LocalDate.of(2026, 5, 10);
    assertThat(DueDate.earlier(byHours, calendar)).isEqualTo(calendar);
    assertThat(DueDate.earlier(Optional.of(LAY_UP), calendar)).isEqualTo(LAY_UP);
    assertThat(DueDate.byHours(SUMMER, LAY_UP, 5000, 100)).contains(LAY_UP.plusYears(50));
    assertThat(DueDate.byHours(SUMMER, LAY_UP, 5001, 100)).isEmpty();
  }

  @Test
  void a_season_may_run_over_the_new_year() {
    assertThat(SOUTHERN.days()).isEqualTo(30 + 31 + 31 + 28 + 31);
    assertThat(SOUTHERN.contains(LocalDate.of(2026, 1, 1))).isTrue();
    assertThat(SOUTHERN.contains(LocalDate.of(2026, 11, 1))).isTrue();
    assertThat(SOUTHERN.contains(LocalDate.of(2026, 4, 1))).isFalse();
    assertThat(SUMMER.contains(LocalDate.of(2026, 4, 30))).isFalse();
    assertThat(SUMMER.contains(LocalDate.of(2026, 9, 30))).isTrue();
  }

  @Test
  void hours_that_are_no_number_are_refused() {
    assertThatThrownBy(() -> DueDate.byHours(SUMMER, LAY_UP, Double.NaN, 60))
        .isInstanceOf(Refused.class);
    assertThatThrownBy(() -> DueDate.byHours(SUMMER, LAY_UP, 50, -1)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> DueDate.seasonDays(SUMMER, 50, 0)).isInstanceOf(Refused.class);
  }

  @Test
  void age_is_counted_on_the_calendar() {
    assertThat(Age.days(LocalDate.of(2026, 2, 28), LocalDate.of(2026, 10, 17))).isEqualTo(231);
    assertThat(Age.years(LocalDate.of(2016, 10, 18), LocalDate.of(2026, 10, 17))).isEqualTo(9);
    assertThat(Age.years(LocalDate.of(2016, 10, 17), LocalDate.of(2026, 10, 17))).isEqualTo(10);
    assertThatThrownBy(() -> Age.days(LAY_UP, LAY_UP.minusDays(1)))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("2025-09-30");
  }
}

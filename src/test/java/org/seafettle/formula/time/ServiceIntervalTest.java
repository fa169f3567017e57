package org.seafettle.formula.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.seafettle.problem.Refused;

class ServiceIntervalTest {

  private static final ServiceInterval YEARLY = new ServiceInterval(100, 12);

  @Test
  void whichever_comes_first_decides() {
    var serviced = LocalDate.of(2025, 9, 20);
    var surveyed = LocalDate.of(2026, 3, 21);
    assertThat(YEARLY.usedByHours(72.4)).isCloseTo(0.724, within(1e-9));
    assertThat(YEARLY.usedByCalendar(serviced, surveyed)).isCloseTo(182 / 365.0, within(1e-9));
    assertThat(YEARLY.used(72.4, serviced, surveyed)).isCloseTo(0.724, within(1e-9));
    assertThat(YEARLY.used(10, serviced, surveyed)).isCloseTo(182 / 365.0, within(1e-9));
    assertThat(YEARLY.hoursLeft(130)).isEqualTo(-30);
  }

  @Test
  void a_year_after_the_leap_day_is_the_last_of_february() {
    assertThat(YEARLY.dueByCalendar(LocalDate.of(2024, 2, 29)))
        .isEqualTo(LocalDate.of(2025, 2, 28));
    assertThat(YEARLY.usedByCalendar(LocalDate.of(2024, 2, 29), LocalDate.of(2025, 2, 28)))
        .isEqualTo(1);
  }

  @Test
  void the_day_of_the_service_itself_uses_nothing() {
    var day = LocalDate.of(2026, 10, 17);
    assertThat(YEARLY.used(0, day, day)).isZero();
  }

  @Test
  void a_service_after_the_survey_and_empty_intervals_are_refused() {
    var day = LocalDate.of(2026, 10, 17);
    assertThatThrownBy(() -> YEARLY.usedByCalendar(day.plusDays(1), day))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("2026-10-18");
    assertThatThrownBy(() -> new ServiceInterval(0, 12)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> new ServiceInterval(100, 0)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> YEARLY.usedByHours(-1)).isInstanceOf(Refused.class);
  }
}

package org.seafettle.trend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.seafettle.problem.Refused;
import org.seafettle.quantity.Quantity;
import org.seafettle.trend.Course.Reading;

class CourseTest {

  @Test
  void two_readings_of_one_season_come_at_the_same_time() {
    var series =
        series(
            point("2023-10-02", "12.6 V", 400),
            point("2024-04-30", "12.5 V", 401),
            point("2024-05-01", "12500 mV", 401),
            point("2025-10-01", "12400 mV", 480));
    var course = Course.bySeason(series, MonthDay.of(5, 1));
    assertThat(course.readings())
        .containsExactly(
            new Reading(2023, 12_600),
            new Reading(2023, 12_500),
            new Reading(2024, 12_500),
            new Reading(2025, 12_400));
    assertThat(course.occasions()).isEqualTo(3);
    assertThat(course.enough()).isFalse();
  }

  @Test
  void a_season_over_the_new_year_is_one_season() {
    var series = series(point("2024-11-20", "12.6 V", 400), point("2025-03-20", "12.5 V", 440));
    assertThat(Course.bySeason(series, MonthDay.of(10, 1)).occasions()).isEqualTo(1);
    assertThat(Course.bySeason(series, MonthDay.of(1, 1)).occasions()).isEqualTo(2);
  }

  @Test
  void along_the_hours_slopes_are_per_hour() {
    var course =
        Course.byHours(
            series(point("2024-10-01", "22 ppm", 410), point("2025-10-01", "47 ppm", 510)));
    assertThat(TheilSen.of(course).slope()).isEqualTo(0.25);
  }

  @Test
  void hours_that_are_not_known_or_went_back_carry_no_course() {
    var unknown =
        series(
            new Series.Point(
                LocalDate.parse("2024-10-01"), Quantity.parse("22 ppm"), OptionalDouble.empty()),
            point("2025-10-01", "47 ppm", 510));
    assertThatThrownBy(() -> Course.byHours(unknown))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("The engine's hours on 2024-10-01 are not known.");
    var back = series(point("2024-10-01", "22 ppm", 410), point("2025-10-01", "47 ppm", 12));
    assertThatThrownBy(() -> Course.byHours(back))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("showed less on 2025-10-01 than before");
  }

  @Test
  void five_seasons_are_enough() {
    assertThat(MannKendallTest.yearly(List.of(1.0, 1.0, 1.0, 1.0, 1.0)).enough()).isTrue();
  }

  @Test
  void readings_are_put_in_the_order_of_time() {
    assertThat(Course.of(List.of(3.0, 1.0), List.of(30.0, 10.0)).readings())
        .containsExactly(new Reading(1, 10), new Reading(3, 30));
  }

  @Test
  void what_is_no_number_is_refused() {
    assertThatThrownBy(() -> Course.of(List.of(1.0), List.of(Double.NaN)))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("One of these readings is no number.");
    assertThatThrownBy(() -> Course.of(List.of(Double.NEGATIVE_INFINITY), List.of(1.0)))
        .isInstanceOf(Refused.class);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Course.of(List.of(1.0), List.of(1.0, 2.0)));
  }

  private static Series series(Series.Point... points) {
    return new Series("iron-in-oil", "port", "iron", List.of(points));
  }

  private static Series.Point point(String date, String quantity, double hours) {
    return new Series.Point(
        LocalDate.parse(date), Quantity.parse(quantity), OptionalDouble.of(hours));
  }
}

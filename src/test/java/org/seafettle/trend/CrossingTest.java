package org.seafettle.trend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.seafettle.trend.Crossing.Expected;
import org.seafettle.trend.Crossing.Unknown;
import org.seafettle.trend.Crossing.Why;

class CrossingTest {

  /** Volts while cranking: slope -0.15 V a season, s 0.0316 V. */
  private static final Course CRANKING =
      Course.of(
          List.of(2021.0, 2022.0, 2023.0, 2024.0, 2025.0), List.of(10.6, 10.5, 10.3, 10.2, 10.0));

  @Test
  void the_limit_is_reached_where_line_and_interval_come_to_it() {
    var expected = (Expected) Crossing.of(CRANKING, 9.6);
    assertThat(expected.at()).isCloseTo(2027.8, within(1e-6));
    assertThat(expected.earliest()).isCloseTo(2026.7213, within(1e-4));
    assertThat(expected.latest()).isCloseTo(2029.3312, within(1e-4));
    var line = Line.of(CRANKING);
    assertThat(line.readingWithin(expected.earliest(), 0.95).low()).isCloseTo(9.6, within(1e-9));
    assertThat(line.readingWithin(expected.latest(), 0.95).high()).isCloseTo(9.6, within(1e-9));
  }

  @Test
  void a_rising_reading_comes_to_a_limit_above() {
    var iron = Course.of(List.of(1.0, 2.0, 3.0, 4.0, 5.0), List.of(20.0, 31.0, 40.0, 49.0, 60.0));
    var expected = (Expected) Crossing.of(iron, 80);
    assertThat(expected.at()).isCloseTo(3 + 40 / 9.8, within(1e-9));
    var line = Line.of(iron);
    assertThat(line.readingWithin(expected.earliest(), 0.95).high()).isCloseTo(80, within(1e-9));
    assertThat(line.readingWithin(expected.latest(), 0.95).low()).isCloseTo(80, within(1e-9));
  }

  @Test
  void the_earliest_is_not_before_the_last_reading() {
    // at 9.99 V the interval already holds the limit in 2025
    var expected = (Expected) Crossing.of(CRANKING, 9.99);
    assertThat(expected.earliest()).isEqualTo(2025);
    assertThat(expected.at()).isCloseTo(2025.2, within(1e-6));
  }

  @Test
  void readings_without_scatter_reach_it_at_one_time() {
    var straight = MannKendallTest.yearly(List.of(1.0, 2.0, 3.0, 4.0, 5.0));
    assertThat(Crossing.of(straight, 7)).isEqualTo(new Expected(7, 7, 7));
  }

  @ParameterizedTest(name = "a limit of {0} V: {1}")
  @CsvSource({"11, NOT_AHEAD", "10.02, NOT_AHEAD", "9.42, FOUND", "9.41, TOO_FAR", "5, TOO_FAR"})
  void a_limit_behind_or_far_ahead_is_not_promised(double limit, String said) {
    var crossing = Crossing.of(CRANKING, limit);
    assertThat(crossing instanceof Unknown unknown ? unknown.why().name() : "FOUND")
        .isEqualTo(said);
  }

  @Test
  void readings_that_go_nowhere_reach_nothing() {
    var hours = MannKendallTest.yearly(List.of(52.0, 61.0, 48.0, 70.0, 75.0));
    assertThat(Crossing.of(hours, 85)).isEqualTo(new Unknown(Why.NO_PROVEN_SLOPE));
    var same = MannKendallTest.yearly(List.of(5.0, 5.0, 5.0, 5.0, 5.0));
    assertThat(Crossing.of(same, 85)).isEqualTo(new Unknown(Why.NO_PROVEN_SLOPE));
  }

  @Test
  void four_seasons_are_too_few_however_often_one_looked() {
    var four =
        Course.of(List.of(1.0, 2.0, 3.0, 4.0, 4.0, 4.0), List.of(1.0, 2.0, 3.0, 4.0, 4.1, 4.2));
    assertThat(Crossing.of(four, 5)).isEqualTo(new Unknown(Why.TOO_FEW));
  }
}

package org.seafettle.trend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.seafettle.problem.Refused;
import org.seafettle.quantity.Quantity;

class ChangeTest {

  @ParameterizedTest(name = "from {0} to {1}: {2}, {3}")
  @CsvSource({
    "12.6 ± 0.05 V, 12.4 ± 0.05 V,  -0.2,  FELL",
    "12.4 ± 0.05 V, 12.6 ± 0.05 V,  0.2,   ROSE",
    "12.6 ± 0.1 V,  12.4 ± 0.1 V,   -0.2,  NOT_PROVEN",
    "12.4 ± 0.1 V,  12.6 ± 0.1 V,   0.2,   NOT_PROVEN",
    "12.6 ± 0.1 V,  12.39 ± 0.1 V,  -0.21, FELL",
    "12.6 V,        12.39 ± 0.1 V,  -0.21, UNCERTAINTY_NOT_STATED",
    "12.6 ± 0.1 V,  12.39 V,        -0.21, UNCERTAINTY_NOT_STATED",
    "150 ± 5 psi,   1000 ± 30 kPa,  -34.213594, NOT_PROVEN",
    "150 ± 4 psi,   1000 ± 5 kPa,   -34.213594, FELL",
    "50 ± 5 °F,     16 ± 3.3 °C,    6,     NOT_PROVEN",
    "50 ± 5 °F,     16 ± 3.2 °C,    6,     ROSE"
  })
  void a_change_is_proven_where_the_ranges_lie_apart(
      String before, String now, double amount, String verdict) {
    var change = change(before, now);
    assertThat(change.amount()).isCloseTo(amount, within(1e-6));
    assertThat(change.verdict().name()).isEqualTo(verdict);
  }

  @Test
  void a_rate_counts_the_hours_of_use_and_not_the_calendar() {
    var iron = change("22 ppm", "47 ppm");
    assertThat(iron.perHour(410, 510)).isCloseTo(0.25, within(1e-12));
    assertThatThrownBy(() -> iron.perHour(410, 410)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> iron.perHour(410, 12))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("the meter was replaced or reset");
    assertThatThrownBy(() -> iron.perHour(410, Double.POSITIVE_INFINITY))
        .isInstanceOf(Refused.class);
  }

  @Test
  void volts_do_not_change_into_amperes() {
    assertThatThrownBy(() -> change("12.6 V", "40 A")).isInstanceOf(Refused.class);
  }

  private static Change change(String before, String now) {
    return new Change(Quantity.parse(before), Quantity.parse(now));
  }
}

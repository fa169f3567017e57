package org.seafettle.formula.pump;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.seafettle.problem.Refused;

class DeliveryTest {

  @Test
  void a_ten_litre_bucket_in_thirty_seconds_is_twenty_litres_a_minute() {
    assertThat(Delivery.litresPerMinute(10, 30)).isEqualTo(20);
  }

  @Test
  void six_runs_of_two_litres_in_a_day_are_half_a_litre_an_hour() {
    assertThat(Delivery.inflowLitresPerHour(6, 2, 24)).isEqualTo(0.5);
    assertThat(Delivery.inflowLitresPerHour(0, 2, 24)).isZero();
  }

  @Test
  void a_bucket_that_never_fills_is_refused() {
    assertThatThrownBy(() -> Delivery.litresPerMinute(10, 0)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> Delivery.inflowLitresPerHour(1, 1, 0)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> Delivery.shareOfRated(1, 0)).isInstanceOf(Refused.class);
  }
}

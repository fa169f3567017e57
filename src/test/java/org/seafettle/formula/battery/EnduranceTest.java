package org.seafettle.formula.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.seafettle.problem.Refused;

class EnduranceTest {

  @Test
  void a_pump_stuck_on_eats_the_cranking_reserve_of_a_half_charged_battery() {
    // 8.7055 h to flat at 10 A, half charged, 0.4 of it before the engine no longer starts
    assertThat(Endurance.hours(100, 20, 1.2, 10, 0.5, Endurance.CRANKING_RESERVE))
        .isCloseTo(8.70551 * 0.2, within(1e-5));
  }

  @Test
  void an_empty_battery_lasts_no_time() {
    assertThat(Endurance.hours(100, 20, 1.2, 10, 0, 0.4)).isZero();
    assertThat(Endurance.storageDays(100, 0, 0.02)).isZero();
  }

  @Test
  void below_the_rated_current_the_capacity_has_no_bonus() {
    assertThat(Peukert.hoursRated(100, 20, 1.3, 2.5)).isEqualTo(40);
  }

  @Test
  void a_charge_above_full_and_a_draw_of_nothing_are_refused() {
    assertThatThrownBy(() -> Endurance.hours(100, 20, 1.2, 10, 1.01, 0.4))
        .isInstanceOf(Refused.class);
    assertThatThrownBy(() -> Endurance.hours(100, 20, 1.2, 0, 1, 0.4)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> Endurance.storageDays(100, 1, 0)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> Peukert.hoursRated(100, 20, 2, 1)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> Peukert.exponent(5, 20, 5, 1)).isInstanceOf(Refused.class);
  }
}

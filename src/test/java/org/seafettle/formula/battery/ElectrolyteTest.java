package org.seafettle.formula.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.seafettle.problem.Refused;

class ElectrolyteTest {

  @Test
  void a_discharged_battery_freezes_in_an_ordinary_winter() {
    assertThat(Electrolyte.freezeMarginC(-20, 1.100)).isCloseTo(-20 + 7.222, within(0.001));
    assertThat(Electrolyte.freezeMarginC(-20, 1.280)).isGreaterThan(40);
  }

  @Test
  void a_battery_that_holds_less_when_full_is_judged_by_its_own_scale() {
    assertThat(Electrolyte.chargePercent(1.265, 1.265)).isCloseTo(100, within(1e-6));
    assertThat(Electrolyte.chargePercent(1.265, 1.280)).isCloseTo(87.5, within(1e-6));
    assertThat(Electrolyte.chargePercent(1.100, 1.280)).isZero();
  }

  @Test
  void the_spread_is_that_of_the_two_cells_farthest_apart() {
    double spread = Electrolyte.cellSpread(List.of(1.265, 1.240, 1.260, 1.262, 1.255, 1.261));
    assertThat(spread).isCloseTo(0.025, within(1e-9));
    assertThat(Electrolyte.spreadRejects(spread)).isFalse();
    assertThat(Electrolyte.cellSpread(List.of(1.265, 1.240))).isCloseTo(0.025, within(1e-9));
    assertThatThrownBy(() -> Electrolyte.cellSpread(List.of(1.265))).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> Electrolyte.cellSpread(List.of(1.265, 1265.0)))
        .isInstanceOf(Refused.class);
  }

  @Test
  void a_gravity_outside_the_tables_is_refused() {
    assertThatThrownBy(() -> Electrolyte.freezingPointF(1.29)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> Electrolyte.correctedTo80F(0.99, 80)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> Electrolyte.correctedTo80F(1.25, 131)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> Electrolyte.chargePercent(1.25, 1.31)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> Electrolyte.fromCellVolts(12.6)).isInstanceOf(Refused.class);
  }

  @Test
  void the_share_of_the_cranking_rating_that_is_left_is_a_ratio_of_like_with_like() {
    assertThat(Ratings.crankingRatio(480, 600)).isCloseTo(0.8, within(1e-9));
    assertThatThrownBy(() -> Ratings.crankingRatio(950, 600)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> Ratings.coldFromMarine(5)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> Ratings.ampereHoursAt25A(0)).isInstanceOf(Refused.class);
  }

  @Test
  void a_load_or_capacity_test_outside_its_temperatures_is_refused() {
    assertThatThrownBy(() -> LoadTest.minimumVolts(-18.1)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> LoadTest.minimumVolts(61)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> ChargingVoltage.correctedDischargeMinutes(100, 23))
        .isInstanceOf(Refused.class);
    assertThatThrownBy(() -> ChargingVoltage.correctedDischargeMinutes(100, 33))
        .isInstanceOf(Refused.class);
    assertThatThrownBy(() -> ChargingVoltage.target(14.4, 51, 6, 5)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> ChargingVoltage.target(28.8, 20, 6, 5)).isInstanceOf(Refused.class);
  }
}

package org.seafettle.formula.fuel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.seafettle.formula.fuel.HoseType.Run;
import org.seafettle.problem.Refused;

class FuelSystemTest {

  /** The table's own rows end where it says, not beside it. */
  @ParameterizedTest
  @CsvSource({"770.5, 0.00115303", "787.5, 0.00095870", "838.9, 0.00084482", "839, 0.00084511"})
  void on_the_border_of_two_fuels_the_table_says_whose_swelling_holds(double density, double perC) {
    assertThat(Density.expansionPerC(density)).isCloseTo(perC, within(1e-8));
  }

  @Test
  void the_lift_is_taken_from_the_vacuum_before_the_filter_is_blamed() {
    // 2 inHg with the gauge 0.6096 m (2 ft) above the fuel: 2 x 0.658 inHg is lift alone
    assertThat(Restriction.lineKilopascals(6.7728, 745, 0.6096)).isCloseTo(2.319, within(0.001));
    assertThat(Restriction.lineKilopascals(0, 745, -1)).isPositive();
    assertThatThrownBy(() -> Restriction.lineKilopascals(90, 745, 0)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> Restriction.liftKilopascals(745, 6)).isInstanceOf(Refused.class);
  }

  @Test
  void a_layer_higher_than_the_tank_is_refused() {
    var box = new Tank.Box(120, 60, 40);
    assertThatThrownBy(() -> box.litres(41)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> box.heightCm(300)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> new Tank.Lying(0, 120)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> new Tank.Lying(50, 0)).isInstanceOf(Refused.class);
    var lying = new Tank.Lying(50, 120);
    assertThat(lying.litres(50)).isCloseTo(235.619, within(0.001));
    assertThat(lying.litres(0)).isZero();
    assertThatThrownBy(() -> lying.heightCm(236)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> new Tank.Upright(50, 40).litres(-1)).isInstanceOf(Refused.class);
  }

  @Test
  void a_tank_without_extent_is_no_tank() {
    assertThatThrownBy(() -> new Tank.Box(0, 60, 40)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> new Tank.Box(120, 0, 40)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> new Tank.Box(120, 60, 0)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> new Tank.Upright(0, 40)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> new Tank.Upright(50, 0)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> new Tank.Box(120, 60, 2001)).isInstanceOf(Refused.class);
  }

  @Test
  void an_upright_tank_half_full_holds_half_of_what_it_can() {
    var upright = new Tank.Upright(50, 120);
    assertThat(upright.litres(60)).isCloseTo(117.810, within(0.001));
    assertThat(upright.heightCm(117.810)).isCloseTo(60, within(0.001));
  }

  @Test
  void a_density_that_is_no_fuel_is_refused() {
    assertThatThrownBy(() -> Density.expansionPerC(652)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> Density.expansionPerC(1076)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> Density.gravityFromApi(200)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> Density.volumeAt60FOver(0.745, 151)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> Density.ullagePercent(0.00125, -1)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> SystemTest.testPsi(745, 11)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> Burn.DIESEL.gallonsPerHour(0)).isInstanceOf(Refused.class);
  }

  @ParameterizedTest
  @CsvSource({
    "USCG TYPE A1-15, A1, true",
    "uscg type a1, A1, false",
    "SAE J1527 B2-15 2014, B2, true",
    "2016 USCG TYPE A2 ACME, A2, false"
  })
  void a_hose_says_its_type_and_whether_it_lets_little_fuel_through(
      String marking, HoseType type, boolean low) {
    assertThat(HoseType.ofMarking(marking)).isEqualTo(type);
    assertThat(HoseType.lowPermeation(marking)).isEqualTo(low);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "SAE 30R7", "A3", "AA1", "A15"})
  void a_hose_without_a_marine_type_is_refused(String marking) {
    assertThatThrownBy(() -> HoseType.ofMarking(marking)).isInstanceOf(Refused.class);
  }

  @ParameterizedTest
  @CsvSource({
    "A1, PUMP_TO_CARBURETTOR, false, true", "B1, PUMP_TO_CARBURETTOR, true, false",
    "A2, PUMP_TO_CARBURETTOR, true, false", "A1, TANK_TO_ENGINE, false, true",
    "B1, TANK_TO_ENGINE, true, true", "B1, TANK_TO_ENGINE, false, false",
    "A2, TANK_TO_ENGINE, true, false", "A2, FILL_OR_VENT, false, true",
    "B2, FILL_OR_VENT, true, true", "B2, FILL_OR_VENT, false, false"
  })
  void a_hose_may_run_where_the_law_lets_it(
      HoseType type, Run run, boolean spillsLittle, boolean allowed) {
    assertThat(type.allowed(run, spillsLittle)).isEqualTo(allowed);
  }
}

package org.seafettle.formula.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.seafettle.formula.water.Thermostat.Running;
import org.seafettle.problem.Refused;

class CoolingTest {

  /** Mercury 15 EFI manual (2017), p. 218. */
  private static final Thermostat SMALL_OUTBOARD = new Thermostat(50, 54, 62);

  @ParameterizedTest
  @CsvSource({"50, 0", "54, 0", "52, 0", "47, -3", "58, 4"})
  void a_thermostat_is_judged_by_its_band_on_the_bench(double opened, double deviation) {
    assertThat(SMALL_OUTBOARD.deviationC(opened)).isCloseTo(deviation, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({
    "44.9, TOO_COLD",
    "45, NORMAL",
    "77, NORMAL",
    "77.1, TOO_HOT",
    "84.9, TOO_HOT",
    "85, NEAR_ALARM",
    "100, NEAR_ALARM"
  })
  void a_running_engine_is_judged_by_the_same_band(double celsius, Running running) {
    assertThat(SMALL_OUTBOARD.running(celsius, 95)).isEqualTo(running);
  }

  /** The correlations of Sharqawy and others 2010, which were fitted to other measurements. */
  @ParameterizedTest
  @CsvSource({"35, 3998.94, 1024.911", "0, 4189.38, 998.015"})
  void another_correlation_finds_nearly_the_same_water(
      double salinity, double specificHeat, double density) {
    assertThat(Seawater.specificHeat(salinity, 20))
        .isCloseTo(specificHeat, within(specificHeat * 0.002));
    assertThat(Seawater.density(salinity, 20)).isCloseTo(density, within(density * 0.0002));
  }

  @Test
  void a_band_upside_down_or_an_alarm_below_it_is_refused() {
    assertThatThrownBy(() -> new Thermostat(54, 50, 62)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> new Thermostat(50, 54, 53)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> SMALL_OUTBOARD.running(60, 61)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> SMALL_OUTBOARD.deviationC(10)).isInstanceOf(Refused.class);
  }

  @ParameterizedTest
  @CsvSource({
    "4.9, 200, TOO_SHORT", "5, 200, THERMOSTAT_SHUT", "9.9, 200, THERMOSTAT_SHUT",
    "10, 200, ADEQUATE", "10, 139, PRESSURE_WRONG", "10, 301, PRESSURE_WRONG",
    "10, 140, ADEQUATE", "10, 300, ADEQUATE"
  })
  void a_flush_must_last_until_the_thermostat_opens(double minutes, double kPa, Flush flush) {
    assertThat(Flush.of(minutes, kPa)).isEqualTo(flush);
  }

  @Test
  void heat_that_the_fuel_does_not_hold_is_not_plausible() {
    double fuel = CoolingHeat.fuelKilowatts(30, 0.30);
    assertThat(CoolingHeat.plausible(CoolingHeat.share(41.017, fuel))).isTrue();
    assertThat(CoolingHeat.plausible(CoolingHeat.share(83.4, fuel))).isFalse();
    assertThat(CoolingHeat.plausible(CoolingHeat.share(9.9, fuel))).isFalse();
    assertThat(CoolingHeat.plausible(0.10)).isTrue();
    assertThat(CoolingHeat.plausible(0.70)).isTrue();
  }

  @Test
  void a_flow_that_no_pump_gives_and_water_that_cools_are_refused() {
    assertThatThrownBy(() -> CoolingHeat.kilowatts(0.5, 35, 20, 40)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> CoolingHeat.kilowatts(20, 35, 20, 19)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> CoolingHeat.kilowatts(20, 35, 30, 60)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> CoolingHeat.fuelKilowatts(30, 0.6)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> Seawater.density(41, 20)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> Seawater.specificHeat(35, 41)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> SeawaterFreezing.pointC(35, 501)).isInstanceOf(Refused.class);
  }

  /** Another published formula, Sharqawy 2010 (secondary), within the known 0.2 % of this one. */
  @Test
  void the_heat_of_sea_water_agrees_with_a_second_formula() {
    assertThat(Seawater.specificHeat(35, 20)).isCloseTo(3998.94, within(0.002 * 3998.94));
    assertThat(Seawater.specificHeat(0, 20)).isCloseTo(4189.38, within(0.002 * 4189.38));
    assertThat(Seawater.density(35, 20)).isCloseTo(1024.911, within(0.2));
    assertThat(Seawater.density(0, 20)).isCloseTo(998.015, within(0.2));
  }
}

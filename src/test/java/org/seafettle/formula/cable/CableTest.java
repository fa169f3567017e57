package org.seafettle.formula.cable;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.seafettle.formula.cable.Overcurrent.Source;
import org.seafettle.problem.Refused;

class CableTest {

  @ParameterizedTest
  @EnumSource
  void a_size_is_found_by_what_is_printed_on_the_wire(Gauge gauge) {
    assertThat(Gauge.of(gauge.label())).isEqualTo(gauge);
    assertThat(gauge.ohmsPer1000Feet(20))
        .isCloseTo(Gauge.ohmsPer1000Feet(gauge.circularMils(), 20), within(1e-12));
  }

  @ParameterizedTest
  @ValueSource(strings = {"7", "5/0", "20", "", "AWG 10"})
  void a_size_that_is_in_no_table_is_refused_with_the_sizes_that_are(String label) {
    assertThatThrownBy(() -> Gauge.of(label))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("1/0, 2/0, 3/0, 4/0");
  }

  @Test
  void insulation_of_a_rating_that_the_law_does_not_list_is_refused() {
    assertThatThrownBy(() -> Ampacity.amperes(Gauge.AWG_10, 100))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("where it cannot be read take 60 °C");
    assertThatThrownBy(() -> Ampacity.bundleFactor(0)).isInstanceOf(Refused.class);
  }

  /** Heat flows with the difference of temperatures; the law prints two digits and no reason. */
  @ParameterizedTest
  @ValueSource(ints = {60, 75, 80, 90, 105, 125})
  void the_factor_of_the_engine_space_is_that_of_air_at_50_instead_of_30_degrees(int rating) {
    assertThat(Ampacity.engineSpaceFactor(rating))
        .isCloseTo(Math.sqrt((rating - 50.0) / (rating - 30.0)), within(0.007));
  }

  @Test
  void a_wire_of_exactly_the_required_area_is_large_enough() {
    assertThat(WireTable.NOMINAL.smallest(1600)).isEqualTo(Gauge.AWG_18);
    assertThat(WireTable.NOMINAL.smallest(1601)).isEqualTo(Gauge.AWG_16);
  }

  @Test
  void the_largest_fuse_depends_on_the_voltage() {
    assertThat(Overcurrent.largestAmperes(60, 12)).isEqualTo(90);
    assertThat(Overcurrent.largestAmperes(60, 49.9)).isEqualTo(90);
    assertThat(Overcurrent.largestAmperes(60, 50)).isEqualTo(60);
  }

  @Test
  void a_fuse_away_from_the_battery_may_sit_farther_out_only_in_a_sheath() {
    assertThat(Overcurrent.farthestInches(Source.OTHER, false)).isEqualTo(7);
    assertThat(Overcurrent.farthestInches(Source.OTHER, true)).isEqualTo(40);
    assertThat(Overcurrent.farthestInches(Source.BATTERY, true)).isEqualTo(72);
  }

  @Test
  void the_drops_on_the_way_to_the_starter_add_up() {
    assertThat(VoltageDrop.atStarter(10.6, List.of(0.3, 0.2, 0.1))).isCloseTo(10, within(1e-9));
    assertThatThrownBy(() -> VoltageDrop.atStarter(0.5, List.of(0.6))).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> VoltageDrop.atStarter(10, List.of(-0.1))).isInstanceOf(Refused.class);
  }

  @Test
  void a_run_too_long_for_any_single_wire_is_refused() {
    double area = VoltageDrop.requiredCircularMils(300, 60, 0.36);
    assertThatThrownBy(() -> WireTable.NOMINAL.smallest(area))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("Shorten the run");
  }

  @Test
  void a_nut_is_compared_with_the_nearer_end_of_the_makers_range() {
    assertThat(Terminal.torqueDeviationPercent(11.5, 11, 12)).isZero();
    assertThat(Terminal.torqueDeviationPercent(8.8, 11, 12)).isCloseTo(-20, within(1e-9));
    assertThat(Terminal.torqueDeviationPercent(15, 11, 12)).isCloseTo(25, within(1e-9));
    double mercury = Terminal.MERCURY_BATTERY_NUT_NM;
    assertThat(Terminal.torqueDeviationPercent(13.5, mercury, mercury)).isZero();
    assertThatThrownBy(() -> Terminal.torqueDeviationPercent(10, 12, 11))
        .isInstanceOf(Refused.class);
  }

  @ParameterizedTest
  @EnumSource(names = {"AWG_8", "AWG_6", "AWG_1_0", "AWG_2_0", "AWG_3_0", "AWG_4_0"})
  void an_unverified_crimp_pull_is_not_given(Gauge gauge) {
    assertThatThrownBy(() -> Terminal.crimpPounds(gauge))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("terminal maker's data sheet");
  }
}

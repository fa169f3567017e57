package org.seafettle.formula.oil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.seafettle.formula.oil.SaltMarkers.Engine;
import org.seafettle.formula.oil.SaltMarkers.Origin;
import org.seafettle.problem.Refused;

class OilTest {

  /**
   * The worked examples of the standard (secondary). Above an index of 100 L is not used; any
   * figure above H stands for it here.
   */
  @ParameterizedTest
  @CsvSource({
    "73.30, 8.86, 119.94, 69.48,  92",
    "22.83, 5.05, 100.00, 28.97, 156",
    "53.47, 7.80, 100.00, 57.31, 111"
  })
  void the_index_of_the_worked_examples_comes_out(
      double viscosity40, double viscosity100, double low, double high, long index) {
    assertThat(new ViscosityIndex(low, high).of(viscosity40, viscosity100)).isEqualTo(index);
  }

  @Test
  void above_seventy_the_equations_take_over_from_the_table() {
    var at80 = ViscosityIndex.above70(80);
    assertThat(at80.low()).isCloseTo(6303.52, within(0.005));
    assertThat(at80.high()).isCloseTo(1928.76, within(0.005));
    // the table's last row: 4905 and 1558
    assertThat(ViscosityIndex.above70(70).low()).isCloseTo(4905, within(1.5));
    assertThat(ViscosityIndex.above70(70).high()).isCloseTo(1558, within(0.5));
    assertThatThrownBy(() -> ViscosityIndex.above70(69.9)).isInstanceOf(Refused.class);
  }

  @Test
  void a_viscosity_index_of_thin_or_upside_down_oil_is_refused() {
    var index = new ViscosityIndex(119.94, 69.48);
    assertThatThrownBy(() -> index.of(30, 1.9)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> index.of(8, 9)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> new ViscosityIndex(69.48, 119.94)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> new ViscosityIndex(69.48, 69.48)).isInstanceOf(Refused.class);
  }

  @Test
  void two_points_that_are_no_oil_are_refused() {
    assertThatThrownBy(() -> Walther.through(10, 40, 60, 100)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> Walther.through(60, 40, 10, 40)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> Walther.through(60, 40, 60, 40)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> Walther.through(60, 40, 60, 100)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> Walther.through(60, 40, 1.9, 100)).isInstanceOf(Refused.class);
    var thin = Walther.through(10, 40, 2.6, 100);
    assertThatThrownBy(() -> thin.at(150)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> thin.at(-1)).isInstanceOf(Refused.class);
  }

  @Test
  void a_grade_begins_on_its_lower_figure_and_ends_before_its_upper() {
    for (var grade : SaeGrade.values()) {
      assertThat(SaeGrade.of(grade.lowest())).contains(grade);
      assertThat(SaeGrade.of(grade.below())).doesNotContain(grade);
    }
    assertThatThrownBy(() -> SaeGrade.of(1.9)).isInstanceOf(Refused.class);
  }

  @Test
  void the_classes_of_the_crackle_test_join_without_a_gap() {
    var classes = Crackle.values();
    for (int i = 1; i < classes.length; i++) {
      assertThat(classes[i - 1].atMostPercent()).hasValue(classes[i].atLeastPercent());
    }
    assertThat(Crackle.VIOLENT.atMostPercent()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "4600, 180, false, DIESEL,   SEAWATER",
    "4600, 180, true,  DIESEL,   COOLANT",
    "  26,   0, false, DIESEL,   SEAWATER",
    "  26,   0, false, GASOLINE, UNDETERMINED",
    "   0,   0, false, DIESEL,   UNDETERMINED",
    "   0,  25, false, DIESEL,   COOLANT",
    "   0,  20, false, DIESEL,   UNDETERMINED",
    " 250,  25, false, DIESEL,   UNDETERMINED",
    " 400,  20, false, DIESEL,   SEAWATER",
    "  25,   0, false, DIESEL,   UNDETERMINED"
  })
  void salt_is_traced_to_the_sea_or_the_coolant(
      double sodium, double potassium, boolean glycol, Engine engine, Origin origin) {
    assertThat(new SaltMarkers(sodium, potassium).origin(glycol, engine)).isEqualTo(origin);
  }

  @Test
  void less_sodium_than_in_the_new_oil_is_no_sea_water() {
    assertThat(SaltMarkers.aboveNewOil(5, 10)).isZero();
    assertThatThrownBy(() -> new SaltMarkers(-1, 0)).isInstanceOf(Refused.class);
  }

  @Test
  void an_oil_that_has_hardly_run_says_nothing_about_wear() {
    assertThatThrownBy(() -> Wear.per100Hours(45, 2, 4.9)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> Wear.correctedForMakeUp(45, 16, 5)).isInstanceOf(Refused.class);
  }

  @Test
  void the_base_number_is_compared_with_that_of_the_new_oil() {
    assertThat(Condition.baseNumberPercent(4, 8)).isEqualTo(50);
    assertThat(Condition.acidMeetsBase(4, 4)).isTrue();
    assertThat(Condition.acidMeetsBase(3.9, 4)).isFalse();
    assertThatThrownBy(() -> Condition.baseNumberPercent(4, 0)).isInstanceOf(Refused.class);
  }

  @Test
  void the_dipstick_is_read_between_its_marks() {
    assertThat(Condition.dipstickPosition(42, 40, 50)).isCloseTo(0.2, within(1e-9));
    assertThat(Condition.dipstickPosition(52, 40, 50)).isCloseTo(1.2, within(1e-9));
    assertThatThrownBy(() -> Condition.dipstickPosition(42, 50, 40)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> Condition.dipstickPosition(75, 40, 50)).isInstanceOf(Refused.class);
  }

  @Test
  void a_level_that_rose_by_more_than_the_oil_and_an_oil_that_thickened_are_refused() {
    assertThatThrownBy(() -> Dilution.percentFromLevelRise(5, 5.1)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> Dilution.percentFromViscosity(10, 11)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> Consumption.percentOfFuel(-0.1, 600)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> Consumption.millilitresPerHour(0.4, 0)).isInstanceOf(Refused.class);
  }
}

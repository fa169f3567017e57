package org.seafettle.formula.space;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.seafettle.formula.pump.CapacityBenchmark;
import org.seafettle.formula.pump.Ingress;
import org.seafettle.problem.Refused;

class SpaceTest {

  @Test
  void from_thirty_four_cubic_feet_on_the_blower_grows_with_the_space() {
    assertThat(Ventilation.blower(33.9)).isEqualTo(new Ventilation(50, 20));
    assertThat(Ventilation.blower(34).ratedCubicFeetPerMinute()).isEqualTo(51);
  }

  @Test
  void a_small_space_still_needs_openings_of_three_square_inches() {
    assertThat(Ventilation.naturalOpeningSquareInches(4)).isEqualTo(3);
    assertThatThrownBy(() -> Ventilation.blower(0)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> Ventilation.naturalOpeningSquareInches(-1))
        .isInstanceOf(Refused.class);
  }

  @Test
  void beyond_sixty_five_feet_the_counts_for_extinguishers_end() {
    assertThatThrownBy(() -> Extinguishers.required(65.1, false)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> Extinguishers.lastDay(12)).isInstanceOf(Refused.class);
  }

  @ParameterizedTest
  @CsvSource({"6, 10", "6.1, 15", "11.9, 15", "12, 30", "24, 30"})
  void the_standard_for_small_craft_goes_by_hull_length(double metres, double litres) {
    assertThat(CapacityBenchmark.iso15083LitresPerMinute(metres)).isEqualTo(litres);
  }

  @Test
  void a_pair_of_pumps_with_one_figure_has_no_figure_for_the_portable() {
    var pair = CapacityBenchmark.smallPassengerVessel(30, 6, false, false);
    assertThat(pair).isEqualTo(new CapacityBenchmark(1, 10, 1, OptionalInt.empty()));
    assertThat(CapacityBenchmark.ruleOfThumbGallonsPerHour(25)).isEqualTo(2500);
  }

  @Test
  void lengths_and_holes_out_of_all_proportion_are_refused() {
    assertThatThrownBy(() -> CapacityBenchmark.iso15083LitresPerMinute(24.1))
        .isInstanceOf(Refused.class);
    assertThatThrownBy(() -> CapacityBenchmark.smallPassengerVessel(0, 0, false, false))
        .isInstanceOf(Refused.class);
    assertThatThrownBy(() -> Ingress.litresPerMinute(301, 1, 0.6)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> Ingress.litresPerMinute(25, 11, 0.6)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> Ingress.litresPerMinute(25, 1, 1.1)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> Ingress.balancedMillimetres(30, 0, 0.6)).isInstanceOf(Refused.class);
  }
}

package org.seafettle.formula.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.seafettle.problem.Refused;

class GlycolTest {

  /** The table's own Celsius column, which is rounded to whole degrees. */
  @ParameterizedTest
  @CsvSource({
    "PROPYLENE,  0,   0", "PROPYLENE, 18,  -7", "PROPYLENE, 29, -12", "PROPYLENE, 36, -18",
    "PROPYLENE, 42, -23", "PROPYLENE, 46, -29", "PROPYLENE, 50, -34", "PROPYLENE, 54, -40",
    "PROPYLENE, 57, -46", "ETHYLENE,  17,  -7", "ETHYLENE,  26, -12", "ETHYLENE,  35, -18",
    "ETHYLENE,  41, -23", "ETHYLENE,  46, -29", "ETHYLENE,  50, -34", "ETHYLENE,  55, -40",
    "ETHYLENE,  59, -46"
  })
  void the_printed_freezing_points_come_out(Glycol glycol, double percent, double degrees) {
    assertThat(glycol.freezingPointC(percent)).isCloseTo(degrees, within(0.51));
  }

  @Test
  void antifreeze_poured_onto_water_left_in_the_block_protects_less() {
    var left = Glycol.dilutedPercent(50, 6, 3);
    assertThat(left).isCloseTo(33.333, within(0.001));
    assertThat(Glycol.PROPYLENE.freezingPointC(left))
        .isGreaterThan(Glycol.PROPYLENE.freezingPointC(50));
  }

  @Test
  void beyond_the_table_nothing_is_promised() {
    assertThatThrownBy(() -> Glycol.PROPYLENE.freezingPointC(58)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> Glycol.ETHYLENE.freezingPointC(60)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> Glycol.dilutedPercent(101, 1, 1)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> Glycol.dilutedPercent(33, 0, 1)).isInstanceOf(Refused.class);
  }
}

package org.seafettle.formula.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.seafettle.problem.Refused;

class StateOfChargeTest {

  @ParameterizedTest
  @CsvSource({
    "FLOODED, 12.70, 100, 100",
    "FLOODED, 12.30,  62.5, 62.5",
    "FLOODED, 11.00,   0,   0",
    "AGM,     13.00, 100, 100",
    "AGM,     12.70,  87.5, 87.5",
    "AGM,     12.60,  75,  75",
    "AGM,     12.00,  25,  25",
    "AGM,     11.99,   0,  25",
    "GEL,     12.85, 100, 100",
    "GEL,     12.84,   0, 100"
  })
  void the_charge_is_read_from_the_table_of_the_chemistry(
      Chemistry chemistry, double volts, double low, double high) {
    var charge = StateOfCharge.fromRestedVoltage(chemistry, volts, 20, 6);
    assertThat(charge.atLeastPercent()).isCloseTo(low, within(1e-9));
    assertThat(charge.atMostPercent()).isCloseTo(high, within(1e-9));
    assertThat(charge.isExact()).isEqualTo(low == high);
  }

  @ParameterizedTest
  @CsvSource({
    "LITHIUM_IRON_PHOSPHATE, 13.2, 20, 24, does not show its charge",
    "FLOODED, 12.4, -0.1, 24, outside 0 to 40 °C",
    "FLOODED, 12.4, 40.1, 24, outside 0 to 40 °C",
    "FLOODED, 12.4, 20, 0.9, less than an hour",
    "FLOODED, 12.4, 20, NaN, less than an hour",
    "FLOODED, 25.2, 20, 24, outside 0 to 13.5 V",
    "AGM, 14.4, 20, 24, outside 0 to 13.5 V",
    "AGM, NaN, 20, 24, no number"
  })
  void a_reading_that_says_nothing_about_charge_is_refused(
      Chemistry chemistry, double volts, double degrees, double rested, String fault) {
    assertThatThrownBy(() -> StateOfCharge.fromRestedVoltage(chemistry, volts, degrees, rested))
        .isInstanceOf(Refused.class)
        .hasMessageContaining(fault);
  }

  @Test
  void an_hour_of_rest_and_the_ends_of_the_temperature_range_are_enough() {
    assertThat(StateOfCharge.fromRestedVoltage(Chemistry.FLOODED, 12.4, 0, 1).isExact()).isTrue();
    assertThat(StateOfCharge.fromRestedVoltage(Chemistry.FLOODED, 12.4, 40, 1).isExact()).isTrue();
  }
}

package org.seafettle.formula.conformity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.seafettle.problem.Refused;

class ConformityTest {

  /** Five-figure values of the standard normal table, Abramowitz and Stegun, table 26.1. */
  @ParameterizedTest
  @CsvSource({
    "0, 0.5",
    "1, 0.841344746",
    "-1, 0.158655254",
    "1.96, 0.975002105",
    "-3, 0.001349898",
    "5, 0.999999713",
    "-6, 0.000000001",
    "9, 1",
    "-9, 0"
  })
  void the_normal_distribution_is_the_tabulated_one(double x, double phi) {
    assertThat(Conformity.phi(x)).isCloseTo(phi, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({
    "9.85, PASS",
    "9.8, PASS",
    "9.7, CONDITIONAL_PASS",
    "9.6, CONDITIONAL_PASS",
    "9.5, CONDITIONAL_FAIL",
    "9.4, CONDITIONAL_FAIL",
    "9.3, FAIL"
  })
  void a_lower_limit_is_judged_like_an_upper_one_turned_round(double volts, Verdict verdict) {
    assertThat(Conformity.verdict(volts, 0.2, 9.6, Side.AT_LEAST)).isEqualTo(verdict);
    assertThat(Conformity.verdict(-volts, 0.2, -9.6, Side.AT_MOST)).isEqualTo(verdict);
  }

  @Test
  void a_reading_of_nothing_keeps_a_limit_of_nothing() {
    assertThat(Conformity.verdict(0, 0, 0, Side.AT_MOST)).isEqualTo(Verdict.PASS);
    assertThat(Conformity.verdict(0, 1, 0, Side.AT_MOST)).isEqualTo(Verdict.CONDITIONAL_PASS);
  }

  @Test
  void what_binary_fractions_add_to_a_large_reading_does_not_break_its_limit() {
    assertThat(Conformity.verdict(100000.00000001, 0, 100000, Side.AT_MOST))
        .isEqualTo(Verdict.PASS);
  }

  @Test
  void without_uncertainty_there_is_only_pass_and_fail() {
    assertThat(Conformity.verdict(2.0, 0, 2.0, Side.AT_MOST)).isEqualTo(Verdict.PASS);
    assertThat(Conformity.verdict(2.1, 0, 2.0, Side.AT_MOST)).isEqualTo(Verdict.FAIL);
    assertThat(Verdict.FAIL.isConditional()).isFalse();
    assertThat(Verdict.CONDITIONAL_FAIL.isConditional()).isTrue();
  }

  @Test
  void what_is_no_number_is_refused() {
    assertThatThrownBy(() -> Conformity.verdict(Double.NaN, 1, 2, Side.AT_MOST))
        .isInstanceOf(Refused.class);
    assertThatThrownBy(() -> Conformity.verdict(1, -1, 2, Side.AT_MOST))
        .isInstanceOf(Refused.class);
    assertThatThrownBy(() -> Conformity.probability(1, 0, 2, Side.AT_MOST))
        .isInstanceOf(Refused.class);
    assertThatThrownBy(() -> Conformity.probability(1, 1, Double.POSITIVE_INFINITY, Side.AT_LEAST))
        .isInstanceOf(Refused.class);
  }
}

package org.seafettle.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.seafettle.problem.Refused;

class RowsTest {

  private static final Rows ROWS = new Rows("A temperature", "°C", 0, 8.5, 10, 9.5, 30, 9.0);

  @ParameterizedTest
  @CsvSource({"0, 8.5", "5, 9.0", "10, 9.5", "20, 9.25", "30, 9.0"})
  void between_two_rows_the_line_is_straight(double x, double y) {
    assertThat(ROWS.at(x)).isEqualTo(y);
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void what_is_no_number_has_no_place_in_a_table(double x) {
    assertThatThrownBy(() -> ROWS.at(x))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("comes out as no number");
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.001, 30.001})
  void beyond_the_rows_nothing_is_said(double x) {
    assertThatThrownBy(() -> ROWS.at(x))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("lies outside 0 to 30 °C");
  }

  @Test
  void where_a_table_says_and_below_or_and_above_its_ends_go_on() {
    assertThat(ROWS.atOrNearestEnd(-5)).isEqualTo(8.5);
    assertThat(ROWS.atOrNearestEnd(99)).isEqualTo(9.0);
    assertThatThrownBy(() -> ROWS.atOrNearestEnd(Double.NaN)).isInstanceOf(Refused.class);
  }

  @Test
  void a_table_whose_first_column_does_not_rise_is_a_mistake() {
    assertThatThrownBy(() -> new Rows("A temperature", "°C", 0, 1, 0, 2))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void a_table_cannot_be_changed_from_outside() {
    var given = new double[] {0, 8.5, 10, 9.5};
    var rows = new Rows("A temperature", "°C", given);
    given[1] = 99;
    rows.cells()[1] = 99;
    assertThat(rows.at(0)).isEqualTo(8.5);
  }

  @ParameterizedTest
  @CsvSource({
    "0, false, true",
    "1, true, true",
    "-1, false, false",
    "NaN, false, false",
    "Infinity, false, false"
  })
  void zero_is_not_negative_but_not_positive_either(
      double value, boolean positive, boolean notNegative) {
    assertThat(accepted(() -> Validity.positive("A length", value, "m"))).isEqualTo(positive);
    assertThat(accepted(() -> Validity.notNegative("A length", value, "m"))).isEqualTo(notNegative);
  }

  @Test
  void a_refusal_says_what_was_given_and_what_would_do() {
    assertThatThrownBy(() -> Validity.within("A water temperature", 45.50, 0, 40, "°C"))
        .hasMessage(
            "A water temperature of 45.5 °C lies outside 0 to 40 °C, where the formula holds.\n"
                + "  Check the reading and its unit.");
  }

  private static boolean accepted(Runnable check) {
    try {
      check.run();
      return true;
    } catch (Refused refused) {
      return false;
    }
  }
}

package org.seafettle.formula.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.YearMonth;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.seafettle.problem.Refused;

class PapersTest {

  @Test
  void a_hull_number_is_taken_apart() {
    assertThat(HullNumber.parse("US-ABC45678L819"))
        .isEqualTo(new HullNumber("ABC", "45678", YearMonth.of(2018, 12), 2019));
    assertThat(HullNumber.parse("ABC45678H484").certified()).isEqualTo(YearMonth.of(1984, 8));
    assertThat(HullNumber.parse("ABC45678A900").modelYear()).isEqualTo(2000);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "ABC45678L719", // certified two years before its model year
        "ABC45678L919X",
        "abc45678l819",
        "1BC45678L819",
        "ABC4567QL819",
        "",
      })
  void a_hull_number_of_another_form_is_refused(String written) {
    assertThatThrownBy(() -> HullNumber.parse(written)).isInstanceOf(Refused.class);
  }

  @Test
  void small_engines_have_a_limit_of_their_own_since_2010() {
    assertThat(EmissionLimit.OF_2010.hydrocarbonsAndNitrogenOxides(3)).isEqualTo(30.0);
    assertThat(EmissionLimit.carbonMonoxide2010(40)).isEqualTo(300);
    assertThat(EmissionLimit.carbonMonoxide2010(3.7)).isEqualTo(482);
    assertThatThrownBy(() -> EmissionLimit.OF_2006.hydrocarbonsAndNitrogenOxides(4.3))
        .isInstanceOf(Refused.class);
    assertThatThrownBy(() -> EmissionLimit.OF_2010.hydrocarbonsAndNitrogenOxides(0))
        .isInstanceOf(Refused.class);
    assertThatThrownBy(() -> UsefulLife.of(UsefulLife.Type.OUTBOARD, -1))
        .isInstanceOf(Refused.class);
  }

  @ParameterizedTest
  @CsvSource({
    "612, 617, false", // 5 h
    "612, 642, false", // 30 h of 642 is less than 5 %
    "612, 645, true",
    "40, 45, false",
    "40, 45.1, true",
    "645, 612, true"
  })
  void two_meters_may_differ_a_little(double controlUnit, double panel, boolean disagree) {
    assertThat(HourMeter.metersDisagree(controlUnit, panel)).isEqualTo(disagree);
  }

  @Test
  void hours_a_year_are_those_between_two_readings() {
    var first = LocalDate.of(2024, 10, 1);
    assertThat(HourMeter.hoursPerYear(540, first, 612.4, LocalDate.of(2025, 10, 1)))
        .isCloseTo(72.45, within(0.01));
    assertThatThrownBy(() -> HourMeter.hoursPerYear(540, first, 539, first.plusYears(1)))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("replaced or reset");
    assertThatThrownBy(() -> HourMeter.hoursPerYear(540, first, 541, first.plusDays(29)))
        .isInstanceOf(Refused.class);
    assertThat(HourMeter.wentBack(540, 540)).isFalse();
  }
}

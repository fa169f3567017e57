package org.seafettle.house;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.seafettle.problem.Refused;

class AccentTest {

  /** Each of these follows from the definition by hand: the grey of 18 % is 21 to 1 at black. */
  @ParameterizedTest
  @CsvSource({"000000, 21", "FFFFFF, 1", "FF0000, 3.998", "0000FF, 8.592", "767676, 4.542"})
  void the_contrast_against_white_is_that_of_the_formula(String colour, double contrast) {
    assertThat(Accent.contrast(Integer.parseInt(colour, 16))).isCloseTo(contrast, within(0.001));
  }

  @Test
  void a_colour_that_just_passes_is_taken_and_the_next_paler_is_not() {
    assertThat(Accent.of("#767676").written()).isEqualTo("#767676");
    assertThat(catchThrowableOfType(Refused.class, () -> Accent.of("#777777"))).isNotNull();
  }

  @Test
  void a_pale_colour_is_refused_with_its_contrast_and_the_nearest_darker_one() {
    var problem = catchThrowableOfType(Refused.class, () -> Accent.of("#ff0000")).problems().get(0);
    assertThat(problem.fault()).contains("#FF0000").contains("3.99 to 1");
    assertThat(problem.remedy()).contains("\"#EE0000\"");
    assertThat(Accent.contrast(0xEE0000)).isGreaterThanOrEqualTo(4.5);
    assertThat(Accent.contrast(0xEF0000)).isLessThan(4.5);
  }

  @ParameterizedTest
  @ValueSource(strings = {"red", "#FFF", "#12345G", "1F5F7A", "#1F5F7A;}", ""})
  void what_is_no_colour_is_refused(String written) {
    var refused = catchThrowableOfType(Refused.class, () -> Accent.of(written));
    assertThat(refused.problems().get(0).remedy()).contains("#1F5F7A");
  }
}

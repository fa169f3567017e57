package org.seafettle.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.seafettle.problem.Refused;

/** Every formula against the values that its source prints, or that follow from it. */
class CheckValuesTest {

  private static final Families FAMILIES = Families.all();
  private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");

  @ParameterizedTest(name = "{0} {2}")
  @CsvFileSource(resources = "check-values.csv", numLinesToSkip = 1, maxCharsPerColumn = 1000)
  void a_published_value_comes_out(
      String id,
      String subsystem,
      String formula,
      String inputs,
      String expected,
      String tolerance,
      String provenance,
      String source) {
    var computation = FAMILIES.of(id);
    var given = Inputs.read(inputs, formula);
    if (expected.equals("refuse")) {
      assertThatThrownBy(() -> computation.apply(given)).isInstanceOf(Refused.class);
    } else {
      compare(computation.apply(given), expected, tolerance);
    }
    given.assertAllUsed();
  }

  @Test
  void every_family_that_is_named_has_a_row() throws IOException {
    try (var rows = CheckValuesTest.class.getResourceAsStream("check-values.csv")) {
      var ids = new String(rows.readAllBytes(), StandardCharsets.UTF_8).lines();
      var families = ids.skip(1).map(id -> id.replaceFirst("-\\d+,.*", "")).distinct().toList();
      assertThat(families).containsExactlyInAnyOrderElementsOf(FAMILIES.names());
    }
  }

  private static void compare(String computed, String expected, String tolerance) {
    var computedWords = computed.split(" ");
    var expectedWords = expected.split(" ");
    assertThat(computedWords).as(computed).hasSameSizeAs(expectedWords);
    for (int i = 0; i < expectedWords.length; i++) {
      if (NUMBER.matcher(expectedWords[i]).matches()) {
        double number = Double.parseDouble(expectedWords[i]);
        assertThat(Double.parseDouble(computedWords[i]))
            .isCloseTo(number, within(allowed(tolerance, number)));
      } else {
        assertThat(computedWords[i]).isEqualTo(expectedWords[i]);
      }
    }
  }

  /** A millionth of the last printed digit is left to the binary fractions. */
  private static double allowed(String tolerance, double number) {
    double rounding = 1e-9 * Math.max(1, Math.abs(number));
    if (tolerance.equals("exact")) {
      return rounding;
    }
    if (tolerance.endsWith("%")) {
      return Math.abs(number) * Double.parseDouble(tolerance.replace("%", "")) / 100 + rounding;
    }
    return Double.parseDouble(tolerance) + rounding;
  }
}

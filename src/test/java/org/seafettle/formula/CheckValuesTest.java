package org.seafettle.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.seafettle.problem.Refused;

/** Every formula against the values that its source prints, or that follow from it. */
class CheckValuesTest {

  private static final Families FAMILIES = Families.all();
  private static final LeftOut LEFT_OUT = LeftOut.read();
  private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");

  @ParameterizedTest(name = "{0} {2}")
  @CsvFileSource(resources = "check-values.csv", numLinesToSkip = 1, maxCharsPerColumn = 1000)
  void a_published_value_comes_out_or_there_is_a_reason_why_not(
      String id,
      String subsystem,
      String formula,
      String inputs,
      String expected,
      String tolerance,
      String provenance,
      String source) {
    var reasons = LEFT_OUT.reasons(id);
    if (reasons.isEmpty()) {
      comesOut(id, Inputs.read(inputs, formula), expected, tolerance);
    } else {
      assertThat(reasons).singleElement().asString().hasSizeGreaterThan(30);
      assertThatThrownBy(() -> comesOut(id, Inputs.read(inputs, formula), expected, tolerance))
          .as("%s comes out: its reason is not true", id)
          .isInstanceOfAny(AssertionError.class, Refused.class);
    }
  }

  @Test
  void every_family_that_is_named_has_a_row() {
    var families = ids().stream().map(Families::family).collect(Collectors.toSet());
    assertThat(families).containsAll(FAMILIES.names());
  }

  @Test
  void every_reason_names_a_row() {
    var known = new TreeSet<>(ids());
    ids().forEach(id -> known.add(Families.family(id)));
    assertThat(known).containsAll(LEFT_OUT.named());
  }

  @Test
  void no_row_is_told_twice() {
    assertThat(ids()).doesNotHaveDuplicates().hasSize(651);
  }

  private static List<String> ids() {
    try (var rows = CheckValuesTest.class.getResourceAsStream("check-values.csv")) {
      var lines = new String(rows.readAllBytes(), StandardCharsets.UTF_8).lines();
      return lines.skip(1).map(line -> line.substring(0, line.indexOf(','))).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void comesOut(String id, Inputs given, String expected, String tolerance) {
    var computation = FAMILIES.of(id);
    if (expected.equals("refuse")) {
      assertThatThrownBy(() -> computation.apply(given)).isInstanceOf(Refused.class);
    } else {
      compare(computation.apply(given), expected, tolerance);
    }
    given.assertAllUsed();
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
    if (tolerance.endsWith(" relative")) {
      return Math.abs(number) * Double.parseDouble(tolerance.replace(" relative", ""));
    }
    if (tolerance.endsWith("%")) {
      return Math.abs(number) * Double.parseDouble(tolerance.replace("%", "")) / 100 + rounding;
    }
    return Double.parseDouble(tolerance) + rounding;
  }
}

package org.seafettle.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PartTest {

  private static final Part.Reader READER = new Part.Reader();

  @Test
  void every_survey_belongs_to_exactly_one_part_of_any_number() {
    for (int of = 1; of <= 9; of++) {
      int parts = of;
      for (int boat = 0; boat < 200; boat++) {
        var source = "berth " + boat;
        assertThat(IntStream.rangeClosed(1, parts).filter(n -> new Part(n, parts).holds(source)))
            .hasSize(1);
      }
    }
  }

  @Test
  void no_part_is_left_without_work() {
    for (int n = 1; n <= 8; n++) {
      var part = new Part(n, 8);
      assertThat(IntStream.range(0, 400).filter(boat -> part.holds("berth " + boat)).count())
          .isBetween(25L, 80L);
    }
  }

  @Test
  void a_part_is_written_as_a_fraction() {
    assertThat(READER.convert("2/8")).isEqualTo(new Part(2, 8));
  }

  @ParameterizedTest
  @ValueSource(strings = {"0/8", "9/8", "2", "2/0", "a/b", "-1/3", "1/9999999", ""})
  void what_is_no_part_is_refused(String written) {
    assertThatThrownBy(() -> READER.convert(written)).hasMessageContaining("part");
  }
}

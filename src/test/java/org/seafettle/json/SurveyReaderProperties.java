package org.seafettle.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.seafettle.problem.Refused;

class SurveyReaderProperties {

  private static final List<String> BITS =
      List.of(
          "\"",
          ",",
          "{",
          "}",
          "[",
          "]",
          ":",
          "null",
          "0",
          "-1",
          "1e9",
          "true",
          "\"port\"",
          "\\u0000",
          "\"12 V\"",
          "[]",
          "{}",
          " ",
          "é",
          "\ud83d\ude00",
          "99999999999999999999",
          "\"is\"",
          "\"on\"",
          "\"2026-13-01\"",
          "0.5",
          "\\",
          "/",
          "\"boat\"");

  private final SurveyReader reader =
      new SurveyReader(Surveys.CATALOGUE, c -> c < 0x2600, (name, report) -> Map.of());

  @Property(tries = 1500, seed = "20261125")
  void whatever_is_done_to_a_file_it_is_a_survey_or_refused(@ForAll long seed) {
    var random = new Random(seed);
    var text = new StringBuilder(Surveys.GOOD);
    for (int i = 0; i <= random.nextInt(3); i++) {
      mutate(text, random);
    }
    readOrRefuse(text.toString());
  }

  /** Whole values are exchanged, so that most files remain JSON and go on to the later checks. */
  @Property(tries = 1500, seed = "20261125")
  void whatever_values_are_exchanged_it_is_a_survey_or_refused(@ForAll long seed) {
    var random = new Random(seed);
    var lines = Surveys.GOOD.split("\n");
    for (int i = 0; i <= random.nextInt(4); i++) {
      int n = random.nextInt(lines.length);
      var values = lines[n].split("(?<=: )|(?=[,}\\]])");
      values[random.nextInt(values.length)] = VALUES.get(random.nextInt(VALUES.size()));
      lines[n] = String.join("", values);
    }
    readOrRefuse(String.join("\n", lines));
  }

  private static final List<String> VALUES =
      List.of(
          "null",
          "0",
          "-1",
          "2.5",
          "1e300",
          "true",
          "\"port\"",
          "\"boat\"",
          "\"12 V\"",
          "\"5 h\"",
          "[]",
          "{}",
          "\"\"",
          "\"milky\"",
          "[\"p1\", \"p1\"]",
          "\"2026-02-30\"",
          "{\"date\": \"2020-01-01\"}",
          "[[1]]",
          "\"oil-level\"",
          "\"starboard\"",
          "\"lfp\"",
          "[0.5, 0.5]",
          "\"-40 °C\"");

  private void readOrRefuse(String json) {
    try {
      assertThat(reader.read(json).engines()).isNotEmpty();
    } catch (Refused e) {
      assertThat(e.problems()).isNotEmpty().doesNotHaveDuplicates();
    }
  }

  private static void mutate(StringBuilder text, Random random) {
    int at = random.nextInt(text.length());
    switch (random.nextInt(4)) {
      case 0 -> text.insert(at, BITS.get(random.nextInt(BITS.size())));
      case 1 -> text.delete(at, Math.min(text.length(), at + 1 + random.nextInt(12)));
      case 2 -> text.setCharAt(at, (char) random.nextInt(0x180));
      default -> {
        int from = random.nextInt(text.length());
        var piece = text.substring(from, Math.min(text.length(), from + random.nextInt(60)));
        text.insert(at, piece);
      }
    }
  }
}

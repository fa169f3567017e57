package org.seafettle.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LineEndsTest {

  private static List<String> pieces(String text) {
    var ends = new LineEnds();
    ends.setText(text);
    var pieces = new ArrayList<String>();
    int from = 0;
    for (int end = ends.next(); end != BreakIterator.DONE; end = ends.next()) {
      pieces.add(text.substring(from, end));
      from = end;
    }
    return pieces;
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "20\u00a0°C",
        "20 °C",
        "60\u00a0mg/kg",
        "60 mg/kg",
        "−5.4\u00a0°F",
        "± 0.05\u00a0V",
        "3 mL/h",
        "26 ft",
        "5-142",
        "5-3740-214-14",
        "L-300"
      })
  void no_line_ends_within_a_quantity_or_the_number_of_a_document(String kept) {
    assertThat(pieces("above " + kept + " before")).containsExactly("above ", kept + " ", "before");
  }

  @Test
  void no_line_ends_after_an_apostrophe_but_after_a_quotation() {
    assertThat(pieces("the blower’s own ‘way’ out"))
        .containsExactly("the ", "blower’s ", "own ", "‘way’ ", "out");
  }

  @Test
  void a_line_may_end_between_words_and_before_the_parts_of_a_path() {
    assertThat(pieces("two hoses, photos/engine/bellows.jpg"))
        .containsExactly("two ", "hoses, ", "photos", "/engine", "/bellows.", "jpg");
    assertThat(pieces("12 vanes of the bilge-aft pump"))
        .containsExactly("12 ", "vanes ", "of ", "the ", "bilge-", "aft ", "pump");
  }
}

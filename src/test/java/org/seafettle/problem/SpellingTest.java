package org.seafettle.problem;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpellingTest {

  private static final List<String> KNOWN = List.of("port", "starboard", "boat", "bilge", "salt");

  @ParameterizedTest
  @CsvSource({"prot, port", "sarboard, starboard", "BILGE, bilge", "slat, salt", "bilges, bilge"})
  void a_slip_of_the_fingers_is_met_with_the_word_that_was_meant(String written, String meant) {
    assertThat(Spelling.nearest(written, KNOWN)).contains(meant);
  }

  @ParameterizedTest
  @CsvSource({"middle", "pb", "zzzz", "stern"})
  void a_word_that_is_like_none_is_met_with_all_there_are(String written) {
    assertThat(Spelling.nearest(written, KNOWN)).isEmpty();
    assertThat(Spelling.hint(written, KNOWN))
        .isEqualTo("Write one of: bilge, boat, port, salt, starboard.");
  }

  @Test
  void of_two_equally_near_words_the_first_in_the_alphabet_is_named() {
    assertThat(Spelling.nearest("cat", List.of("hat", "bat"))).contains("bat");
  }
}

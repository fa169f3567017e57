package org.seafettle.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;

class WordsTest {

  private static final Words WORDS =
      new Words(
          Locale.ENGLISH,
          Map.of(
              "engine", "the {0} engine’s oil, '{1}'",
              "left.one", "{0} check, {1}",
              "left.other", "{0} checks, {1}",
              "page.head", "Findings"));

  @Test
  void apostrophes_stay_and_a_value_with_braces_is_printed_as_it_stands() {
    assertThat(WORDS.say("engine", "{1}", "$1")).isEqualTo("the {1} engine’s oil, '$1'");
  }

  @Test
  void one_check_is_told_otherwise_than_none_or_several() {
    assertThat(WORDS.count("left", 1, "port")).isEqualTo("1 check, port");
    assertThat(WORDS.count("left", 0, "port")).isEqualTo("0 checks, port");
    assertThat(WORDS.count("left", 2, "port")).isEqualTo("2 checks, port");
  }

  @Test
  void a_text_that_is_missing_or_wants_more_is_a_fault_of_the_program() {
    assertThatThrownBy(() -> WORDS.say("gearcase"))
        .isInstanceOf(IllegalStateException.class)
        .hasMessage("no words for gearcase");
    assertThatThrownBy(() -> WORDS.say("engine", "port"))
        .isInstanceOf(IllegalStateException.class)
        .hasMessage("the words for engine ask for {1}");
  }

  @Test
  void templates_see_only_their_own_texts() {
    assertThat(WORDS.labels()).containsExactly(Map.entry("head", "Findings"));
  }
}

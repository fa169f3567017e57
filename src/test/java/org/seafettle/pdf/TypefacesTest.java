package org.seafettle.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class TypefacesTest {

  private final Typefaces typefaces = new Typefaces();

  @ParameterizedTest
  @ValueSource(
      strings = {
        "The quick brown fox, 0123456789",
        "✓✗✔✘▲▼●○■□◆☐☑☒⚠°½¼¾–—“”…Ωμµ±≤≥→€£№²³₂‰•⌀∅",
        "Ελλάδα Чайка Żółw İğne ışık Șalupă Árvíztűrő Måge Ærø",
        "no-break\u00a0space, thin\u2009space, narrow\u202fspace, soft\u00adhyphen",
        "a tab\tand\r\nline ends"
      })
  void the_letters_and_signs_of_a_report_are_covered(String text) {
    assertThat(typefaces.uncovered(text)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(ints = {0x0, 0x1, 0x7F, 0x85, 0xE001, 0x6C49, 0x1F6E5, 0x10FFFF, 0xD800, 0xFFFD})
  void what_no_typeface_draws_is_not_covered(int codePoint) {
    assertThat(typefaces.covers(codePoint)).isFalse();
  }

  @Test
  void what_runs_from_right_to_left_is_not_covered_because_it_would_come_out_backwards() {
    assertThat(typefaces.uncovered("שלום سلام ١٢")).contains(0x05D5, 0x0633, 0x0661);
    assertThat(typefaces.uncovered("gpj\u202e.exe")).containsExactly(0x202E);
  }

  @Test
  void the_uncovered_characters_are_listed_once_each_in_order() {
    assertThat(typefaces.uncovered("汉 b 字 汉")).containsExactly(0x5B57, 0x6C49);
  }

  @ParameterizedTest
  @EnumSource(Typeface.class)
  void every_typeface_is_what_its_name_says_and_has_no_substitutions(Typeface typeface)
      throws IOException {
    var bytes = new RandomAccessReadBuffer(typefaces.file(typeface));
    try (var font = new TTFParser().parse(bytes)) {
      assertThat(font.getTableMap()).doesNotContainKey("GSUB");
      assertThat(font.getOS2Windows().getWeightClass())
          .isBetween(typeface.weight() - 50, typeface.weight() + 50);
      assertThat(font.getPostScript().getItalicAngle() != 0).isEqualTo(typeface.isSlanted());
      assertThat(font.getOS2Windows().getFsType()).as("free to embed").isZero();
    }
  }
}

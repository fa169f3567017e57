package org.seafettle.report;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The words of the trade that a report uses, for a reader who does not.
 *
 * @param entries in the order of the alphabet
 */
public record GlossaryPart(List<Row> entries) {

  private static final String FAMILY = "glossary.";

  /** Stands between a word and what it means in the words file. */
  private static final String BETWEEN = ": ";

  public GlossaryPart {
    entries = List.copyOf(entries);
  }

  /**
   * The entries whose word is used.
   *
   * @param texts in which words are looked for; a record of texts shows all of them as a string
   */
  static GlossaryPart of(Words words, List<?> texts) {
    var text = texts.toString().toLowerCase(Locale.ROOT);
    return new GlossaryPart(
        keys(words).stream()
            .map(key -> words.say(key).split(BETWEEN, 2))
            .filter(entry -> uses(text, entry[0].toLowerCase(Locale.ROOT)))
            .map(entry -> Row.of(entry[0], entry[1]))
            .sorted(Comparator.comparing(row -> row.label().toLowerCase(Locale.ROOT)))
            .toList());
  }

  private static Set<String> keys(Words words) {
    return words.keys().stream()
        .filter(key -> key.startsWith(FAMILY))
        .collect(Collectors.toCollection(java.util.TreeSet::new));
  }

  /** Whether a word of the text begins so. */
  private static boolean uses(String text, String word) {
    int at = text.indexOf(word);
    while (at > 0 && Character.isLetter(text.codePointBefore(at))) {
      at = text.indexOf(word, at + 1);
    }
    return at >= 0;
  }
}

package org.seafettle.problem;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** Finds the word that was probably meant. */
public final class Spelling {

  private Spelling() {}

  /**
   * The known word nearest to what was written, if one is near enough to be worth naming: at most
   * one edit for every three letters, or the same letters with two of them swapped. Among equally
   * near words the alphabetically first.
   */
  public static Optional<String> nearest(String written, Collection<String> known) {
    var lower = written.toLowerCase(Locale.ROOT);
    int most = Math.max(1, written.length() / 3);
    return known.stream()
        .filter(word -> edits(lower, word) <= most || isSwapped(lower, word))
        .min(
            Comparator.<String>comparingInt(word -> edits(lower, word))
                .thenComparing(Comparator.naturalOrder()));
  }

  private static int edits(String lower, String word) {
    return LevenshteinDistance.getDefaultInstance().apply(lower, word.toLowerCase(Locale.ROOT));
  }

  private static boolean isSwapped(String lower, String word) {
    var other = word.toLowerCase(Locale.ROOT);
    return edits(lower, word) == 2
        && lower.chars().sorted().boxed().toList().equals(other.chars().sorted().boxed().toList());
  }

  /** {@code Did you mean "bilge"?} where a word is near, else the list of what is known. */
  public static String hint(String written, Collection<String> known) {
    return nearest(written, known)
        .map(word -> "Did you mean \"" + word + "\"?")
        .orElseGet(
            () -> "Write one of: " + String.join(", ", known.stream().sorted().toList()) + ".");
  }
}

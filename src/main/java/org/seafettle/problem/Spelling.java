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
   * one edit for every three letters begun. Among equally near words the alphabetically first.
   */
  public static Optional<String> nearest(String written, Collection<String> known) {
    int most = (written.length() + 2) / 3;
    var distance = new LevenshteinDistance(most);
    var lower = written.toLowerCase(Locale.ROOT);
    return known.stream()
        .filter(word -> distance.apply(lower, word.toLowerCase(Locale.ROOT)) >= 0)
        .min(
            Comparator.<String>comparingInt(
                    word -> distance.apply(lower, word.toLowerCase(Locale.ROOT)))
                .thenComparing(Comparator.naturalOrder()));
  }

  /** {@code Did you mean "bilge"?} where a word is near, else the list of what is known. */
  public static String hint(String written, Collection<String> known) {
    return nearest(written, known)
        .map(word -> "Did you mean \"" + word + "\"?")
        .orElseGet(
            () -> "Write one of: " + String.join(", ", known.stream().sorted().toList()) + ".");
  }
}

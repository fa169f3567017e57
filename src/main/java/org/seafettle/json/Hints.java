package org.seafettle.json;

import java.util.Collection;
import org.seafettle.problem.Spelling;
import org.seafettle.survey.Component;

/** Remedies that name what was probably meant. */
final class Hints {

  /** More words than this are no help in a sentence. */
  private static final int MOST_WORDS = 20;

  private Hints() {}

  static String words(String written, Collection<String> known) {
    return Spelling.nearest(written, known).isPresent() || known.size() <= MOST_WORDS
        ? Spelling.hint(written, known)
        : "Write one of the words that the schema of the survey file lists here.";
  }

  static String noun(Component.Kind kind) {
    return switch (kind) {
      case ENGINE -> "engine";
      case BATTERY -> "battery";
      case PUMP -> "pump";
      case BOAT -> "boat";
    };
  }

  static String plural(Component.Kind kind) {
    return switch (kind) {
      case ENGINE -> "engines";
      case BATTERY -> "batteries";
      case PUMP -> "pumps";
      case BOAT -> "boats";
    };
  }
}

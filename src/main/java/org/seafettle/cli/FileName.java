package org.seafettle.cli;

import java.text.Normalizer;
import java.util.Locale;
import org.seafettle.survey.Survey;

/** What a report's files are called. */
final class FileName {

  private FileName() {}

  /** {@code 2026-10-17-sedge-warbler-pre-purchase}, in characters that every system allows. */
  static String of(Survey survey) {
    var occasion = survey.occasion();
    var boat = plain(survey.boat().name());
    return String.join(
        "-",
        occasion.date().toString(),
        boat.isEmpty() ? plain("boat " + occasion.id()) : boat,
        occasion.purpose().word());
  }

  private static String plain(String text) {
    return Normalizer.normalize(text, Normalizer.Form.NFD)
        .replaceAll("\\p{M}+", "")
        .toLowerCase(Locale.ROOT)
        .replaceAll("[^a-z0-9]+", "-")
        .replaceAll("^-+|-+$", "");
  }
}

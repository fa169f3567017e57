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
    return of(
        occasion.date().toString(), survey.boat().name(), occasion.id(), occasion.purpose().word());
  }

  /** The same from what the survey file says. */
  static String of(String date, String boat, String id, String purpose) {
    var name = plain(boat);
    return String.join("-", date, name.isEmpty() ? plain("boat " + id) : name, purpose);
  }

  static String plain(String text) {
    return Normalizer.normalize(text, Normalizer.Form.NFD)
        .replaceAll("\\p{M}+", "")
        .toLowerCase(Locale.ROOT)
        .replaceAll("[^a-z0-9]+", "-")
        .replaceAll("^-+|-+$", "");
  }
}

package org.seafettle.json;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.seafettle.survey.Fuel;

/** The words of a survey file that are written otherwise than in small letters. */
final class SurveyWords {

  private SurveyWords() {}

  /** As it stands on the pump: {@code E10}, {@code diesel}. */
  static String fuel(Fuel.Kind kind) {
    return kind.isGasoline() ? kind.word().toUpperCase(Locale.ROOT) : kind.word();
  }

  static List<String> fuels() {
    return Arrays.stream(Fuel.Kind.values()).map(SurveyWords::fuel).toList();
  }

  static Optional<Fuel.Kind> fuel(String written) {
    return Arrays.stream(Fuel.Kind.values()).filter(k -> fuel(k).equals(written)).findFirst();
  }
}

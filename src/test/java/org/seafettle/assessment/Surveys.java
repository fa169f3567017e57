package org.seafettle.assessment;

import java.util.List;
import java.util.Locale;
import org.seafettle.catalogue.Catalogue;
import org.seafettle.json.CatalogueReader;
import org.seafettle.json.SurveyReader;
import org.seafettle.survey.Survey;

/** Surveys for tests, written as people write them, and their assessments. */
final class Surveys {

  private static final Catalogue CATALOGUE = CatalogueReader.supplied();

  private static final String TWO_ENGINES =
      """
      {
        "format": "seafettle-survey/1",
        "survey": {
          "id": "T-1", "purpose": "%s", "date": "%s", "place": "yard",
          "by": { "name": "Ida Holm" }
        },
        "boat": { "name": "Sedge", "water": "salt", "fuel": { "kind": "E10" } },
        "engines": [
          { "id": "port", "type": "outboard-4-stroke", "hours": "600 h"%s },
          { "id": "starboard", "type": "outboard-4-stroke", "hours": "600 h" }
        ],
        "batteries": [
          { "id": "start-port", "serves": ["port"], "chemistry": "flooded", "nominal": "12 V" }
        ],
        "findings": [%s]%s
      }
      """;

  private Surveys() {}

  static Survey of(String purpose, String engine, String findings, String more) {
    return of(purpose, engine, findings, more, "2026-10-17");
  }

  static Survey of(String purpose, String engine, String findings, String more, String date) {
    return SurveyReader.bind(
        String.format(Locale.ROOT, TWO_ENGINES, purpose, date, engine, findings, more), CATALOGUE);
  }

  static Assessment assess(String... findings) {
    return assess(of("pre-purchase", "", String.join(",", findings), ""));
  }

  static Assessment assess(Survey survey) {
    return new Assessor(CATALOGUE).assess(survey, List.of());
  }

  static Result result(Assessment assessment, String check, String on) {
    return assessment.results().stream()
        .filter(r -> r.check().id().equals(check) && r.component().id().equals(on))
        .findFirst()
        .orElseThrow();
  }

  /** A level on the dipstick, 0 at the lower mark and 1 at the upper, read as the manual says. */
  static String level(String on, String position) {
    return finding(
        "oil-level",
        on,
        "\"readings\": {\"position\": \"%s\"}, \"conditions\": [\"read-as-the-manual-says\"]",
        position);
  }

  /** A finding in a word of its check. */
  static String says(String check, String on, String word) {
    return finding(check, on, "\"is\": \"%s\"", word);
  }

  /** A finding; the form has a place for what is given. */
  static String finding(String check, String on, String form, String given) {
    return String.format(
        Locale.ROOT, "{\"check\": \"%s\", \"on\": \"%s\", " + form + "}", check, on, given);
  }
}

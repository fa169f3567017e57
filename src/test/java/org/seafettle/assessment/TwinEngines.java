package org.seafettle.assessment;

import java.util.List;
import java.util.Locale;
import org.seafettle.catalogue.Catalogue;
import org.seafettle.json.CatalogueReader;
import org.seafettle.json.SurveyReader;
import org.seafettle.survey.Component;
import org.seafettle.survey.Survey;

/** A boat with two outboards, used on the 150 days from 1 May to 27 September. */
final class TwinEngines {

  private static final Catalogue CATALOGUE = CatalogueReader.supplied();

  private static final String SURVEY =
      """
      {
        "format": "seafettle-survey/1",
        "survey": { "id": "W-1", "purpose": "yearly-record", "date": "%s", "place": "yard",
                    "season": { "from": "05-01", "to": "09-27" }, "by": { "name": "Ida Holm" } },
        "boat": { "name": "Sedge", "water": "salt" },
        "engines": [ { "id": "port", "type": "outboard-4-stroke", "hours": "%s" },
                     { "id": "starboard", "type": "outboard-4-stroke", "hours": "%s" } ],
        "batteries": [ { "id": "start", "serves": ["port"], "chemistry": "flooded", "nominal": "12 V" } ],
        "findings": [%s],
        "work": [%s]
      }
      """;

  private TwinEngines() {}

  static Survey survey(String day, String port, String starboard, String findings, String work) {
    return SurveyReader.bind(
        String.format(Locale.ROOT, SURVEY, day, port, starboard, findings, work), CATALOGUE);
  }

  static Component component(Survey survey, String id) {
    return survey.components().filter(c -> c.id().equals(id)).findFirst().orElseThrow();
  }

  static List<Due> dues(Survey survey, Survey... earlier) {
    return new Assessor(CATALOGUE).assess(survey, List.of(earlier)).plan().dues();
  }

  /** A finding that tells when something was last done. */
  static String lastDone(String check, String on, String last) {
    return "{ \"check\": \"%s\", \"on\": \"%s\", \"last\": { %s } }".formatted(check, on, last);
  }
}

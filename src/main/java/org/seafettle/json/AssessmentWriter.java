package org.seafettle.json;

import org.seafettle.assessment.Assessment;
import org.seafettle.assessment.Scoring;

/**
 * Writes assessments. Everything that a report says is in the file; its schema is {@code
 * org/seafettle/schema/assessment.schema.json}. The same assessment gives the same bytes.
 */
public final class AssessmentWriter {

  static final String RESOURCE = "/org/seafettle/schema/assessment.schema.json";

  private static final String FORMAT = "seafettle-assessment/1";

  private AssessmentWriter() {}

  /**
   * The assessment as JSON in UTF-8, with a new line at its end.
   *
   * @param assessment what to write
   * @param program the version of the program
   */
  public static byte[] write(Assessment assessment, String program) {
    var survey = assessment.survey();
    var file =
        new JsonRecord()
            .text("format", FORMAT)
            .object("program", new JsonRecord().text("version", program))
            .object(
                "catalogue",
                new JsonRecord()
                    .text("version", assessment.catalogue().version())
                    .text("digest", assessment.catalogue().digest()))
            .object(
                "scoring",
                new JsonRecord()
                    .text("version", Scoring.VERSION)
                    .number("least-coverage", Scoring.LEAST_COVERAGE))
            .object("survey", SurveyPart.occasion(survey.occasion()))
            .object("boat", SurveyPart.boat(survey.boat()))
            .list("engines", survey.engines().stream().map(SurveyPart::engine))
            .list("batteries", survey.outfit().batteries().stream().map(SurveyPart::battery))
            .list("pumps", survey.outfit().pumps().stream().map(SurveyPart::pump))
            .object("verdict", PlanPart.verdict(assessment.verdict()))
            .list("grades", assessment.engines().stream().map(GradePart::engine))
            .list("results", assessment.results().stream().map(ResultPart::result));
    PlanPart.put(file, assessment);
    file.list("photos", survey.photos().stream().map(SurveyPart::photo))
        .list("work", survey.work().stream().map(SurveyPart::work))
        .object("prices", survey.prices().map(SurveyPart::prices));
    return PrettyJson.file(file.node());
  }
}

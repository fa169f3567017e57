package org.seafettle.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import org.seafettle.json.Printed;
import org.seafettle.json.SurveyReader;
import org.seafettle.pdf.Enclosed;
import org.seafettle.problem.Place;
import org.seafettle.problem.Problem;
import org.seafettle.problem.Refused;
import org.seafettle.survey.Survey;

/**
 * A survey to be compared.
 *
 * @param survey what was recorded
 * @param printed what the report printed when it was made, where it was read from one
 */
record Compared(Survey survey, Optional<Printed> printed) {

  LocalDate day() {
    return survey.occasion().date();
  }

  /**
   * @throws Refused with every fault of the survey, or where a report carries none
   */
  static Compared read(Path path, SurveyReader reader) {
    var name = String.valueOf(path.getFileName());
    return name.toLowerCase(Locale.ROOT).endsWith(".pdf")
        ? report(path, name, reader)
        : new Compared(reader.read(path).survey(), Optional.empty());
  }

  private static Compared report(Path path, String name, SurveyReader reader) {
    var files = Enclosed.in(path);
    var survey = files.get("survey.json");
    if (survey == null) {
      throw new Refused(
          new Problem(
              Place.file(name),
              "The PDF carries no survey.json.",
              "Take a report that this program made, or the survey itself."));
    }
    var printed =
        Optional.ofNullable(files.get("assessment.json"))
            .map(bytes -> Printed.read(name + "/assessment.json", bytes));
    return new Compared(reader.read(new String(survey, StandardCharsets.UTF_8)), printed);
  }
}

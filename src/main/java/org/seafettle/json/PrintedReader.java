package org.seafettle.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Optional;
import org.seafettle.assessment.Printed;
import org.seafettle.assessment.Printed.PrintedGrade;
import org.seafettle.problem.Place;
import org.seafettle.problem.Problem;
import org.seafettle.problem.Refused;

/** Reads of an assessment file what a report printed. */
final class PrintedReader {

  private static final String FORMAT = "seafettle-assessment/1";

  private PrintedReader() {}

  /**
   * Reads an assessment file.
   *
   * @param file its name, for what is wrong with it
   * @throws Refused where it is none
   */
  static Printed read(String file, byte[] json) {
    var root = DocumentParser.parse(file, json).root();
    if (!FORMAT.equals(root.path("format").asText())) {
      throw foreign(file);
    }
    try {
      return printed(root);
    } catch (DateTimeException noDay) {
      throw foreign(file);
    }
  }

  private static Refused foreign(String file) {
    return new Refused(
        new Problem(
            Place.field(file, "format"),
            "The file is no assessment of the form \"" + FORMAT + "\".",
            "Take one that this program wrote."));
  }

  private static Printed printed(JsonNode root) {
    var grades = new ArrayList<PrintedGrade>();
    for (var engine : root.path("grades")) {
      var name = engine.path("engine").asText();
      grades.add(grade(name, Optional.empty(), engine.path("grade")));
      for (var subsystem : engine.path("subsystems")) {
        grades.add(
            grade(
                name, Optional.of(subsystem.path("subsystem").asText()), subsystem.path("grade")));
      }
    }
    return new Printed(
        root.path("survey").path("id").asText(),
        LocalDate.parse(root.path("survey").path("date").asText()),
        root.path("program").path("version").asText(),
        root.path("catalogue").path("version").asText(),
        root.path("catalogue").path("digest").asText(),
        root.path("scoring").path("version").asText(),
        grades);
  }

  private static PrintedGrade grade(String engine, Optional<String> subsystem, JsonNode grade) {
    return new PrintedGrade(
        engine,
        subsystem,
        grade.path("printed").asInt(),
        grade.path("printed-at-worst").asInt(),
        grade.path("graded").asBoolean()
            ? Optional.of(grade.path("word").asText())
            : Optional.empty());
  }
}

package org.seafettle.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.seafettle.problem.Place;
import org.seafettle.problem.Problem;
import org.seafettle.problem.Refused;

/**
 * What a report printed when it was made: the grades of an assessment file, by the catalogue and
 * the scale of that day.
 *
 * @param program version of the program
 * @param catalogue version of the catalogue
 * @param digest of the catalogue
 * @param scoring version of the scale
 * @param grades each engine as a whole, then its subsystems
 */
public record Printed(
    String program, String catalogue, String digest, String scoring, List<PrintedGrade> grades) {

  private static final String FORMAT = "seafettle-assessment/1";

  public Printed {
    grades = List.copyOf(grades);
  }

  /**
   * A grade as it was printed.
   *
   * @param engine the engine
   * @param subsystem its subsystem; empty for the engine as a whole
   * @param index 0 to 100, rounded down
   * @param atWorst 0 to {@code index}
   * @param word its word; empty where it was withheld
   */
  public record PrintedGrade(
      String engine, Optional<String> subsystem, int index, int atWorst, Optional<String> word) {}

  /**
   * Reads an assessment file.
   *
   * @param file its name, for what is wrong with it
   * @throws Refused where it is none
   */
  public static Printed read(String file, byte[] json) {
    var root = DocumentParser.parse(file, json).root();
    if (!FORMAT.equals(root.path("format").asText())) {
      throw new Refused(
          new Problem(
              Place.field(file, "format"),
              "The file is no assessment of the form \"" + FORMAT + "\".",
              "Take one that this program wrote."));
    }
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

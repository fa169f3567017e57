package org.seafettle.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Optional;
import java.util.function.Predicate;
import org.seafettle.assessment.Printed;
import org.seafettle.assessment.Printed.PrintedGrade;
import org.seafettle.problem.Place;
import org.seafettle.problem.Problem;
import org.seafettle.problem.Refused;

/** Reads of an assessment file what a report printed. */
final class PrintedReader {

  private static final String FORMAT = "seafettle-assessment/1";

  private final String file;

  private PrintedReader(String file) {
    this.file = file;
  }

  /**
   * Reads an assessment file.
   *
   * @param file its name, for what is wrong with it
   * @throws Refused where it is none, or lacks something that a report prints
   */
  static Printed read(String file, byte[] json) {
    var root = DocumentParser.parse(file, json).root();
    if (!FORMAT.equals(root.path("format").asText())) {
      throw refused(file, "format", "The file is no assessment of the form \"" + FORMAT + "\".");
    }
    return new PrintedReader(file).printed(root);
  }

  private Printed printed(JsonNode root) {
    var grades = new ArrayList<PrintedGrade>();
    for (var engine : node(root, "grades", JsonNode::isArray)) {
      var name = text(engine, "engine");
      grades.add(grade(name, Optional.empty(), engine));
      for (var subsystem : node(engine, "subsystems", JsonNode::isArray)) {
        grades.add(grade(name, Optional.of(text(subsystem, "subsystem")), subsystem));
      }
    }
    var survey = node(root, "survey", JsonNode::isObject);
    var catalogue = node(root, "catalogue", JsonNode::isObject);
    return new Printed(
        text(survey, "id"),
        day(text(survey, "date")),
        text(node(root, "program", JsonNode::isObject), "version"),
        text(catalogue, "version"),
        text(catalogue, "digest"),
        text(node(root, "scoring", JsonNode::isObject), "version"),
        grades);
  }

  private PrintedGrade grade(String engine, Optional<String> subsystem, JsonNode of) {
    var grade = node(of, "grade", JsonNode::isObject);
    var word = text(grade, "word");
    return new PrintedGrade(
        engine,
        subsystem,
        node(grade, "printed", JsonNode::isNumber).asInt(),
        node(grade, "printed-at-worst", JsonNode::isNumber).asInt(),
        node(grade, "graded", JsonNode::isBoolean).asBoolean()
            ? Optional.of(word)
            : Optional.empty());
  }

  private LocalDate day(String date) {
    try {
      return LocalDate.parse(date);
    } catch (DateTimeException noDay) {
      throw unreadable("date");
    }
  }

  private String text(JsonNode of, String field) {
    return node(of, field, JsonNode::isTextual).asText();
  }

  private JsonNode node(JsonNode of, String field, Predicate<JsonNode> asWritten) {
    var node = of.path(field);
    if (!asWritten.test(node)) {
      throw unreadable(field);
    }
    return node;
  }

  private Refused unreadable(String field) {
    return refused(file, field, "The assessment lacks this, or it cannot be read.");
  }

  private static Refused refused(String file, String field, String fault) {
    return new Refused(
        new Problem(Place.field(file, field), fault, "Take one that this program wrote."));
  }
}

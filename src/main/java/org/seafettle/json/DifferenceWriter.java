package org.seafettle.json;

import java.util.Optional;
import org.seafettle.assessment.Assessment;
import org.seafettle.assessment.Printed;
import org.seafettle.assessment.Result;
import org.seafettle.assessment.Sighting;
import org.seafettle.catalogue.FindingClass;
import org.seafettle.catalogue.Subsystem;
import org.seafettle.difference.Change;
import org.seafettle.difference.Difference;
import org.seafettle.difference.GradeChange;
import org.seafettle.difference.ReadingChange;

/** Writes what lies between two surveys. The same difference gives the same text. */
public final class DifferenceWriter {

  private static final String FORMAT = "seafettle-difference/1";

  private DifferenceWriter() {}

  /**
   * The difference as JSON.
   *
   * @param printedThen what the earlier report printed when it was made, where it was read from one
   * @param printedNow the same of the later one
   */
  public static String write(
      Difference difference, Optional<Printed> printedThen, Optional<Printed> printedNow) {
    var catalogue = difference.now().catalogue();
    return PrettyJson.write(
        new JsonRecord()
            .text("format", FORMAT)
            .object(
                "judged-by",
                new JsonRecord()
                    .text("version", catalogue.version())
                    .text("digest", catalogue.digest()))
            .object("then", survey(difference.then(), printedThen))
            .object("now", survey(difference.now(), printedNow))
            .list("changes", difference.changes().stream().map(DifferenceWriter::change))
            .list("grades", difference.grades().stream().map(DifferenceWriter::grade))
            .list("readings", difference.readings().stream().map(DifferenceWriter::reading))
            .node());
  }

  private static JsonRecord survey(Assessment assessment, Optional<Printed> printed) {
    var survey = assessment.survey();
    return new JsonRecord()
        .text("id", survey.occasion().id())
        .text("date", survey.occasion().date().toString())
        .text("boat", survey.boat().name())
        .text("hin", survey.boat().hin())
        .object("printed", printed.map(DifferenceWriter::printed));
  }

  private static JsonRecord printed(Printed printed) {
    return new JsonRecord()
        .text("program", printed.program())
        .text("catalogue", printed.catalogue())
        .text("digest", printed.digest())
        .text("scoring", printed.scoring())
        .list(
            "grades",
            printed.grades().stream()
                .map(
                    g ->
                        new JsonRecord()
                            .text("engine", g.engine())
                            .text("subsystem", g.subsystem())
                            .whole("index", g.index())
                            .whole("index-at-worst", g.atWorst())
                            .text("word", g.word())));
  }

  private static JsonRecord change(Change change) {
    return new JsonRecord()
        .text("kind", ResultPart.word(change.kind()))
        .text("check", change.result().check().id())
        .text("on", change.result().component().id())
        .object("then", change.then().map(DifferenceWriter::result))
        .object("now", change.now().map(DifferenceWriter::result));
  }

  private static JsonRecord result(Result result) {
    var seen = result.seen();
    return new JsonRecord()
        .text("state", ResultPart.state(result.sighting()))
        .text("outcome", seen.map(s -> s.outcome().name()))
        .text("class", seen.map(Sighting.Seen::found).map(FindingClass::word))
        .text("counts-as", seen.map(Sighting.Seen::counts).map(FindingClass::word));
  }

  private static JsonRecord grade(GradeChange grade) {
    return new JsonRecord()
        .text("engine", grade.engine().id())
        .text("subsystem", grade.subsystem().map(Subsystem::word))
        .text("change", ResultPart.word(grade.proof()))
        .object("then", grade.then().map(GradePart::grade))
        .object("now", GradePart.grade(grade.now()));
  }

  private static JsonRecord reading(ReadingChange reading) {
    return new JsonRecord()
        .text("check", reading.check().id())
        .text("on", reading.component().id())
        .text("reading", reading.spec().name())
        .text("unit", reading.spec().unit().code())
        .text("change", ResultPart.word(reading.proof()))
        .number("by", reading.by())
        .number("uncertainty", reading.uncertainty())
        .object("then", value(reading.then()))
        .object("now", value(reading.now()));
  }

  private static JsonRecord value(ReadingChange.Value value) {
    return new JsonRecord()
        .number("value", value.value())
        .number("uncertainty", value.uncertainty())
        .text("written", value.recorded().written());
  }
}

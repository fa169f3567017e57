package org.seafettle.json;

import org.seafettle.assessment.EngineGrade;
import org.seafettle.assessment.EngineGrade.SubsystemGrade;
import org.seafettle.assessment.Grade;

/** The grades, as the assessment file tells them. */
final class GradePart {

  private GradePart() {}

  static JsonRecord grade(Grade grade) {
    return new JsonRecord()
        .number("index", grade.high())
        .whole("printed", grade.printed())
        .text("word", grade.word().word())
        .whole("zone", grade.word().zone())
        .number("index-at-worst", grade.low())
        .whole("printed-at-worst", grade.printedAtWorst())
        .text("word-at-worst", grade.wordAtWorst().word())
        .number("coverage", grade.coverage())
        .flag("graded", grade.graded());
  }

  static JsonRecord engine(EngineGrade engine) {
    return new JsonRecord()
        .text("engine", engine.engine().id())
        .object("grade", grade(engine.grade()))
        .text("decided-by", engine.decidedBy().word())
        .list("subsystems", engine.subsystems().stream().map(GradePart::subsystem));
  }

  private static JsonRecord subsystem(SubsystemGrade subsystem) {
    return new JsonRecord()
        .text("subsystem", subsystem.subsystem().word())
        .object("grade", grade(subsystem.grade()))
        .list("ledger", subsystem.ledger().stream().map(GradePart::line))
        .list("open", subsystem.open().stream().map(ResultPart::reference))
        .text("could-hide", subsystem.couldHide().map(o -> o.name()))
        .list("too-close-to-call", subsystem.flips().stream().map(GradePart::flip));
  }

  private static JsonRecord line(EngineGrade.LedgerLine line) {
    return new JsonRecord()
        .object("finding", ResultPart.reference(line.result()))
        .text("class", line.result().counts().word())
        .whole("deduct", line.result().counts().deduct())
        .number("weight", line.weight())
        .number("taken", line.taken());
  }

  private static JsonRecord flip(EngineGrade.Flip flip) {
    return new JsonRecord()
        .object("finding", ResultPart.reference(flip.result()))
        .number("index", flip.high());
  }
}

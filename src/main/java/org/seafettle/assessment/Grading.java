package org.seafettle.assessment;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.UnaryOperator;
import org.seafettle.assessment.EngineGrade.Flip;
import org.seafettle.assessment.EngineGrade.LedgerLine;
import org.seafettle.assessment.EngineGrade.SubsystemGrade;
import org.seafettle.catalogue.FindingClass;
import org.seafettle.catalogue.Subsystem;
import org.seafettle.survey.Battery;
import org.seafettle.survey.Component;
import org.seafettle.survey.Engine;
import org.seafettle.survey.Survey;

/** Grades the engines of a survey from its results. */
final class Grading {

  private final Survey survey;
  private final List<Result> results;

  Grading(Survey survey, List<Result> results) {
    this.survey = survey;
    this.results = results.stream().filter(Result::graded).toList();
  }

  List<EngineGrade> engines() {
    return survey.engines().stream().map(this::engine).toList();
  }

  private EngineGrade engine(Engine engine) {
    var opened = Opened.by(results);
    return EngineGrade.of(
        engine,
        Arrays.stream(Subsystem.values())
            .filter(s -> opened.counts(s, engine))
            .map(s -> subsystem(engine, s))
            .toList());
  }

  private SubsystemGrade subsystem(Engine engine, Subsystem subsystem) {
    var own = countingFor(engine, subsystem);
    return new SubsystemGrade(
        subsystem,
        grade(own, UnaryOperator.identity()),
        ledger(own),
        own.stream()
            .filter(Result::leavesOpen)
            .sorted(Comparator.comparing((Result r) -> r.worst().findingClass()).reversed())
            .toList(),
        flips(own));
  }

  List<Result> countingFor(Engine engine, Subsystem subsystem) {
    return results.stream()
        .filter(r -> r.check().subsystem() == subsystem && concerns(r.component(), engine))
        .toList();
  }

  /** What is on the boat or her pumps concerns every engine; a battery those that it serves. */
  static boolean concerns(Component component, Engine engine) {
    return switch (component.kind()) {
      case ENGINE -> component.id().equals(engine.id());
      case BATTERY -> ((Battery) component).servesEngine(engine.id());
      case PUMP, BOAT -> true;
    };
  }

  /** The grade as it would be if the results were different. */
  static Grade grade(List<Result> results, UnaryOperator<Result> changed) {
    return Scoring.grade(results.stream().map(changed).map(Result::entry).toList());
  }

  private static List<LedgerLine> ledger(List<Result> results) {
    var lines = new ArrayList<LedgerLine>();
    double weight = 1;
    var deducting =
        results.stream()
            .filter(r -> r.counts() != FindingClass.OK)
            .sorted(Comparator.comparing(Result::counts).reversed())
            .toList();
    for (var result : deducting) {
      lines.add(new LedgerLine(result, weight, weight * result.counts().deduct()));
      weight /= 2;
    }
    return lines;
  }

  private static List<Flip> flips(List<Result> results) {
    return results.stream()
        .filter(Result::tooCloseToCall)
        .map(r -> new Flip(r, grade(results, other -> other == r ? r.flipped() : other).high()))
        .toList();
  }
}

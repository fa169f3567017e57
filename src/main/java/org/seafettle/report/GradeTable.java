package org.seafettle.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.seafettle.assessment.EngineGrade;
import org.seafettle.assessment.Grade;
import org.seafettle.assessment.History;
import org.seafettle.assessment.Printed;
import org.seafettle.assessment.Printed.PrintedGrade;
import org.seafettle.catalogue.Subsystem;

/**
 * The indexes over the years, by today's rules, and as they were printed then where that is known
 * and another.
 *
 * @param past the earlier surveys, oldest first
 * @param printed what earlier reports printed, in any order
 */
record GradeTable(Manuscript m, List<History.Past> past, List<Printed> printed) {

  /** A line for each engine and each of its subsystems. */
  List<HistoryPart.GradeLine> lines() {
    var lines = new ArrayList<HistoryPart.GradeLine>();
    for (var engine : m.assessment().engines()) {
      var name = Phrases.capital(m.phrases().title(engine.engine()));
      lines.add(new HistoryPart.GradeLine(name, true, cells(engine, Optional.empty())));
      for (var subsystem : Subsystem.values()) {
        if (isGraded(engine, subsystem)) {
          lines.add(
              new HistoryPart.GradeLine(
                  Phrases.capital(SubsystemRow.name(m, subsystem)),
                  false,
                  cells(engine, Optional.of(subsystem))));
        }
      }
    }
    return lines;
  }

  private boolean isGraded(EngineGrade engine, Subsystem subsystem) {
    return Stream.concat(past.stream().flatMap(p -> same(p, engine).stream()), Stream.of(engine))
        .anyMatch(e -> grade(e, Optional.of(subsystem)).isPresent());
  }

  private List<String> cells(EngineGrade engine, Optional<Subsystem> subsystem) {
    var cells = new ArrayList<String>();
    for (var then : past) {
      cells.add(cell(then, engine, subsystem));
    }
    cells.add(told(grade(engine, subsystem)));
    return cells;
  }

  private String cell(History.Past then, EngineGrade engine, Optional<Subsystem> subsystem) {
    var same = same(then, engine);
    var told = told(same.flatMap(e -> grade(e, subsystem)));
    return same.flatMap(e -> printed(then))
        .flatMap(p -> p.grade(engine.engine().id(), subsystem.map(Subsystem::word)))
        .map(this::told)
        .filter(was -> !was.equals(told))
        .map(was -> m.words().say("history.cell-printed", told, was))
        .orElse(told);
  }

  private static Optional<EngineGrade> same(History.Past past, EngineGrade now) {
    return past.engines().stream().filter(e -> e.engine().isSameAs(now.engine())).findFirst();
  }

  private static Optional<Grade> grade(EngineGrade engine, Optional<Subsystem> subsystem) {
    return subsystem.isEmpty()
        ? Optional.of(engine.grade())
        : engine.subsystems().stream()
            .filter(s -> s.subsystem() == subsystem.get())
            .map(EngineGrade.SubsystemGrade::grade)
            .findFirst();
  }

  private String told(Optional<Grade> grade) {
    return grade
        .map(g -> told(g.printed(), g.printedAtWorst(), m.phrases().condition(g)))
        .orElse(m.words().say("history.none"));
  }

  private String told(PrintedGrade grade) {
    var word =
        grade
            .word()
            .map(w -> m.words().find("condition." + w).orElse(w))
            .orElse(m.words().say("not-graded"));
    return told(grade.index(), grade.atWorst(), word);
  }

  private String told(int index, int atWorst, String word) {
    return m.words()
        .say(
            index == atWorst ? "history.cell" : "history.cell-at-worst",
            Integer.toString(index),
            word,
            Integer.toString(atWorst));
  }

  private Optional<Printed> printed(History.Past then) {
    return printed.stream()
        .filter(p -> p.survey().equals(then.id()) && p.day().equals(then.date()))
        .findFirst();
  }

  /** By which rules the earlier reports were printed that are known. */
  List<String> rules() {
    return past.stream()
        .flatMap(then -> printed(then).stream())
        .map(
            p ->
                m.words()
                    .say("history.rules", m.phrases().date(p.day()), p.program(), p.catalogue()))
        .toList();
  }
}

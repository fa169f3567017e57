package org.seafettle.difference;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.seafettle.assessment.Assessment;
import org.seafettle.assessment.EngineGrade;
import org.seafettle.assessment.EngineGrade.SubsystemGrade;
import org.seafettle.assessment.Result;
import org.seafettle.catalogue.Subsystem;
import org.seafettle.survey.Component;
import org.seafettle.survey.Engine;

/**
 * What lies between two surveys that were judged by one catalogue.
 *
 * @param then the earlier survey
 * @param now the later survey
 * @param changes each check on each component that either of them has, in the order of the later
 *     one, then what only the earlier one has
 * @param grades each engine of the later survey as a whole, then its subsystems
 * @param readings each single reading that both have
 */
public record Difference(
    Assessment then,
    Assessment now,
    List<Change> changes,
    List<GradeChange> grades,
    List<ReadingChange> readings) {

  public Difference {
    if (!then.catalogue().digest().equals(now.catalogue().digest())) {
      throw new IllegalArgumentException("judged by two catalogues");
    }
    changes = List.copyOf(changes);
    grades = List.copyOf(grades);
    readings = List.copyOf(readings);
  }

  /** Two assessments; a component is the same where the match says so. */
  public static Difference between(Assessment then, Assessment now, Match match) {
    var changes = changes(then, now, match);
    return new Difference(
        then, now, changes, grades(then, now, match, changes), readings(then, now, match));
  }

  /** The changes of one kind. */
  public List<Change> of(Change.Kind kind) {
    return changes.stream().filter(c -> c.kind() == kind).toList();
  }

  private static List<Change> changes(Assessment then, Assessment now, Match match) {
    var changes = new ArrayList<Change>();
    var met = new ArrayList<Result>();
    for (var result : now.results()) {
      var before = earlier(then, result, match);
      before.ifPresent(met::add);
      changes.add(new Change(before, Optional.of(result)));
    }
    for (var result : then.results()) {
      if (!met.contains(result) && stillThere(now, result.component(), match)) {
        changes.add(new Change(Optional.of(result), Optional.empty()));
      }
    }
    return changes;
  }

  private static Optional<Result> earlier(Assessment then, Result now, Match match) {
    return then.results().stream()
        .filter(r -> r.check().id().equals(now.check().id()))
        .filter(r -> match.same(r.component(), now.component()))
        .findFirst();
  }

  /** What was found on an engine that is no longer aboard says nothing about the boat of today. */
  private static boolean stillThere(Assessment now, Component component, Match match) {
    return now.survey().components().anyMatch(c -> match.same(component, c));
  }

  private static List<GradeChange> grades(
      Assessment then, Assessment now, Match match, List<Change> changes) {
    var grades = new ArrayList<GradeChange>();
    for (var engine : now.engines()) {
      var before =
          then.engines().stream().filter(e -> match.same(e.engine(), engine.engine())).findFirst();
      var once = seenOnce(engine.engine(), changes);
      grades.add(
          new GradeChange(
              engine.engine(),
              Optional.empty(),
              before.map(EngineGrade::grade),
              engine.grade(),
              !once.isEmpty()));
      for (var subsystem : Subsystem.values()) {
        of(engine, subsystem)
            .map(
                graded ->
                    new GradeChange(
                        engine.engine(),
                        Optional.of(subsystem),
                        before.flatMap(e -> of(e, subsystem)).map(SubsystemGrade::grade),
                        graded.grade(),
                        once.contains(subsystem)))
            .ifPresent(grades::add);
      }
    }
    return grades;
  }

  /** The subsystems of an engine in which something open was looked at once only. */
  private static Set<Subsystem> seenOnce(Engine engine, List<Change> changes) {
    return changes.stream()
        .filter(c -> c.kind() == Change.Kind.FIRST_SEEN || c.kind() == Change.Kind.OPEN_NOT_SEEN)
        .map(Change::result)
        .filter(
            r ->
                r.component().kind() != Component.Kind.ENGINE
                    || r.component().id().equals(engine.id()))
        .map(r -> r.check().subsystem())
        .collect(Collectors.toCollection(() -> EnumSet.noneOf(Subsystem.class)));
  }

  /** Empty where the survey left the subsystem out. */
  private static Optional<SubsystemGrade> of(EngineGrade engine, Subsystem subsystem) {
    return engine.subsystems().stream().filter(s -> s.subsystem() == subsystem).findFirst();
  }

  private static List<ReadingChange> readings(Assessment then, Assessment now, Match match) {
    return now.results().stream()
        .flatMap(
            result ->
                earlier(then, result, match).stream()
                    .flatMap(
                        before -> ReadingChange.of(then.survey(), before, now.survey(), result)))
        .toList();
  }
}

package org.seafettle.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.seafettle.assessment.Assessment;
import org.seafettle.assessment.EngineGrade;
import org.seafettle.assessment.EngineGrade.SubsystemGrade;
import org.seafettle.assessment.Result;
import org.seafettle.assessment.Task;
import org.seafettle.catalogue.Catalogue;
import org.seafettle.catalogue.Deadline;
import org.seafettle.catalogue.Outcome;
import org.seafettle.catalogue.Subsystem;
import org.seafettle.survey.Battery;
import org.seafettle.survey.Purpose;
import org.seafettle.survey.Survey;

/** What all parts of a report draw from: the assessment, the phrases and the numbering. */
record Manuscript(Assessment assessment, Phrases phrases, Photographs photographs) {

  Survey survey() {
    return assessment.survey();
  }

  Words words() {
    return phrases.words();
  }

  /** The number of a task, which is its place in the plan. */
  int number(Task task) {
    return assessment.plan().tasks().indexOf(task) + 1;
  }

  /** What the report is about: the engine or the engines, and why they were looked at. */
  String subject() {
    return words()
        .count("subtitle." + survey().occasion().purpose().word(), survey().engines().size());
  }

  /**
   * By when; who is afloat, or may be, is not told only to do something before launching, and who
   * buys nothing not to do it before a purchase.
   */
  String by(Task task) {
    var by = task.by();
    if (by == Deadline.BEFORE_PURCHASE && survey().occasion().purpose() != Purpose.PRE_PURCHASE) {
      return words().of("by", Deadline.AS_CONVENIENT);
    }
    var afloat = survey().occasion().conditions().afloat();
    if (by != Deadline.BEFORE_LAUNCHING || afloat.filter(is -> !is).isPresent()) {
      return words().of("by", by);
    }
    var when = TaskRow.critical(task) ? "by-hauling-out" : "by-next-ashore";
    return afloat.isPresent() ? words().say(when) : words().say(when + "-or-launching");
  }

  Optional<Task> taskFor(Result finding) {
    return assessment.plan().tasks().stream()
        .filter(t -> t.settles().contains(finding))
        .findFirst();
  }

  /** A finding in a few words, with what it is on: {@code port engine: water in its oil}. */
  String headline(Result finding) {
    return words()
        .say("headline", phrases.title(finding.component()), outcome(finding).saying().brief());
  }

  static Outcome outcome(Result finding) {
    return finding.seen().orElseThrow().outcome();
  }

  /** A check with what it is on, for what was not seen. */
  String look(Result result) {
    return words()
        .say("look", result.check().guidance().title(), phrases.title(result.component()));
  }

  /** What a reading or a computed number is called. */
  String numberName(String word) {
    return assessment.catalogue().name(Catalogue.Named.NUMBER, word);
  }

  /** What a spare part, or the work itself, is called. */
  String partName(String word) {
    return word.equals(Task.LABOUR)
        ? words().say("cost.labour")
        : assessment.catalogue().name(Catalogue.Named.PART, word);
  }

  /** Whether a subsystem is the same for every engine, so that it is told once. */
  boolean shared(Subsystem subsystem) {
    return survey().engines().size() > 1
        && assessment.results().stream()
            .filter(r -> r.check().subsystem() == subsystem && r.graded())
            .allMatch(r -> concernsAll(r));
  }

  private boolean concernsAll(Result result) {
    return switch (result.component().kind()) {
      case ENGINE -> false;
      case BATTERY -> ((Battery) result.component()).serves().isEmpty();
      case PUMP, BOAT -> true;
    };
  }

  List<SubsystemGrade> ownOf(EngineGrade engine) {
    return engine.subsystems().stream().filter(s -> !shared(s.subsystem())).toList();
  }

  /** The subsystems that are told once, each from the first engine, weakest first. */
  List<SubsystemGrade> sharedByAll() {
    return assessment.engines().get(0).subsystems().stream()
        .filter(s -> shared(s.subsystem()))
        .toList();
  }

  List<SubsystemGrade> everySubsystem() {
    var all = new ArrayList<SubsystemGrade>();
    assessment.engines().forEach(e -> all.addAll(ownOf(e)));
    all.addAll(sharedByAll());
    return all;
  }

  static OptionalInt place(List<?> list, Object item) {
    return IntStream.range(0, list.size()).filter(i -> list.get(i).equals(item)).findFirst();
  }
}

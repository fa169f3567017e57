package org.seafettle.yard;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.seafettle.assessment.Assessment;
import org.seafettle.assessment.EngineGrade;
import org.seafettle.assessment.Grade;
import org.seafettle.assessment.Verdict;
import org.seafettle.catalogue.FindingClass;
import org.seafettle.catalogue.Subsystem;
import org.seafettle.report.Reminders;
import org.seafettle.report.Report;
import org.seafettle.report.TaskRow;
import org.seafettle.survey.Purpose;

/**
 * A boat whose report was written.
 *
 * @param source the folder or archive that her survey came in
 * @param report the file name of her report
 * @param boat what she is and when she was looked at
 * @param standing what the survey came to
 * @param subsystems those that were looked at, in their usual order
 * @param jobs what is to be done, the most urgent first
 * @param reminders what falls due, and when
 */
public record Surveyed(
    String source,
    String report,
    Particulars boat,
    Standing standing,
    List<State> subsystems,
    List<Job> jobs,
    Reminders reminders)
    implements Entry {

  public Surveyed {
    subsystems = List.copyOf(subsystems);
    jobs = List.copyOf(jobs);
  }

  /**
   * What she is and when she was looked at.
   *
   * @param name of the boat
   * @param hin hull identification number; empty where it was not recorded
   * @param survey the survey's own number
   * @param purpose of the survey
   * @param date of the survey
   * @param by who surveyed
   */
  public record Particulars(
      String name, String hin, String survey, Purpose purpose, LocalDate date, String by) {}

  /**
   * What the survey came to.
   *
   * @param readiness in one word
   * @param says the verdict as the report says it, the gravest sentence first
   * @param weakest the grade of the weakest engine, which is the boat's
   */
  public record Standing(Verdict.Readiness readiness, List<String> says, Grade weakest) {

    public Standing {
      says = List.copyOf(says);
    }
  }

  /**
   * A subsystem, over all engines.
   *
   * @param subsystem which
   * @param gravest the gravest finding that is open, {@code OK} where none is
   * @param enoughSeen whether enough was seen on every engine to say a word
   */
  public record State(Subsystem subsystem, FindingClass gravest, boolean enoughSeen) {}

  /**
   * What is kept of a report that was just made.
   *
   * @param file the name of its file
   */
  public static Surveyed of(
      String source, String file, Assessment assessment, Report report, Reminders reminders) {
    var survey = assessment.survey();
    var occasion = survey.occasion();
    return new Surveyed(
        source,
        file,
        new Particulars(
            survey.boat().name(),
            survey.boat().hin().orElse(""),
            occasion.id(),
            occasion.purpose(),
            occasion.date(),
            occasion.by().name()),
        new Standing(
            assessment.verdict().readiness(), report.first().verdict().says(), weakest(assessment)),
        Arrays.stream(Subsystem.values()).flatMap(s -> state(assessment, s).stream()).toList(),
        jobs(assessment, report),
        reminders);
  }

  private static Grade weakest(Assessment assessment) {
    return assessment.engines().stream()
        .map(EngineGrade::grade)
        .min(Comparator.comparingDouble(Grade::high).thenComparingDouble(Grade::low))
        .orElseThrow();
  }

  private static Optional<State> state(Assessment assessment, Subsystem subsystem) {
    var graded =
        assessment.engines().stream()
            .flatMap(engine -> engine.subsystems().stream())
            .filter(s -> s.subsystem() == subsystem)
            .toList();
    return graded.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new State(
                subsystem,
                graded.stream()
                    .flatMap(s -> s.ledger().stream())
                    .map(line -> line.result().counts())
                    .reduce(FindingClass.OK, FindingClass::worse),
                graded.stream().allMatch(s -> s.grade().graded())));
  }

  private static List<Job> jobs(Assessment assessment, Report report) {
    var titles = new TreeMap<String, String>();
    report.plan().groups().stream()
        .flatMap(group -> group.tasks().stream())
        .forEach((TaskRow row) -> titles.put(row.number(), row.on()));
    var jobs = new ArrayList<Job>();
    for (var task : assessment.plan().tasks()) {
      var title = titles.getOrDefault(Integer.toString(jobs.size() + 1), task.component().id());
      jobs.add(Job.of(task, title, assessment.survey().prices()));
    }
    return jobs;
  }

  /** The same boat, her report under another name. */
  public Surveyed under(String file) {
    return new Surveyed(source, file, boat, standing, subsystems, jobs, reminders);
  }

  public Span hours() {
    return jobs.stream().map(job -> job.effort().hours()).reduce(Span.NOTHING, Span::plus);
  }

  /** Work and parts, as far as priced. */
  public Amounts cost() {
    return jobs.stream().map(job -> job.effort().cost()).reduce(Amounts.NONE, Amounts::plus);
  }
}

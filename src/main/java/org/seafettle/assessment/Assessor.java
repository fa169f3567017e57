package org.seafettle.assessment;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.seafettle.catalogue.Catalogue;
import org.seafettle.catalogue.Check;
import org.seafettle.catalogue.FindingClass;
import org.seafettle.survey.Purpose;
import org.seafettle.survey.Survey;
import org.seafettle.trend.Series;

/** Turns a survey into its assessment. */
public final class Assessor {

  private final Catalogue catalogue;

  public Assessor(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  /**
   * Judges a survey.
   *
   * @param survey whose findings name only checks of the catalogue and components of the survey
   * @param earlier surveys of the same boat, in any order; judged by today's catalogue too
   */
  public Assessment assess(Survey survey, List<Survey> earlier) {
    var book = new FindingBook();
    var past = new ArrayList<History.Past>();
    var before = new ArrayList<Survey>();
    for (var then : oldestFirst(earlier)) {
      var judged = judge(then, before, book, past);
      before.add(then);
      book.enter(judged.results(), then.occasion().date());
      past.add(new History.Past(then.occasion().id(), then.occasion().date(), judged.engines()));
    }
    return judge(survey, before, book, past);
  }

  private static List<Survey> oldestFirst(List<Survey> surveys) {
    return surveys.stream().sorted(Comparator.comparing(s -> s.occasion().date())).toList();
  }

  private Assessment judge(
      Survey survey, List<Survey> earlier, FindingBook book, List<History.Past> past) {
    var seen = Looks.of(survey, catalogue);
    var causes = Causes.of(survey, catalogue, seen);
    var results = book.number(Causes.raise(seen, causes));
    var engines = new Grading(survey, results).engines();
    var dues = Dues.of(survey, earlier, results);
    var tasks = Tasks.of(survey, results, engines, new Deadlines(survey, dues));
    var plan =
        new Assessment.Plan(
            tasks, NextLooks.of(survey, results), furtherTests(survey, results), dues);
    return new Assessment(
        survey,
        catalogue,
        results,
        engines,
        verdict(results, engines),
        Causes.from(causes, results),
        plan,
        new History(
            past,
            book.follow(survey, results),
            Exchange.of(survey, earlier),
            Series.of(survey, earlier)));
  }

  private static Verdict verdict(List<Result> results, List<EngineGrade> engines) {
    var stops =
        results.stream()
            .filter(r -> r.counts() == FindingClass.STOP)
            .sorted(Comparator.comparingInt(r -> r.number().orElseThrow()))
            .map(r -> new Verdict.Stop(r.seen().orElseThrow().stop().orElseThrow(), r))
            .toList();
    Map<FindingClass, Integer> counts =
        results.stream()
            .filter(Result::reports)
            .collect(
                Collectors.groupingBy(
                    Result::counts,
                    () -> new EnumMap<>(FindingClass.class),
                    Collectors.summingInt(r -> 1)));
    return new Verdict(readiness(stops, counts, results, engines), stops, counts);
  }

  private static Verdict.Readiness readiness(
      List<Verdict.Stop> stops,
      Map<FindingClass, Integer> counts,
      List<Result> results,
      List<EngineGrade> engines) {
    if (!stops.isEmpty()) {
      return Verdict.Readiness.STOP;
    }
    if (counts.containsKey(FindingClass.BEFORE_USE)) {
      return Verdict.Readiness.NOT_BEFORE_WORK;
    }
    if (!engines.stream().allMatch(e -> e.grade().graded())) {
      return Verdict.Readiness.NOT_ENOUGH_SEEN;
    }
    return results.stream().anyMatch(Result::leavesOpen)
        ? Verdict.Readiness.READY_AS_FAR_AS_SEEN
        : Verdict.Readiness.READY;
  }

  private List<Check> furtherTests(Survey survey, List<Result> results) {
    var done = results.stream().map(r -> r.check().id()).collect(Collectors.toSet());
    Purpose purpose = survey.occasion().purpose();
    var opened = Opened.by(results);
    return catalogue.checks().stream()
        .filter(c -> !done.contains(c.id()) && !c.expected().contains(purpose))
        .filter(
            c ->
                survey
                    .components()
                    .filter(x -> x.kind() == c.on() && c.scope().covers(survey, x))
                    .anyMatch(x -> opened.counts(c, x)))
        .toList();
  }
}

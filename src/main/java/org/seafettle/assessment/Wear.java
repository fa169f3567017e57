package org.seafettle.assessment;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.seafettle.catalogue.FindingClass;
import org.seafettle.catalogue.Measure;
import org.seafettle.formula.time.DueDate;
import org.seafettle.quantity.MeasuredUnit;
import org.seafettle.survey.Survey;

/**
 * How fast a share is used up, such as that of an anode: evenly over the days of the season since
 * it was last measured or renewed (program default).
 */
final class Wear {

  private static final double WHOLE = 100;

  private final Survey survey;
  private final List<Survey> earlier;

  Wear(Survey survey, List<Survey> earlier) {
    this.survey = survey;
    this.earlier =
        earlier.stream()
            .sorted(Comparator.comparing((Survey s) -> s.occasion().date()).reversed())
            .toList();
  }

  /** A share on a day, in per cent, with its expanded uncertainty. */
  private record Point(LocalDate day, double share, double uncertainty) {}

  /** From where something has to be done, and whether that lies above it or below. */
  private record Limit(double share, boolean isHighest) {}

  /** When it comes to the limit from which something has to be done. */
  Optional<Due.Wearing> until(Result result) {
    return result
        .seen()
        .filter(seen -> !seen.settled())
        .flatMap(Sighting.Seen::measured)
        .map(Measured::measure)
        .filter(measure -> measure.unit() == MeasuredUnit.PERCENT)
        .flatMap(measure -> limit(result, measure).flatMap(l -> until(result, measure, l)));
  }

  private Optional<Limit> limit(Result result, Measure measure) {
    var steps = measure.steps();
    return IntStream.range(0, steps.edges().size())
        .filter(i -> mustAct(result, measure, i) != mustAct(result, measure, i + 1))
        .mapToObj(i -> new Limit(steps.edges().get(i), mustAct(result, measure, i + 1)))
        .findFirst();
  }

  private boolean mustAct(Result result, Measure measure, int step) {
    return result
        .check()
        .outcome(measure.steps().names().get(step), survey, result.component())
        .filter(outcome -> outcome.findingClass().atLeast(FindingClass.TIMELY))
        .isPresent();
  }

  private Optional<Due.Wearing> until(Result result, Measure measure, Limit limit) {
    var today = survey.occasion().date();
    boolean rises = limit.isHighest();
    return before(result, rises ? 0 : WHOLE)
        .flatMap(
            then -> {
              double worn = Math.abs(measure.value() - then.share());
              boolean isWear =
                  rises ? measure.value() > then.share() : measure.value() < then.share();
              var season = Pace.season(survey);
              long days = Pace.days(season, then.day(), today);
              if (!isWear || days == 0) {
                return Optional.empty();
              }
              double doubt = Math.hypot(then.uncertainty(), measure.uncertainty().orElse(0));
              double perShare = (double) season.days() / days;
              var span =
                  DueDate.span(
                      season,
                      today,
                      Math.abs(limit.share() - measure.value()),
                      List.of((worn + doubt) * perShare, Math.max(0, worn - doubt) * perShare));
              return Optional.of(
                  new Due.Wearing(limit.share(), then.day(), span.fast(), span.slow()));
            });
  }

  /** The last time that it was measured or renewed. */
  private Optional<Point> before(Result result, double whenNew) {
    for (var then : earlier) {
      for (var finding : then.findings()) {
        if (finding.check().equals(result.check().id())
            && then.component(finding.on()).filter(result.component()::isSameAs).isPresent()) {
          if (finding.done().isPresent()) {
            return Optional.of(new Point(then.occasion().date(), whenNew, 0));
          }
          var sighting = new Judge(then, result.check(), result.component()).judge(finding);
          if (sighting instanceof Sighting.Seen seen && seen.measured().isPresent()) {
            var measure = seen.measured().get().measure();
            return Optional.of(
                new Point(
                    then.occasion().date(), measure.value(), measure.uncertainty().orElse(0)));
          }
        }
      }
    }
    return Optional.empty();
  }
}

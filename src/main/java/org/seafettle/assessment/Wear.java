package org.seafettle.assessment;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.seafettle.catalogue.FindingClass;
import org.seafettle.catalogue.Measure;
import org.seafettle.formula.time.DueDate;
import org.seafettle.quantity.MeasuredUnit;
import org.seafettle.survey.Finding;
import org.seafettle.survey.Survey;

/**
 * How fast a share is used up, such as that of an anode: evenly over the days of the season since
 * it was last measured or renewed (program default).
 */
final class Wear {

  private static final double WHOLE = 100;

  private final Survey survey;
  private final List<Survey> earlier;

  /**
   * @param earlier oldest first
   */
  Wear(Survey survey, List<Survey> earlier) {
    this.survey = survey;
    this.earlier = earlier;
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
    var now = point(survey, measure);
    return before(result, limit.isHighest() ? 0 : WHOLE)
        .filter(then -> limit.isHighest() ? now.share() > then.share() : now.share() < then.share())
        .flatMap(then -> until(limit, then, now));
  }

  private Optional<Due.Wearing> until(Limit limit, Point then, Point now) {
    var season = Pace.season(survey);
    long days = Pace.days(season, then.day(), now.day());
    if (days == 0) {
      return Optional.empty();
    }
    double worn = Math.abs(now.share() - then.share());
    double doubt = Math.hypot(then.uncertainty(), now.uncertainty());
    double aSeason = (double) season.days() / days;
    var span =
        DueDate.span(
            season,
            now.day(),
            Math.abs(limit.share() - now.share()),
            List.of((worn + doubt) * aSeason, Math.max(0, worn - doubt) * aSeason));
    return Optional.of(new Due.Wearing(limit.share(), then.day(), span.fast(), span.slow()));
  }

  /** The last time that it was measured or renewed. */
  private Optional<Point> before(Result result, double whenNew) {
    return earlier.stream()
        .flatMap(
            then ->
                then.findings().stream()
                    .filter(f -> f.check().equals(result.check().id()))
                    .filter(
                        f ->
                            then.component(f.on()).filter(result.component()::isSameAs).isPresent())
                    .flatMap(f -> point(then, result, f, whenNew).stream()))
        .reduce((older, newer) -> newer);
  }

  private static Optional<Point> point(
      Survey then, Result result, Finding finding, double whenNew) {
    if (finding.done().isPresent()) {
      return Optional.of(new Point(then.occasion().date(), whenNew, 0));
    }
    return new Judge(then, result.check(), result.component()).judge(finding)
            instanceof Sighting.Seen seen
        ? seen.measured().map(measured -> point(then, measured.measure()))
        : Optional.empty();
  }

  private static Point point(Survey of, Measure measure) {
    return new Point(of.occasion().date(), measure.value(), measure.uncertainty().orElse(0));
  }
}

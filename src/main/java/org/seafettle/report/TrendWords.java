package org.seafettle.report;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.seafettle.assessment.Result;
import org.seafettle.assessment.Sighting;
import org.seafettle.catalogue.ReadingSpec;
import org.seafettle.quantity.MeasuredUnit;
import org.seafettle.quantity.Quantity;
import org.seafettle.survey.Season;
import org.seafettle.trend.Change;
import org.seafettle.trend.Course;
import org.seafettle.trend.Crossing;
import org.seafettle.trend.Series;
import org.seafettle.trend.Span;
import org.seafettle.trend.Trend;

/** What may be said of a reading over the seasons; where nothing is proven, just that. */
final class TrendWords {

  private final Manuscript m;
  private final Series series;
  private final MeasuredUnit unit;
  private final Course course;

  TrendWords(Manuscript m, Series series) {
    this.m = m;
    this.series = series;
    this.unit = series.points().get(series.points().size() - 1).quantity().unit();
    this.course = Course.bySeason(series, firstDay(m));
  }

  private static MonthDay firstDay(Manuscript m) {
    return m.survey().occasion().season().map(Season::from).orElse(MonthDay.of(1, 1));
  }

  String said() {
    var said = new ArrayList<String>();
    var trend = Trend.of(course);
    said.add(trend(trend));
    if (trend instanceof Trend.Proven proven) {
      ahead(proven.rising()).ifPresent(said::add);
    }
    change().ifPresent(said::add);
    return m.phrases().series(said);
  }

  private String trend(Trend trend) {
    if (trend instanceof Trend.Proven proven) {
      var slopes = proven.slopes();
      double slope = Math.abs(proven.line().slope());
      return m.words()
          .say(
              proven.rising() ? "trend.rising" : "trend.falling",
              m.phrases().difference(slope, unit),
              between(slopes),
              course.occasions() + "");
    } else if (trend instanceof Trend.Unproven unproven) {
      return m.words()
          .say("trend.unproven", course.occasions() + "", m.phrases().chance(unproven.test().p()));
    }
    return m.words().say("trend.few");
  }

  private String between(Span slopes) {
    double one = Math.abs(slopes.low());
    double other = Math.abs(slopes.high());
    return m.words()
        .say(
            "trend.between",
            m.phrases().difference(Math.min(one, other), unit),
            m.phrases().difference(Math.max(one, other), unit));
  }

  /** When the next graver limit is reached, if it goes on so. */
  private Optional<String> ahead(boolean rising) {
    return limits().stream()
        .filter(limit -> rising == (limit > now()))
        .min((a, b) -> Double.compare(Math.abs(a - now()), Math.abs(b - now())))
        .flatMap(
            limit ->
                Crossing.of(course, limit) instanceof Crossing.Expected expected
                    ? Optional.of(reached(limit, expected))
                    : Optional.empty());
  }

  private String reached(double limit, Crossing.Expected expected) {
    return m.words()
        .say(
            "trend.reaches",
            m.phrases().value(limit, unit),
            season(expected.at()),
            season(expected.earliest()),
            season(expected.latest()));
  }

  private static String season(double at) {
    return Long.toString((long) Math.floor(at));
  }

  private double now() {
    var readings = course.readings();
    return readings.get(readings.size() - 1).value();
  }

  /** The limits of this very reading, in its unit; none where the check judges another number. */
  List<Double> limits() {
    return result()
        .flatMap(
            r ->
                r.seen()
                    .flatMap(Sighting.Seen::measured)
                    .filter(x -> x.measure().name().equals(series.reading()))
                    .map(
                        x ->
                            Stretch.limits(Stretch.of(m, r, x.measure())).stream()
                                .map(l -> Quantity.of(l, x.measure().unit()).in(unit))
                                .toList()))
        .orElse(List.of());
  }

  private Optional<Result> result() {
    return m.assessment().results().stream()
        .filter(r -> r.check().id().equals(series.check()))
        .filter(r -> r.component().id().equals(series.on()))
        .findFirst();
  }

  /** What changed since the last survey, as far as both readings are certain. */
  private Optional<String> change() {
    var points = series.points();
    var before = points.get(points.size() - 2);
    var now = points.get(points.size() - 1);
    var change = new Change(certain(before.quantity()), certain(now.quantity()));
    var since = m.phrases().date(before.date());
    return switch (change.verdict()) {
      case NOT_PROVEN -> Optional.of(m.words().say("trend.same", since));
      case ROSE, FELL ->
          Optional.of(
              m.words()
                  .say(
                      change.amount() > 0 ? "trend.rose" : "trend.fell",
                      m.phrases().difference(Math.abs(change.amount()), unit),
                      since,
                      perHours(change, before.hours(), now.hours())));
      case UNCERTAINTY_NOT_STATED -> Optional.empty();
    };
  }

  private String perHours(Change change, OptionalDouble before, OptionalDouble now) {
    return before.isPresent() && now.isPresent() && now.getAsDouble() > before.getAsDouble()
        ? m.words()
            .say(
                "trend.per-hours",
                m.phrases()
                    .difference(
                        100 * Math.abs(change.perHour(before.getAsDouble(), now.getAsDouble())),
                        unit))
        : "";
  }

  /** A reading that states no uncertainty has the usual one of its instrument. */
  private Quantity certain(Quantity quantity) {
    return quantity.plusMinus().isPresent()
        ? quantity
        : usual().map(u -> quantity.withPlusMinus(u)).orElse(quantity);
  }

  private Optional<Quantity> usual() {
    return result()
        .flatMap(
            r ->
                r.check().criterion().readings().stream()
                    .filter(s -> s.name().equals(series.reading()))
                    .filter(s -> s.usualUncertainty().isPresent())
                    .findFirst())
        .map(TrendWords::usual);
  }

  private static Quantity usual(ReadingSpec spec) {
    return Quantity.of(spec.usualUncertainty().orElseThrow(), spec.unit());
  }
}

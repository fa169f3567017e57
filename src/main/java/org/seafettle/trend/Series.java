package org.seafettle.trend;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.seafettle.quantity.MeasuredUnit;
import org.seafettle.quantity.Quantity;
import org.seafettle.survey.Component;
import org.seafettle.survey.Engine;
import org.seafettle.survey.Finding;
import org.seafettle.survey.Survey;

/**
 * One reading over the years, as it was recorded each time.
 *
 * @param check the check
 * @param on the component
 * @param reading the reading's name
 * @param points oldest first
 */
public record Series(String check, String on, String reading, List<Point> points) {

  /**
   * The fewest seasons from which a trend can be told at all: with fewer, no order of the readings
   * is improbable enough under a two-sided test at 5 % (exact Mann-Kendall, 2 of 5! orders).
   */
  public static final int FEWEST_SEASONS = 5;

  public Series {
    points = List.copyOf(points);
  }

  /** Whether there are seasons enough to speak of a trend. */
  public boolean enough() {
    return points.size() >= FEWEST_SEASONS;
  }

  /**
   * A reading of one season.
   *
   * @param date when
   * @param quantity as recorded
   * @param hours on the meter of the engine then, where the reading is an engine's and they are
   *     known
   */
  public record Point(LocalDate date, Quantity quantity, OptionalDouble hours) {}

  /** Every single reading that this survey and an earlier one both have. */
  public static List<Series> of(Survey survey, List<Survey> earlier) {
    var oldestFirst =
        earlier.stream().sorted(Comparator.comparing((Survey s) -> s.occasion().date())).toList();
    var series = new ArrayList<Series>();
    for (var finding : survey.findings()) {
      for (var reading : finding.evidence().readings().keySet()) {
        over(survey, oldestFirst, finding, reading).ifPresent(series::add);
      }
    }
    return series;
  }

  private static Optional<Series> over(
      Survey survey, List<Survey> earlier, Finding finding, String reading) {
    var points = new LinkedHashMap<LocalDate, Point>();
    for (var past : earlier) {
      if (sameComponent(past, survey, finding.on())) {
        past.finding(finding.check(), finding.on())
            .flatMap(f -> single(f, reading))
            .ifPresent(q -> points.put(past.occasion().date(), point(past, finding.on(), q)));
      }
    }
    var now = single(finding, reading);
    if (points.isEmpty() || now.isEmpty()) {
      return Optional.empty();
    }
    points.put(survey.occasion().date(), point(survey, finding.on(), now.get()));
    return Optional.of(
        new Series(finding.check(), finding.on(), reading, List.copyOf(points.values())));
  }

  private static Point point(Survey survey, String on, Quantity quantity) {
    var hours =
        engine(survey.component(on))
            .flatMap(Engine::hours)
            .map(h -> OptionalDouble.of(h.in(MeasuredUnit.HOUR)))
            .orElseGet(OptionalDouble::empty);
    return new Point(survey.occasion().date(), quantity, hours);
  }

  private static Optional<Quantity> single(Finding finding, String reading) {
    var all = finding.evidence().all(reading);
    return all.size() == 1 ? Optional.of(all.get(0)) : Optional.empty();
  }

  private static boolean sameComponent(Survey past, Survey now, String id) {
    return past.component(id)
        .filter(then -> now.component(id).filter(then::isSameAs).isPresent())
        .isPresent();
  }

  private static Optional<Engine> engine(Optional<Component> component) {
    return component.filter(Engine.class::isInstance).map(Engine.class::cast);
  }
}

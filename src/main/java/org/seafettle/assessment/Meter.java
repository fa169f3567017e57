package org.seafettle.assessment;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.seafettle.quantity.MeasuredUnit;
import org.seafettle.quantity.Quantity;
import org.seafettle.survey.Engine;
import org.seafettle.survey.Survey;

/**
 * What an engine's hour meter showed, from surveys, services and entries of the log.
 *
 * @param points the oldest first, none after the survey
 */
public record Meter(List<Point> points) {

  /**
   * One writes whole hours down and the next one tenths: that much is no fall (program default).
   */
  private static final double ROUNDING = 1;

  /**
   * What it showed on a day.
   *
   * @param hours on the meter, not below 0
   */
  public record Point(LocalDate day, double hours) {}

  static Meter of(Survey survey, List<Survey> earlier, Engine engine) {
    var all = new TreeMap<LocalDate, Double>();
    put(all, survey, engine);
    for (var before : earlier) {
      before.engines().stream().filter(engine::isSameAs).forEach(then -> put(all, before, then));
    }
    return new Meter(
        all.entrySet().stream().map(e -> new Point(e.getKey(), e.getValue())).toList());
  }

  private static void put(Map<LocalDate, Double> meter, Survey survey, Engine engine) {
    put(meter, survey.occasion().date(), engine.hours());
    survey.work().stream()
        .filter(w -> w.on().equals(engine.id()))
        .forEach(w -> put(meter, w.date(), w.at()));
    survey.findings().stream()
        .filter(f -> f.on().equals(engine.id()))
        .flatMap(f -> f.evidence().last().stream())
        .forEach(last -> put(meter, last.date(), last.at()));
  }

  private static void put(Map<LocalDate, Double> meter, LocalDate day, Optional<Quantity> hours) {
    hours.ifPresent(h -> meter.putIfAbsent(day, h.in(MeasuredUnit.HOUR)));
  }

  /** The last time that it showed less than before: it was exchanged or set back in between. */
  Optional<Exchange.SetBack> setBack(Engine engine) {
    for (int i = points.size() - 1; i > 0; i--) {
      if (isFall(points.get(i - 1), points.get(i))) {
        return Optional.of(new Exchange.SetBack(engine, points.get(i - 1), points.get(i)));
      }
    }
    return Optional.empty();
  }

  /** What it showed since it was last set back, the newest first. */
  List<Point> rising() {
    var rising = new ArrayList<Point>();
    for (int i = points.size() - 1; i >= 0; i--) {
      var point = points.get(i);
      if (!rising.isEmpty() && isFall(point, rising.get(rising.size() - 1))) {
        break;
      }
      rising.add(point);
    }
    return rising;
  }

  private static boolean isFall(Point before, Point after) {
    return after.hours() < before.hours() - ROUNDING;
  }
}

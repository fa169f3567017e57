package org.seafettle.trend;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.seafettle.problem.Refused;

/**
 * A reading as plain numbers along the seasons or along the hours of use.
 *
 * @param readings the earliest first; those of one season stand at the same place
 */
public record Course(List<Reading> readings) {

  public Course {
    if (readings.stream().anyMatch(r -> !Double.isFinite(r.at()) || !Double.isFinite(r.value()))) {
      throw Refused.because("One of these readings is no number.", "Give all of them as numbers.");
    }
    readings = readings.stream().sorted(Comparator.comparingDouble(Reading::at)).toList();
  }

  /**
   * One reading.
   *
   * @param at the season as a year, or the hours of use
   * @param value in the unit of the series' last reading
   */
  public record Reading(double at, double value) {}

  /** From two lists of one length. */
  public static Course of(List<Double> at, List<Double> values) {
    if (at.size() != values.size()) {
      throw new IllegalArgumentException(at.size() + " places, " + values.size() + " values");
    }
    return new Course(
        IntStream.range(0, at.size())
            .mapToObj(i -> new Reading(at.get(i), values.get(i)))
            .toList());
  }

  /**
   * Along the seasons, so that slopes are per season. What is read before the first day of the
   * season belongs to the season before, and two readings of one season come at the same time.
   *
   * @param firstDay of the season in which the boat is used
   */
  public static Course bySeason(Series series, MonthDay firstDay) {
    return along(series, point -> season(point.date(), firstDay));
  }

  /**
   * Along the hours of use, so that slopes are per hour.
   *
   * @throws Refused where the hours are not known each time, or the meter went back
   */
  public static Course byHours(Series series) {
    double before = 0;
    for (var point : series.points()) {
      double hours =
          point
              .hours()
              .orElseThrow(
                  () ->
                      Refused.because(
                          "The engine's hours on " + point.date() + " are not known.",
                          "Give the hours on the meter at each survey."));
      if (hours < before) {
        throw Refused.because(
            "The hour meter showed less on " + point.date() + " than before.",
            "Say whether the meter was replaced or reset, and give the hours of both.");
      }
      before = hours;
    }
    return along(series, point -> point.hours().orElseThrow());
  }

  /** At how many different places there is a reading: the number of seasons that tell anything. */
  public int occasions() {
    return (int) readings.stream().mapToDouble(Reading::at).distinct().count();
  }

  /** Whether there are seasons enough to speak of a trend. */
  public boolean enough() {
    return occasions() >= Series.FEWEST_SEASONS;
  }

  private static Course along(Series series, ToDoubleFunction<Series.Point> place) {
    var points = series.points();
    var unit = points.get(points.size() - 1).quantity().unit();
    return new Course(
        points.stream()
            .map(p -> new Reading(place.applyAsDouble(p), p.quantity().in(unit)))
            .toList());
  }

  private static int season(LocalDate date, MonthDay firstDay) {
    return MonthDay.from(date).isBefore(firstDay) ? date.getYear() - 1 : date.getYear();
  }
}

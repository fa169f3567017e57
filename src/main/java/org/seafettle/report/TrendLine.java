package org.seafettle.report;

import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.seafettle.trend.Series;

/**
 * A reading over the years as a drawing, 200 wide and 48 high, time from left to right and high
 * values above.
 *
 * @param points the line, as SVG writes it
 * @param dots the readings
 * @param limits heights of the limits that lie near the readings
 * @param says the same in words
 */
public record TrendLine(String points, List<Dot> dots, List<String> limits, String says) {

  private static final double WIDTH = 200;
  private static final double HEIGHT = 48;
  private static final double MARGIN = 6;

  /** A limit further off than so many times the course's own height would flatten it. */
  private static final double NEAR = 3;

  public TrendLine {
    dots = List.copyOf(dots);
    limits = List.copyOf(limits);
  }

  /**
   * A reading.
   *
   * @param x along the years
   * @param y across the values
   * @param latest whether it is this year's
   */
  public record Dot(String x, String y, boolean latest) {}

  /**
   * @param limits of the reading, in the unit of its last value
   */
  static TrendLine of(Manuscript m, Series series, String name, List<Double> limits) {
    var points = series.points();
    var unit = points.get(points.size() - 1).quantity().unit();
    var values = points.stream().mapToDouble(p -> p.quantity().in(unit)).toArray();
    var days =
        points.stream()
            .mapToDouble(p -> ChronoUnit.DAYS.between(points.get(0).date(), p.date()))
            .toArray();
    var near = near(values, limits);
    var across =
        DoubleStream.concat(DoubleStream.of(values), near.stream().mapToDouble(Double::doubleValue))
            .summaryStatistics();
    var dots =
        IntStream.range(0, values.length)
            .mapToObj(
                i ->
                    new Dot(
                        Ruler.written(along(days[i], 0, days[days.length - 1], WIDTH)),
                        height(values[i], across.getMin(), across.getMax()),
                        i == values.length - 1))
            .toList();
    return new TrendLine(
        dots.stream().map(d -> d.x() + "," + d.y()).collect(Collectors.joining(" ")),
        dots,
        near.stream().map(l -> height(l, across.getMin(), across.getMax())).toList(),
        m.words().say("trend.says", name, said(m, series)));
  }

  private static List<Double> near(double[] values, List<Double> limits) {
    var own = DoubleStream.of(values).summaryStatistics();
    double reach = NEAR * Math.max(own.getMax() - own.getMin(), 0.02 * Math.abs(own.getMax()));
    return limits.stream()
        .filter(l -> l >= own.getMin() - reach && l <= own.getMax() + reach)
        .toList();
  }

  private static String height(double value, double least, double most) {
    return Ruler.written(HEIGHT - along(value, least, most, HEIGHT));
  }

  private static double along(double value, double least, double most, double length) {
    return least == most
        ? length / 2
        : MARGIN + (length - 2 * MARGIN) * (value - least) / (most - least);
  }

  private static String said(Manuscript m, Series series) {
    return m.phrases()
        .list(
            series.points().stream()
                .map(
                    p ->
                        m.words()
                            .say(
                                "trend.point",
                                m.phrases().date(p.date()),
                                m.phrases().quantity(p.quantity())))
                .toList());
  }
}

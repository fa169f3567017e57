package org.seafettle.report;

import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.stream.Collectors;
import org.seafettle.trend.Series;

/**
 * A reading over the years as a small drawing, 100 wide and 24 high, the upper edge the highest
 * value.
 *
 * @param points the line, as SVG writes it
 * @param dots the readings
 * @param says the same in words
 */
public record TrendLine(String points, List<Dot> dots, String says) {

  private static final double WIDTH = 100;
  private static final double HEIGHT = 24;
  private static final double MARGIN = 4;

  public TrendLine {
    dots = List.copyOf(dots);
  }

  /**
   * A reading.
   *
   * @param x along the years
   * @param y across the values
   * @param latest whether it is this year's
   */
  public record Dot(String x, String y, boolean latest) {}

  static TrendLine of(Manuscript m, Series series, String name) {
    var unit = series.points().get(0).quantity().unit();
    var values = series.points().stream().mapToDouble(p -> p.quantity().in(unit)).toArray();
    var first = series.points().get(0).date();
    var days =
        series.points().stream()
            .mapToDouble(p -> ChronoUnit.DAYS.between(first, p.date()))
            .toArray();
    var across = java.util.stream.DoubleStream.of(values).summaryStatistics();
    var dots =
        java.util.stream.IntStream.range(0, values.length)
            .mapToObj(
                i ->
                    new Dot(
                        Ruler.written(along(days[i], 0, days[days.length - 1], WIDTH)),
                        Ruler.written(
                            HEIGHT - along(values[i], across.getMin(), across.getMax(), HEIGHT)),
                        i == values.length - 1))
            .toList();
    return new TrendLine(
        dots.stream().map(d -> d.x() + "," + d.y()).collect(Collectors.joining(" ")),
        dots,
        m.words().say("trend.says", name, said(m, series)));
  }

  private static double along(double value, double least, double most, double length) {
    return least == most
        ? length / 2
        : MARGIN + (length - 2 * MARGIN) * (value - least) / (most - least);
  }

  private static String said(Manuscript m, Series series) {
    return series.points().stream()
        .map(
            p ->
                m.words()
                    .say(
                        "trend.point",
                        m.phrases().date(p.date()),
                        m.phrases().quantity(p.quantity())))
        .collect(Collectors.joining(m.words().say("list.between")));
  }
}

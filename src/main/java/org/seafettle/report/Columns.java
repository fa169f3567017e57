package org.seafettle.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.seafettle.catalogue.Measure;
import org.seafettle.quantity.MeasuredUnit;
import org.seafettle.quantity.Quantity;

/**
 * Cylinders or cells side by side, drawn 300 wide and 64 high. Columns stand on zero, so that their
 * lengths compare as the values do; where all are nearly equal only their heads are drawn, on a
 * stretched scale.
 *
 * @param columns from the first
 * @param standing whether they stand on zero
 * @param says the same in words
 */
public record Columns(List<Column> columns, boolean standing, String says) {

  /** Where the columns stand. */
  static final double FOOT = 52;

  private static final double HEAD = 14;

  /** Below this share of the highest, differences would not be seen between columns. */
  private static final double NEARLY_EQUAL = 0.05;

  public Columns {
    columns = List.copyOf(columns);
  }

  /**
   * A cylinder or cell.
   *
   * @param left its left edge
   * @param middle of it
   * @param width of it
   * @param top its head
   * @param height from head to foot
   * @param above where its value stands
   * @param number which it is, from 1
   * @param value what was read
   */
  public record Column(
      String left,
      String middle,
      String width,
      String top,
      String height,
      String above,
      String number,
      String value) {}

  /** The readings that were taken once a cylinder or cell; nothing where there is but one. */
  static Optional<Columns> of(Manuscript m, Measure measure) {
    return measure.shown().stream()
        .collect(
            Collectors.groupingBy(
                Measure.Shown::name,
                LinkedHashMap::new,
                Collectors.mapping(Measure.Shown::quantity, Collectors.toList())))
        .entrySet()
        .stream()
        .filter(e -> e.getValue().size() > 1)
        .findFirst()
        .map(e -> of(m, m.numberName(e.getKey()), e.getValue()));
  }

  private static Columns of(Manuscript m, String name, List<Quantity> readings) {
    var unit = readings.get(0).unit();
    var across = readings.stream().mapToDouble(q -> q.in(unit)).summaryStatistics();
    boolean standing =
        across.getMin() >= 0 && across.getMax() - across.getMin() >= NEARLY_EQUAL * across.getMax();
    double room = Math.max(across.getMax() - across.getMin(), 1e-9);
    double least = standing ? 0 : across.getMin() - room;
    double pitch = (Scale.WIDTH - 2 * Scale.MARGIN) / readings.size();
    var columns =
        IntStream.range(0, readings.size())
            .mapToObj(
                i ->
                    column(
                        m,
                        i,
                        pitch,
                        standing,
                        share(readings.get(i), unit, least, across.getMax()),
                        readings.get(i)))
            .toList();
    var told =
        IntStream.range(0, readings.size())
            .mapToObj(i -> m.words().say("columns.one", i + 1 + "", columns.get(i).value()))
            .toList();
    return new Columns(
        columns, standing, m.words().say("columns.says", name, m.phrases().list(told)));
  }

  private static double share(Quantity reading, MeasuredUnit unit, double least, double most) {
    return most > least ? (reading.in(unit) - least) / (most - least) : 0;
  }

  private static Column column(
      Manuscript m, int place, double pitch, boolean standing, double share, Quantity reading) {
    double middle = Scale.MARGIN + pitch * (place + 0.5);
    double width = Math.min(28, pitch * 0.6);
    double height = (FOOT - HEAD) * share;
    return new Column(
        Ruler.written(middle - width / 2),
        Ruler.written(middle),
        Ruler.written(width),
        Ruler.written(FOOT - height),
        Ruler.written(height),
        Ruler.written(FOOT - height - (standing ? 3 : 6)),
        Integer.toString(place + 1),
        m.phrases().quantity(reading));
  }
}

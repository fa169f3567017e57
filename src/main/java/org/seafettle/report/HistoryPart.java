package org.seafettle.report;

import java.time.LocalDate;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.seafettle.assessment.Assessment;
import org.seafettle.assessment.History;
import org.seafettle.assessment.Printed;
import org.seafettle.trend.Series;

/**
 * This year beside earlier ones.
 *
 * @param years the surveys compared, oldest first, this one last
 * @param grades a line for each engine and each of its subsystems
 * @param printed by which rules earlier reports were printed that are known
 * @param dates of the readings, oldest first
 * @param series a line for each reading
 */
public record HistoryPart(
    List<String> years,
    List<GradeLine> grades,
    List<String> printed,
    List<String> dates,
    List<SeriesLine> series) {

  /** More columns do not fit the sheet; older surveys have their own reports. */
  private static final int MOST_YEARS = 5;

  public HistoryPart {
    years = List.copyOf(years);
    grades = List.copyOf(grades);
    printed = List.copyOf(printed);
    dates = List.copyOf(dates);
    series = List.copyOf(series);
  }

  /**
   * An index over the years.
   *
   * @param name of the engine or subsystem
   * @param whole whether it is the engine as a whole
   * @param cells one a year: index, word, index at worst
   */
  public record GradeLine(String name, boolean whole, List<String> cells) {

    public GradeLine {
      cells = List.copyOf(cells);
    }
  }

  /**
   * A reading over the years.
   *
   * @param name what and where
   * @param cells one a date
   * @param line the same drawn
   * @param remark what may be said of it
   */
  public record SeriesLine(String name, List<String> cells, TrendLine line, String remark) {

    public SeriesLine {
      cells = List.copyOf(cells);
    }
  }

  static HistoryPart of(Manuscript m, List<Printed> printed) {
    var past = last(m.assessment().history().past());
    var years =
        Stream.concat(
                past.stream().map(History.Past::date), Stream.of(m.survey().occasion().date()))
            .map(m.phrases()::shortDate)
            .toList();
    var table = new GradeTable(m, past, printed);
    var all = telling(m.assessment());
    var dates = dates(all);
    return new HistoryPart(
        past.isEmpty() ? List.of() : years,
        past.isEmpty() ? List.of() : table.lines(),
        table.rules(),
        dates.stream().map(m.phrases()::shortDate).toList(),
        all.stream().map(s -> series(m, s, dates)).toList());
  }

  private static <T> List<T> last(List<T> all) {
    return all.subList(Math.max(0, all.size() - (MOST_YEARS - 1)), all.size());
  }

  /** The series of what a check asks first; what was read beside it stands with all readings. */
  private static List<Series> telling(Assessment assessment) {
    return assessment.history().series().stream()
        .filter(
            s ->
                assessment
                    .catalogue()
                    .check(s.check())
                    .flatMap(c -> c.criterion().readings().stream().findFirst())
                    .filter(r -> r.name().equals(s.reading()))
                    .isPresent())
        .toList();
  }

  private static List<LocalDate> dates(List<Series> series) {
    var dates = new TreeSet<LocalDate>();
    series.forEach(s -> s.points().forEach(p -> dates.add(p.date())));
    var all = List.copyOf(dates);
    return all.subList(Math.max(0, all.size() - MOST_YEARS), all.size());
  }

  private static SeriesLine series(Manuscript m, Series series, List<LocalDate> dates) {
    var name = name(m, series);
    var words = new TrendWords(m, series);
    return new SeriesLine(
        name,
        dates.stream().map(d -> at(m, series, d)).toList(),
        TrendLine.of(m, series, name, words.limits()),
        words.said());
  }

  private static String name(Manuscript m, Series series) {
    var title =
        m.assessment()
            .catalogue()
            .check(series.check())
            .map(c -> c.guidance().title())
            .orElse(series.check());
    var on = m.survey().component(series.on()).map(m.phrases()::title).orElse(series.on());
    return m.words().say("trend.name", title, on, m.numberName(series.reading()));
  }

  private static String at(Manuscript m, Series series, LocalDate date) {
    return series.points().stream()
        .filter(p -> p.date().equals(date))
        .map(p -> m.phrases().amount(p.quantity()))
        .findFirst()
        .orElse(m.words().say("history.none"));
  }
}

package org.seafettle.assessment;

import java.time.LocalDate;
import java.util.List;
import org.seafettle.trend.Series;

/**
 * The earlier surveys, judged by today's catalogue.
 *
 * @param past each earlier survey, oldest first
 * @param series each reading over the years, this survey's last
 */
public record History(List<Past> past, List<Series> series) {

  public static final History NONE = new History(List.of(), List.of());

  public History {
    past = List.copyOf(past);
    series = List.copyOf(series);
  }

  /**
   * An earlier survey.
   *
   * @param id its number
   * @param date its day
   * @param engines its grades
   */
  public record Past(String id, LocalDate date, List<EngineGrade> engines) {

    public Past {
      engines = List.copyOf(engines);
    }
  }
}

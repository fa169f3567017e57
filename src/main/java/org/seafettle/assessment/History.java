package org.seafettle.assessment;

import java.time.LocalDate;
import java.util.List;
import org.seafettle.trend.Series;

/**
 * The earlier surveys, judged by today's catalogue.
 *
 * @param past each earlier survey, oldest first
 * @param followed the findings that they left open, by number, and what became of them
 * @param exchanged what is not what it was at the last survey
 * @param series each reading over the years, this survey's last
 */
public record History(
    List<Past> past, List<Followed> followed, List<Exchange> exchanged, List<Series> series) {

  public History {
    past = List.copyOf(past);
    followed = List.copyOf(followed);
    exchanged = List.copyOf(exchanged);
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

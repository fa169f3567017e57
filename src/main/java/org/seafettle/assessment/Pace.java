package org.seafettle.assessment;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.seafettle.formula.time.Season;
import org.seafettle.quantity.MeasuredUnit;
import org.seafettle.quantity.Quantity;
import org.seafettle.survey.Engine;
import org.seafettle.survey.Survey;

/**
 * How much an engine is used, from its meter at surveys, services and entries of the log. Hours
 * accrue on the days of the season only, as in {@link org.seafettle.formula.time.DueDate}.
 *
 * @param season the part of the year in which the boat is used
 * @param stated whether the survey says so; otherwise the whole year is taken
 * @param hours of each past season, newest first, at least one, 0 to 8760 h
 */
public record Pace(Season season, boolean stated, List<Double> hours) {

  /**
   * The least part of a season over which a rate is told (program default): one busy holiday is no
   * season.
   */
  private static final double LEAST_PART = 0.5;

  private static final double HOURS_OF_A_DAY = 24;

  public Pace {
    hours = List.copyOf(hours);
    if (hours.isEmpty()) {
      throw new IllegalArgumentException("a pace without a season");
    }
  }

  static Optional<Pace> of(Survey survey, List<Survey> earlier, Engine engine) {
    var stated = survey.occasion().season();
    var season =
        stated
            .map(s -> new Season(s.from(), s.to()))
            .orElse(new Season(MonthDay.of(1, 1), MonthDay.of(12, 31)));
    var hours = seasons(season, meter(survey, earlier, engine));
    return hours.isEmpty()
        ? Optional.empty()
        : Optional.of(new Pace(season, stated.isPresent(), hours));
  }

  /** What the meter showed, by day, as far as it never fell since. */
  private static TreeMap<LocalDate, Double> meter(
      Survey survey, List<Survey> earlier, Engine engine) {
    var all = new TreeMap<LocalDate, Double>();
    put(all, survey, engine);
    earlier.stream()
        .flatMap(s -> s.engines().stream().filter(engine::isSameAs).map(then -> Map.entry(s, then)))
        .forEach(then -> put(all, then.getKey(), then.getValue()));
    all.tailMap(survey.occasion().date(), false).clear();
    var rising = new TreeMap<LocalDate, Double>();
    for (var point : all.descendingMap().entrySet()) {
      if (!rising.isEmpty() && point.getValue() > rising.firstEntry().getValue()) {
        break;
      }
      rising.put(point.getKey(), point.getValue());
    }
    return rising;
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

  /** The hours of whole seasons, newest first, each from at least half a season. */
  private static List<Double> seasons(Season season, TreeMap<LocalDate, Double> meter) {
    var seasons = new ArrayList<Double>();
    var end = meter.lastEntry();
    for (var start : meter.descendingMap().entrySet()) {
      long days = daysOf(season, start.getKey(), end.getKey());
      if (days >= LEAST_PART * season.days()) {
        double ran = end.getValue() - start.getValue();
        if (ran < HOURS_OF_A_DAY * days) {
          seasons.add(ran / days * season.days());
        }
        end = start;
      }
    }
    return seasons;
  }

  private static long daysOf(Season season, LocalDate after, LocalDate until) {
    return after.plusDays(1).datesUntil(until.plusDays(1)).filter(season::contains).count();
  }
}

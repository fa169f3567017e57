package org.seafettle.assessment;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.seafettle.formula.time.Season;
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
    var season = season(survey);
    var hours = seasons(season, Meter.of(survey, earlier, engine).rising());
    return hours.isEmpty()
        ? Optional.empty()
        : Optional.of(new Pace(season, survey.occasion().season().isPresent(), hours));
  }

  /** The part of the year in which the boat is used; all of it where the survey does not say. */
  static Season season(Survey survey) {
    return survey
        .occasion()
        .season()
        .map(s -> new Season(s.from(), s.to()))
        .orElse(new Season(MonthDay.of(1, 1), MonthDay.of(12, 31)));
  }

  /** The days of the season after one day and until another. */
  static long days(Season season, LocalDate after, LocalDate until) {
    return after.plusDays(1).datesUntil(until.plusDays(1)).filter(season::contains).count();
  }

  /** The hours of whole seasons, newest first, each from at least half a season. */
  private static List<Double> seasons(Season season, List<Meter.Point> newestFirst) {
    var seasons = new ArrayList<Double>();
    var end = newestFirst.stream().findFirst();
    for (var start : newestFirst) {
      long days = days(season, start.day(), end.orElseThrow().day());
      if (days >= LEAST_PART * season.days()) {
        // hours that were rounded when they were written down may seem to have run backwards
        double ran = Math.max(0, end.orElseThrow().hours() - start.hours());
        if (ran < HOURS_OF_A_DAY * days) {
          seasons.add(ran / days * season.days());
        }
        end = Optional.of(start);
      }
    }
    return seasons;
  }
}

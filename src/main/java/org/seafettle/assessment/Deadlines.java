package org.seafettle.assessment;

import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.seafettle.catalogue.Deadline;
import org.seafettle.formula.time.DueDate;
import org.seafettle.survey.Component;
import org.seafettle.survey.Survey;

/**
 * The days behind the deadlines, where there is an honest one. No day is known for the first frost,
 * nor for the next start: an engine is also started to lay it up.
 */
final class Deadlines {

  private static final double TEN_HOURS = 10;

  private final Survey survey;
  private final LocalDate today;
  private final List<Due> dues;

  Deadlines(Survey survey, List<Due> dues) {
    this.survey = survey;
    this.today = survey.occasion().date();
    this.dues = dues;
  }

  /** The last day on which it is still in time. */
  Optional<LocalDate> until(Deadline by, Component on) {
    return switch (by) {
      case AT_ONCE -> Optional.of(today);
      case BEFORE_NEXT_SEASON -> eveOfSeason();
      case BEFORE_LAUNCHING, BEFORE_NEXT_USE -> eveOfSeason().filter(day -> laidUp());
      case WITHIN_TEN_HOURS -> tenHours(on);
      case NEXT_SERVICE -> nextService(on);
      case BEFORE_PURCHASE,
          BEFORE_NEXT_START,
          BEFORE_SWITCHING_ON,
          BEFORE_PLUGGING_IN,
          BEFORE_CHARGING,
          BEFORE_FUELLING,
          BEFORE_LEAVING_HER_AFLOAT,
          BEFORE_FROST,
          AS_CONVENIENT ->
          Optional.empty();
    };
  }

  private Optional<LocalDate> eveOfSeason() {
    return survey
        .occasion()
        .season()
        .map(
            s -> {
              var start = s.from().atYear(today.getYear());
              return (start.isAfter(today) ? start : s.from().atYear(today.getYear() + 1))
                  .minusDays(1);
            });
  }

  /** Whether she is not used before her next season, as far as the survey tells. */
  private boolean laidUp() {
    return survey
        .occasion()
        .season()
        .filter(s -> !new org.seafettle.formula.time.Season(s.from(), s.to()).contains(today))
        .isPresent();
  }

  private Optional<LocalDate> tenHours(Component on) {
    return dues.stream()
        .filter(d -> d.result().component().id().equals(on.id()))
        .flatMap(d -> d.byHours().flatMap(Due.Running::pace).stream())
        .findFirst()
        .flatMap(p -> DueDate.byHours(p.season(), today, TEN_HOURS, Collections.max(p.hours())));
  }

  /**
   * The next thing on the same component that is still to come: that is when somebody is there.
   * Where something is overdue somebody is awaited already, and no later day is named.
   */
  private Optional<LocalDate> nextService(Component on) {
    var services =
        dues.stream()
            .filter(d -> d.result().component().id().equals(on.id()))
            .filter(d -> !d.isAge() && !d.isLook())
            .toList();
    return services.stream().anyMatch(d -> d.overdue().isPresent())
        ? Optional.empty()
        : services.stream()
            .flatMap(d -> d.next().stream())
            .filter(day -> day.isAfter(today))
            .min(LocalDate::compareTo);
  }
}

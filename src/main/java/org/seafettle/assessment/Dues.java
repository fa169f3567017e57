package org.seafettle.assessment;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.seafettle.catalogue.Facts;
import org.seafettle.catalogue.FindingClass;
import org.seafettle.catalogue.Interval;
import org.seafettle.catalogue.Measure;
import org.seafettle.formula.time.DueDate;
import org.seafettle.quantity.MeasuredUnit;
import org.seafettle.quantity.Quantity;
import org.seafettle.survey.Engine;
import org.seafettle.survey.Evidence.LastDone;
import org.seafettle.survey.Finding;
import org.seafettle.survey.Survey;

/** Works out what falls due when. */
final class Dues {

  private static final int MONTHS_OF_A_YEAR = 12;

  private final Survey survey;
  private final LocalDate today;
  private final Map<String, Pace> paces = new LinkedHashMap<>();
  private final Wear wear;

  private Dues(Survey survey, List<Survey> earlier) {
    this.survey = survey;
    this.today = survey.occasion().date();
    this.wear = new Wear(survey, earlier);
    for (var engine : survey.engines()) {
      Pace.of(survey, earlier, engine).ifPresent(pace -> paces.put(engine.id(), pace));
    }
  }

  /** What falls due after an interval, at an age or with its wear, in the order of the results. */
  static List<Due> of(Survey survey, List<Survey> earlier, List<Result> results) {
    var dues = new Dues(survey, earlier);
    return results.stream().flatMap(r -> dues.due(r).stream()).toList();
  }

  private Optional<Due> due(Result result) {
    var measured = result.seen().flatMap(Sighting.Seen::measured);
    if (result.check().criterion() instanceof Interval interval) {
      return result
          .finding()
          .filter(f -> measured.isPresent() || f.done().isPresent())
          .flatMap(f -> repeated(result, interval, f));
    }
    return measured.flatMap(m -> aged(result, m.measure())).or(() -> lookedAtAgain(result));
  }

  /** What has to be put right is renewed, and not merely looked at again. */
  private Optional<Due> lookedAtAgain(Result result) {
    var months = result.check().guidance().again();
    if (months.isEmpty()
        || result.seen().isEmpty()
        || result.counts().atLeast(FindingClass.TIMELY)) {
      return Optional.empty();
    }
    var again = today.plusMonths(months.getAsInt());
    return Optional.of(
        new Due(
            result,
            Optional.of(new LastDone(today, meter(result))),
            new Interval.Due(OptionalDouble.empty(), OptionalDouble.of(months.getAsInt())),
            Optional.of(new Due.Between(again, again)),
            Optional.empty(),
            wear.until(result),
            Optional.empty()));
  }

  private Optional<Due> repeated(Result result, Interval interval, Finding finding) {
    var facts = new Facts(survey, result.component(), result.check().id(), finding.evidence());
    var holding = interval.holding(facts);
    var last = lastDone(result, finding);
    if (holding.isEmpty() || last.isEmpty()) {
      return Optional.empty();
    }
    var byCalendar =
        holding.get().months().isPresent()
            ? Optional.of(
                last.get().date().plusMonths(Math.round(holding.get().months().getAsDouble())))
            : Optional.<LocalDate>empty();
    var byHours = running(facts, last.get(), holding.get().hours());
    return Optional.of(
        new Due(
            result,
            last,
            holding.get(),
            byCalendar.map(day -> new Due.Between(day, day)),
            byHours,
            Optional.empty(),
            overdue(byHours.map(Due.Running::left), byCalendar)));
  }

  /** What was done on the spot was last done on the day of the survey. */
  private Optional<LastDone> lastDone(Result result, Finding finding) {
    if (finding.done().isEmpty()) {
      return finding.evidence().last();
    }
    return Optional.of(new LastDone(today, meter(result)));
  }

  private static Optional<Quantity> meter(Result result) {
    return result.component() instanceof Engine engine ? engine.hours() : Optional.empty();
  }

  private Optional<Due.Running> running(Facts facts, LastDone last, OptionalDouble hours) {
    var ran = Interval.hoursSince(facts, last);
    if (hours.isEmpty() || ran.isEmpty()) {
      return Optional.empty();
    }
    double left = hours.getAsDouble() - ran.getAsDouble();
    double meter = last.at().orElseThrow().in(MeasuredUnit.HOUR) + hours.getAsDouble();
    var pace = Optional.ofNullable(paces.get(facts.component().id()));
    var span = pace.map(p -> DueDate.span(p.season(), today, left, p.hours()));
    return Optional.of(
        new Due.Running(
            left, meter, pace, span.flatMap(DueDate.Span::fast), span.flatMap(DueDate.Span::slow)));
  }

  /**
   * An age in whole years reaches its limit within the year after the limit less the age and one
   * more: a thing of three years may be nearly four.
   */
  private Optional<Due> aged(Result result, Measure measure) {
    var limit = life(result, measure);
    if (measure.unit() != MeasuredUnit.YEAR || limit.isEmpty()) {
      return Optional.empty();
    }
    long months = Math.round(MONTHS_OF_A_YEAR * limit.getAsDouble());
    boolean settled = result.seen().orElseThrow().settled();
    long left = settled ? months : months - Math.round(MONTHS_OF_A_YEAR * measure.value());
    var latest = today.plusMonths(left);
    var earliest = settled ? latest : latest.minusYears(1);
    return Optional.of(
        new Due(
            result,
            Optional.empty(),
            new Interval.Due(OptionalDouble.empty(), OptionalDouble.of(months)),
            Optional.of(new Due.Between(earliest, latest)),
            Optional.empty(),
            Optional.empty(),
            overdue(Optional.empty(), Optional.of(latest))));
  }

  /** The age from which something has to be done. */
  private OptionalDouble life(Result result, Measure measure) {
    var steps = measure.steps();
    return IntStream.range(0, steps.edges().size())
        .filter(
            i ->
                result
                    .check()
                    .outcome(steps.names().get(i + 1), survey, result.component())
                    .filter(o -> o.findingClass().atLeast(FindingClass.TIMELY))
                    .isPresent())
        .mapToDouble(i -> steps.edges().get(i))
        .findFirst();
  }

  private Optional<Due.Overdue> overdue(Optional<Double> hoursLeft, Optional<LocalDate> day) {
    var hours = hoursLeft.filter(left -> left < 0).map(left -> OptionalDouble.of(-left));
    var days =
        day.filter(d -> d.isBefore(today))
            .map(d -> OptionalLong.of(ChronoUnit.DAYS.between(d, today)));
    return Stream.of(hours, days).allMatch(Optional::isEmpty)
        ? Optional.empty()
        : Optional.of(
            new Due.Overdue(
                hours.orElse(OptionalDouble.empty()), days.orElse(OptionalLong.empty())));
  }
}

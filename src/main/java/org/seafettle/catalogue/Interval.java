package org.seafettle.catalogue;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.seafettle.formula.time.ServiceInterval;
import org.seafettle.quantity.MeasuredUnit;
import org.seafettle.quantity.Quantity;
import org.seafettle.survey.Engine;
import org.seafettle.survey.Evidence.LastDone;
import org.seafettle.survey.MakersLimit;

/**
 * Something that falls due after hours of running or months on the calendar, whichever comes first.
 * The number is the share of the interval that is used up: 1 is due today.
 *
 * @param due the interval by case
 * @param steps the limits of the share
 */
public record Interval(Cases<Due> due, Steps steps) implements Criterion {

  /** What its number is called. */
  public static final String SHARE = "share-of-interval";

  /**
   * An interval.
   *
   * @param hours of running
   * @param months on the calendar
   */
  public record Due(OptionalDouble hours, OptionalDouble months) {

    public Due {
      if (hours.isEmpty() && months.isEmpty()) {
        throw new IllegalArgumentException("an interval without end");
      }
    }
  }

  @Override
  public List<ReadingSpec> readings() {
    return List.of();
  }

  @Override
  public List<String> reachable() {
    return steps.names();
  }

  @Override
  public Measure measure(Facts facts) {
    var last =
        facts
            .evidence()
            .last()
            .orElseThrow(() -> new Unjudgeable(Reason.of(Reason.Kind.LAST_DONE_UNKNOWN)));
    var interval =
        holding(facts).orElseThrow(() -> new Unjudgeable(Reason.of(Reason.Kind.NO_MAKERS_LIMIT)));
    return share(facts, last, interval);
  }

  /** The interval that holds, the maker's before the catalogue's. */
  public Optional<Due> holding(Facts facts) {
    return facts
        .makersLimit()
        .map(Interval::makers)
        .or(() -> due.pick(facts.survey(), facts.component()));
  }

  private Measure share(Facts facts, LastDone last, Due interval) {
    var ran = hoursSince(facts, last);
    var today = facts.survey().occasion().date();
    var share = OptionalDouble.empty();
    var shown = new ArrayList<Measure.Shown>();
    if (interval.months().isPresent()) {
      share =
          OptionalDouble.of(
              ServiceInterval.usedByCalendar(
                  last.date(), today, (int) interval.months().getAsDouble()));
      shown.add(show("months-since", ChronoUnit.MONTHS.between(last.date(), today), "mo"));
      shown.add(show("interval-months", interval.months().getAsDouble(), "mo"));
    }
    if (interval.hours().isPresent() && ran.isPresent()) {
      double byHours = ran.getAsDouble() / interval.hours().getAsDouble();
      share = OptionalDouble.of(Math.max(byHours, share.orElse(0)));
      shown.add(show("hours-since", ran.getAsDouble(), "h"));
      shown.add(show("interval-hours", interval.hours().getAsDouble(), "h"));
    }
    if (share.isEmpty()) {
      throw new Unjudgeable(Reason.of(Reason.Kind.HOURS_UNKNOWN));
    }
    var partly =
        interval.hours().isPresent() && ran.isEmpty()
            ? Optional.of(Reason.of(Reason.Kind.HOURS_UNKNOWN))
            : Optional.<Reason>empty();
    return new Measure(
        SHARE,
        share.getAsDouble(),
        MeasuredUnit.of("1"),
        OptionalDouble.empty(),
        steps,
        facts.makersLimit(),
        shown,
        partly);
  }

  private static Measure.Shown show(String name, double value, String unit) {
    return new Measure.Shown(
        name, Quantity.of(Math.round(value * 10) / 10.0, MeasuredUnit.of(unit)));
  }

  /** Running hours since then; empty where one of the two meter readings is not known. */
  public static OptionalDouble hoursSince(Facts facts, LastDone last) {
    var hour = MeasuredUnit.of("h");
    var meter =
        facts.component() instanceof Engine engine ? engine.hours() : Optional.<Quantity>empty();
    if (meter.isEmpty() || last.at().isEmpty()) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(meter.get().in(hour) - last.at().get().in(hour));
  }

  private static Due makers(MakersLimit limit) {
    return new Due(in(limit.hours(), "h"), in(limit.months(), "mo"));
  }

  private static OptionalDouble in(Optional<Quantity> quantity, String unit) {
    return quantity
        .map(q -> OptionalDouble.of(q.in(MeasuredUnit.of(unit))))
        .orElse(OptionalDouble.empty());
  }
}

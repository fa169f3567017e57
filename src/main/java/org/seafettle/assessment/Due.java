package org.seafettle.assessment;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.stream.Stream;
import org.seafettle.catalogue.Interval;
import org.seafettle.survey.Evidence.LastDone;

/**
 * Something that falls due again: after hours of running or months on the calendar, whichever comes
 * first, or at an age; or something that is to be looked at again.
 *
 * @param result the check on its component
 * @param last when it was last done; empty for what has an age instead
 * @param interval after which it is due; for an age, the months of a whole life
 * @param byCalendar when the months have run out
 * @param byHours when the hours have run out, where they and the meter are known
 * @param byWear when a share that wears comes to its limit, where two surveys tell how fast
 * @param overdue by how much it is overdue on the day of the survey, where it is
 */
public record Due(
    Result result,
    Optional<LastDone> last,
    Interval.Due interval,
    Optional<Between> byCalendar,
    Optional<Running> byHours,
    Optional<Wearing> byWear,
    Optional<Overdue> overdue) {

  /** Whether it has an age and no day on which it was last done. */
  public boolean isAge() {
    return last.isEmpty();
  }

  /** Whether it is only to be looked at again, since it was well or nearly so. */
  public boolean isLook() {
    return result.check().guidance().again().isPresent();
  }

  /** The first day on which it may fall due. */
  public Optional<LocalDate> next() {
    return first(
        byCalendar.map(Between::earliest),
        byHours.flatMap(Running::fast),
        byWear.flatMap(Wearing::fast));
  }

  /** The day on which it falls due if the boat is used as little as she ever was. */
  public Optional<LocalDate> latest() {
    return first(
        byCalendar.map(Between::latest),
        byHours.flatMap(Running::slow),
        byWear.flatMap(Wearing::slow));
  }

  private static Optional<LocalDate> first(
      Optional<LocalDate> calendar, Optional<LocalDate> hours, Optional<LocalDate> wear) {
    return Stream.of(calendar, hours, wear).flatMap(Optional::stream).min(LocalDate::compareTo);
  }

  /**
   * A day that is known to lie between two; for an interval since a known day they are the same. An
   * age in whole years leaves a year open.
   *
   * @param earliest the first day that it may be
   * @param latest the last day that it may be, never before the first
   */
  public record Between(LocalDate earliest, LocalDate latest) {

    public Between {
      if (latest.isBefore(earliest)) {
        throw new IllegalArgumentException(latest + " before " + earliest);
      }
    }
  }

  /**
   * Hours of running.
   *
   * @param left on the day of the survey, below zero where overrun
   * @param meter what the meter will show
   * @param pace how much the engine is used; empty where nothing tells
   * @param fast the day at the most hours of any season known; empty where never
   * @param slow the day at the fewest; empty where never
   */
  public record Running(
      double left,
      double meter,
      Optional<Pace> pace,
      Optional<LocalDate> fast,
      Optional<LocalDate> slow) {}

  /**
   * A share that wears.
   *
   * @param limit from which something has to be done, in per cent
   * @param since when it was measured or renewed before
   * @param fast the day on which the limit may be reached, with all uncertainty
   * @param slow the last day; empty where the wear is not proven
   */
  public record Wearing(
      double limit, LocalDate since, Optional<LocalDate> fast, Optional<LocalDate> slow) {}

  /**
   * What is overrun, above zero each.
   *
   * @param hours of running
   * @param days on the calendar, at least
   */
  public record Overdue(OptionalDouble hours, OptionalLong days) {}
}

package org.seafettle.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.seafettle.assessment.Due;
import org.seafettle.assessment.Measured;
import org.seafettle.assessment.Sighting;
import org.seafettle.quantity.MeasuredUnit;
import org.seafettle.survey.Evidence.LastDone;

/**
 * Something that falls due.
 *
 * @param what it is
 * @param last when it was last done, or how old it is
 * @param interval after which it is due
 * @param next when that is
 * @param overdue by how much it is overdue; empty where it is not
 */
public record DueRow(String what, String last, String interval, String next, String overdue) {

  static List<DueRow> all(Manuscript m) {
    return m.assessment().plan().dues().stream()
        .sorted(Comparator.comparing(d -> d.next().orElse(LocalDate.MAX)))
        .map(d -> of(m, d))
        .toList();
  }

  static DueRow of(Manuscript m, Due due) {
    return new DueRow(
        m.look(due.result()), last(m, due), interval(m, due), next(m, due), overdue(m, due));
  }

  private static String last(Manuscript m, Due due) {
    return due.last()
        .map(last -> lastDone(m, last))
        .or(
            () ->
                age(due)
                    .map(a -> m.words().say("due.old", m.phrases().value(a, MeasuredUnit.YEAR))))
        .orElse("");
  }

  private static Optional<Double> age(Due due) {
    return due.result()
        .seen()
        .flatMap(Sighting.Seen::measured)
        .map(Measured::measure)
        .map(measure -> measure.value());
  }

  private static String lastDone(Manuscript m, LastDone last) {
    return last.at()
        .map(h -> m.words().say("due.last", m.phrases().date(last.date()), m.phrases().quantity(h)))
        .orElse(m.phrases().date(last.date()));
  }

  private static String interval(Manuscript m, Due due) {
    var either = new ArrayList<String>();
    if (due.isAge()) {
      return m.phrases().value(due.interval().months().orElseThrow() / 12, MeasuredUnit.YEAR);
    }
    due.interval().months().ifPresent(n -> either.add(months(m, Math.round(n))));
    if (due.isLook()) {
      return m.words().say("due.look", either.get(0), m.words().say("rank.common-practice"));
    }
    due.interval().hours().ifPresent(n -> either.add(m.phrases().value(n, MeasuredUnit.HOUR)));
    return or(m, either);
  }

  private static String months(Manuscript m, long months) {
    return m.words().count("due.months", (int) months);
  }

  private static String next(Manuscript m, Due due) {
    var either = new ArrayList<String>();
    due.byCalendar().ifPresent(days -> either.add(between(m, days.earliest(), days.latest())));
    due.byHours().ifPresent(hours -> either.add(hours(m, hours)));
    due.byWear().ifPresent(wearing -> either.add(wearing(m, wearing)));
    return or(m, either);
  }

  private static String hours(Manuscript m, Due.Running hours) {
    var at = m.words().say("due.at", m.phrases().value(hours.meter(), MeasuredUnit.HOUR));
    return hours.left() > 0 ? likely(m, at, hours.fast(), hours.slow()) : at;
  }

  private static String wearing(Manuscript m, Due.Wearing wearing) {
    var at = m.words().say("due.at", m.phrases().value(wearing.limit(), MeasuredUnit.PERCENT));
    return likely(m, at, wearing.fast(), wearing.slow());
  }

  private static String likely(
      Manuscript m, String at, Optional<LocalDate> fast, Optional<LocalDate> slow) {
    return fast.map(
            first ->
                m.words()
                    .say(
                        "due.at-pace",
                        at,
                        slow.map(last -> between(m, first, last))
                            .orElseGet(
                                () -> m.words().say("due.not-before", m.phrases().date(first)))))
        .orElse(at);
  }

  private static String between(Manuscript m, LocalDate earliest, LocalDate latest) {
    return earliest.equals(latest)
        ? m.phrases().date(earliest)
        : m.words().say("due.between", m.phrases().date(earliest), m.phrases().date(latest));
  }

  private static String overdue(Manuscript m, Due due) {
    var by = new ArrayList<String>();
    due.overdue()
        .ifPresent(
            over -> {
              over.hours().ifPresent(h -> by.add(m.phrases().value(h, MeasuredUnit.HOUR)));
              over.days().ifPresent(d -> by.add(m.words().count("due.days", (int) d)));
            });
    return by.isEmpty() ? "" : m.words().say("due.overdue", m.phrases().list(by));
  }

  private static String or(Manuscript m, List<String> either) {
    return either.size() < 2
        ? String.join("", either)
        : m.words().say("due.or", either.get(0), either.get(1));
  }
}

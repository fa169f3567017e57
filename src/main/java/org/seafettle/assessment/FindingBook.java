package org.seafettle.assessment;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.seafettle.catalogue.Deadline;
import org.seafettle.survey.Survey;

/**
 * The findings of a boat over all her surveys. A number, once given, stays with its finding and is
 * never given again; new ones come after the last.
 */
final class FindingBook {

  private final List<Entry> entries = new ArrayList<>();

  /** A finding as it was last reported, whether it is still open, and since when. */
  private record Entry(int number, Result last, boolean open, LocalDate since) {

    boolean isOn(Result result) {
      return last.check().id().equals(result.check().id())
          && result.component().isSameAs(last.component());
    }
  }

  private static final Comparator<Sighting.Seen> GRAVEST_THEN_SOONEST =
      Comparator.comparing(Sighting.Seen::found)
          .reversed()
          .thenComparing(seen -> seen.by().orElse(Deadline.AS_CONVENIENT));

  /**
   * Numbers the findings: known ones as before, then new ones, the gravest and soonest due first.
   */
  List<Result> number(List<Result> results) {
    int next = entries.stream().mapToInt(Entry::number).max().orElse(0);
    var fresh =
        results.stream()
            .filter(r -> r.reports() && entry(r).isEmpty())
            .sorted(Comparator.comparing(r -> r.seen().orElseThrow(), GRAVEST_THEN_SOONEST))
            .toList();
    return results.stream().map(r -> r.reports() ? r.numbered(number(r, fresh, next)) : r).toList();
  }

  private int number(Result result, List<Result> fresh, int last) {
    return entry(result).map(Entry::number).orElseGet(() -> last + 1 + fresh.indexOf(result));
  }

  private Optional<Entry> entry(Result result) {
    return entries.stream().filter(e -> e.isOn(result)).findFirst();
  }

  /** What became of what was open, and what is back, by number. */
  List<Followed> follow(Survey survey, List<Result> results) {
    var followed = new ArrayList<Followed>();
    for (var entry : entries) {
      var now = results.stream().filter(entry::isOn).findFirst();
      boolean back = now.filter(FindingBook::open).isPresent();
      if (entry.open() || back) {
        followed.add(
            new Followed(
                entry.number(), entry.last(), entry.since(), now, status(survey, entry, now)));
      }
    }
    return followed;
  }

  private static Followed.Status status(Survey survey, Entry entry, Optional<Result> now) {
    if (survey.components().noneMatch(entry.last().component()::isSameAs)
        || now.filter(r -> r.sighting() instanceof Sighting.NotApplicable).isPresent()) {
      return Followed.Status.GONE;
    }
    if (now.flatMap(Result::seen).isEmpty()) {
      return Followed.Status.NOT_LOOKED_AT;
    }
    var result = now.get();
    if (!open(result)) {
      return Followed.Status.COMPLETED;
    }
    if (!entry.open()) {
      return Followed.Status.BACK;
    }
    if (result.finding().flatMap(f -> f.begun()).isPresent()) {
      return Followed.Status.IN_PROGRESS;
    }
    return result.counts().compareTo(entry.last().counts()) > 0
        ? Followed.Status.WORSE
        : Followed.Status.OUTSTANDING;
  }

  private static boolean open(Result result) {
    return result.reports() && !result.seen().orElseThrow().settled();
  }

  /** Takes in what a survey found, for the next one. */
  void enter(List<Result> numbered, LocalDate day) {
    for (var result : numbered) {
      if (result.seen().isPresent()) {
        var before = entry(result);
        if (result.reports()) {
          var since = before.filter(Entry::open).map(Entry::since).orElse(day);
          put(before, new Entry(result.number().orElseThrow(), result, open(result), since));
        } else {
          before.ifPresent(e -> put(before, new Entry(e.number(), e.last(), false, e.since())));
        }
      }
    }
    entries.sort(Comparator.comparingInt(Entry::number));
  }

  private void put(Optional<Entry> before, Entry entry) {
    before.ifPresent(entries::remove);
    entries.add(entry);
  }
}

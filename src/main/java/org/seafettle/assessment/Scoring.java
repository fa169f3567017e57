package org.seafettle.assessment;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import org.seafettle.catalogue.FindingClass;

/**
 * How findings become an index. The scale is the 0 to 100 condition index of the US Army Corps of
 * Engineers' REMR programme (bands from memory, unverified); the way faults add up is this
 * program's own.
 *
 * <p>The deducts of a subsystem are sorted, largest first; the first counts in full, each next one
 * half as much as the one before: D = d1 + d2/2 + d3/4 + …, at most 100, and the index is 100 − D.
 * So the worst finding always counts in full, a clean check dilutes nothing, and nothing that gets
 * better ever scores lower.
 */
public final class Scoring {

  /** The version that every report prints beside its numbers. */
  public static final String VERSION = "1";

  /** The share of what an expected look could reveal that must have been seen to give a word. */
  public static final double LEAST_COVERAGE = 0.6;

  private Scoring() {}

  /** How much of a check was seen. */
  public enum Sight {
    SEEN,
    PARTLY,
    UNSEEN
  }

  /**
   * One check as the scale sees it.
   *
   * @param sight how much of it was seen
   * @param found the class of what was found; {@code OK} where nothing was seen
   * @param worst the gravest class that the check can reveal
   * @param expected whether a survey for this purpose has to cover it
   */
  public record Entry(Sight sight, FindingClass found, FindingClass worst, boolean expected) {

    /** What it takes away if all that was not seen is well. */
    double atBest() {
      return found.deduct();
    }

    /** What it takes away if all that was not seen is as bad as the check can reveal. */
    double atWorst() {
      boolean unknown = expected && sight != Sight.SEEN;
      return unknown ? Math.max(worst.deduct(), found.deduct()) : found.deduct();
    }
  }

  /** The index of a list of deducts, 0 to 100. Halving is exact, so order never matters. */
  public static double index(Collection<Double> deducts) {
    double sum = 0;
    double weight = 1;
    for (double deduct : deducts.stream().sorted(Comparator.reverseOrder()).toList()) {
      sum += deduct * weight;
      weight /= 2;
    }
    return 100 - Math.min(100, sum);
  }

  /** The grade of one subsystem. */
  public static Grade grade(Collection<Entry> entries) {
    double low = index(entries.stream().map(Entry::atWorst).toList());
    double high = index(entries.stream().map(Entry::atBest).toList());
    double coverage = coverage(entries);
    return new Grade(low, high, coverage, coverage >= LEAST_COVERAGE);
  }

  /**
   * The share of what the expected checks could reveal that was seen, 0 to 1. A check seen in part
   * counts as not seen. Where nothing is expected, nothing is missing.
   */
  static double coverage(Collection<Entry> entries) {
    var expected = entries.stream().filter(Entry::expected).toList();
    double all = expected.stream().mapToDouble(e -> e.worst().deduct()).sum();
    double seen =
        expected.stream()
            .filter(e -> e.sight() == Sight.SEEN)
            .mapToDouble(e -> e.worst().deduct())
            .sum();
    return all == 0 ? 1 : seen / all;
  }

  /** The grade of an engine: its weakest subsystem's, never an average. */
  public static Grade weakest(List<Grade> subsystems) {
    return new Grade(
        subsystems.stream().mapToDouble(Grade::low).min().orElseThrow(),
        subsystems.stream().mapToDouble(Grade::high).min().orElseThrow(),
        subsystems.stream().mapToDouble(Grade::coverage).min().orElseThrow(),
        subsystems.stream().allMatch(Grade::graded));
  }
}

package org.seafettle.difference;

import java.util.Optional;
import org.seafettle.assessment.Result;
import org.seafettle.assessment.Sighting;
import org.seafettle.catalogue.FindingClass;

/**
 * One check on one component, then and now; at least one of the two surveys has it.
 *
 * @param then what came of it then; empty where it was neither recorded nor expected
 * @param now what came of it now; empty where it was neither recorded nor expected
 */
public record Change(Optional<Result> then, Optional<Result> now) {

  public Change {
    if (then.isEmpty() && now.isEmpty()) {
      throw new IllegalArgumentException("a change of nothing");
    }
  }

  /** What happened to a finding, as it counts: what was put right on the spot was put right. */
  public enum Kind {
    /** Open both times, and graver now. */
    WORSE,
    /** Seen and well then, open now. */
    NEW,
    /** Not seen then, open now: it may have been there. */
    FIRST_SEEN,
    /** Open both times, as grave as before. */
    STILL_OPEN,
    /** Open both times, and milder now. */
    BETTER,
    /** Open then, seen and well now. */
    PUT_RIGHT,
    /** Open then, not seen now: nothing says that it is gone. */
    OPEN_NOT_SEEN,
    /** Open then; now there is no such thing on the boat. */
    GONE,
    /** Seen and well then, not seen now. */
    WELL_NOT_SEEN,
    /** Nothing open now, and nothing that was lost from sight. */
    WELL
  }

  public Kind kind() {
    var before = counts(then);
    var today = counts(now);
    if (today.isPresent()) {
      return today.get() == FindingClass.OK ? settled(before) : open(before, today.get());
    }
    if (now.filter(r -> r.sighting() instanceof Sighting.NotApplicable).isPresent()) {
      return isOpen(before) ? Kind.GONE : Kind.WELL;
    }
    return isOpen(before)
        ? Kind.OPEN_NOT_SEEN
        : before.isPresent() ? Kind.WELL_NOT_SEEN : Kind.WELL;
  }

  /** The later of the two. */
  public Result result() {
    return now.or(() -> then).orElseThrow();
  }

  private static Kind settled(Optional<FindingClass> before) {
    return isOpen(before) ? Kind.PUT_RIGHT : Kind.WELL;
  }

  private static Kind open(Optional<FindingClass> before, FindingClass today) {
    if (before.isEmpty()) {
      return Kind.FIRST_SEEN;
    }
    if (!isOpen(before)) {
      return Kind.NEW;
    }
    int graver = today.compareTo(before.get());
    return graver > 0 ? Kind.WORSE : graver < 0 ? Kind.BETTER : Kind.STILL_OPEN;
  }

  private static boolean isOpen(Optional<FindingClass> seen) {
    return seen.filter(c -> c != FindingClass.OK).isPresent();
  }

  /** The class that counted; empty where it was not seen. */
  private static Optional<FindingClass> counts(Optional<Result> result) {
    return result.flatMap(Result::seen).map(Sighting.Seen::counts);
  }
}

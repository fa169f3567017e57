package org.seafettle.assessment;

import java.util.Optional;
import java.util.OptionalInt;
import org.seafettle.catalogue.Check;
import org.seafettle.catalogue.FindingClass;
import org.seafettle.catalogue.Outcome;
import org.seafettle.survey.Component;
import org.seafettle.survey.Finding;

/**
 * One check on one component.
 *
 * @param number of the finding in the report; none where there is nothing to report
 * @param check the check
 * @param component what it is on
 * @param sighting what became of it
 * @param expected whether a survey for this purpose has to cover it
 * @param worst the worst that it can reveal
 * @param finding what the survey recorded, where it did
 */
public record Result(
    OptionalInt number,
    Check check,
    Component component,
    Sighting sighting,
    boolean expected,
    Outcome worst,
    Optional<Finding> finding) {

  public Optional<Sighting.Seen> seen() {
    return sighting instanceof Sighting.Seen seen ? Optional.of(seen) : Optional.empty();
  }

  /** Whether it was seen, in full or in part, and something was found. */
  public boolean reports() {
    return seen().filter(s -> s.found() != FindingClass.OK).isPresent();
  }

  /** Whether it takes part in the grade. */
  public boolean graded() {
    return sighting.sight().isPresent();
  }

  /** The class that counts, {@code OK} where nothing was seen. */
  public FindingClass counts() {
    return seen().map(Sighting.Seen::counts).orElse(FindingClass.OK);
  }

  /** Whether something an expected look would show is not known. */
  public boolean leavesOpen() {
    return expected && sighting.sight().filter(sight -> sight != Scoring.Sight.SEEN).isPresent();
  }

  Scoring.Entry entry() {
    var sight =
        sighting
            .sight()
            .orElseThrow(
                () -> new IllegalStateException(check.id() + " takes no part in the grade"));
    return new Scoring.Entry(sight, counts(), worst.findingClass(), expected);
  }

  public boolean tooCloseToCall() {
    return seen().flatMap(Sighting.Seen::measured).filter(Measured::tooCloseToCall).isPresent();
  }

  /** As it would be if a reading too close to its limit lay on the other side. */
  Result flipped() {
    var seen = seen().orElseThrow();
    var other = seen.measured().flatMap(Measured::comparison).orElseThrow().otherSide();
    return with(seen.withOutcome(other));
  }

  /** As it would be if the finding were put right. */
  Result settled() {
    return with(seen().orElseThrow().putRight());
  }

  /** As it would be if what is not known about it were known to be well. */
  Result unexpected() {
    return new Result(number, check, component, sighting, false, worst, finding);
  }

  Result with(Sighting other) {
    return new Result(number, check, component, other, expected, worst, finding);
  }

  Result numbered(int n) {
    return new Result(OptionalInt.of(n), check, component, sighting, expected, worst, finding);
  }
}

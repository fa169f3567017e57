package org.seafettle.survey;

import java.util.List;
import java.util.Optional;

/**
 * One thing that was looked at, or that could not be.
 *
 * @param check the check of the catalogue
 * @param on the component it is on
 * @param state whether it was seen
 * @param evidence what was seen
 * @param photos the photographs that show it
 * @param note what the surveyor wants to add
 * @param repair what was done about it
 */
public record Finding(
    String check,
    String on,
    State state,
    Evidence evidence,
    List<String> photos,
    Optional<String> note,
    Optional<Repair> repair) {

  public Finding {
    photos = List.copyOf(photos);
  }

  /**
   * What was done about a finding.
   *
   * @param finished whether that settles it
   * @param what was done
   */
  public record Repair(boolean finished, String what) {}

  /** What was done about it on the spot, which settles it. */
  public Optional<String> done() {
    return repair.filter(Repair::finished).map(Repair::what);
  }

  /** What has been begun about it and is not finished, which settles nothing yet. */
  public Optional<String> begun() {
    return repair.filter(r -> !r.finished()).map(Repair::what);
  }

  /** How much of it was seen. Nothing unseen is ever taken for good. */
  public sealed interface State {

    /** All of it was seen. */
    record Inspected() implements State {}

    /** Only a part could be seen: what was found stands, the rest is unknown. */
    record Partly(String reason) implements State {}

    /** It was not seen. */
    record NotInspected(String reason) implements State {}

    /** There is no such thing on this boat. */
    record NotApplicable(String reason) implements State {}
  }
}

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
 * @param done what was done about it on the spot, which settles it
 */
public record Finding(
    String check,
    String on,
    State state,
    Evidence evidence,
    List<String> photos,
    Optional<String> note,
    Optional<String> done) {

  public Finding {
    photos = List.copyOf(photos);
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

package org.seafettle.survey;

import java.util.List;
import java.util.Optional;
import org.seafettle.quantity.Quantity;

/**
 * The conditions of a survey, as far as they were recorded.
 *
 * @param afloat afloat, or ashore
 * @param enginesCold whether the engines were cold on arrival
 * @param air temperature of the air
 * @param lowestExpected the lowest temperature expected where the boat is laid up
 * @param instruments what was measured with
 */
public record Conditions(
    Optional<Boolean> afloat,
    Optional<Boolean> enginesCold,
    Optional<Quantity> air,
    Optional<Quantity> lowestExpected,
    List<String> instruments) {

  public Conditions {
    instruments = List.copyOf(instruments);
  }
}

package org.seafettle.catalogue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.seafettle.quantity.MeasuredUnit;
import org.seafettle.quantity.Quantity;
import org.seafettle.survey.MakersLimit;

/**
 * The number that is held against the limits.
 *
 * @param name what it is called: the reading's or the derivation's name
 * @param value in {@code unit}
 * @param unit the unit of the limits
 * @param uncertainty expanded (k = 2), in {@code unit}; absent where it is not known
 * @param steps the limits
 * @param maker the engine maker's limit, where the steps come from there
 * @param shown what a reader wants to see beside the number, such as hours since the last change
 * @param partly why the number tells only a part, where it does
 */
public record Measure(
    String name,
    double value,
    MeasuredUnit unit,
    OptionalDouble uncertainty,
    Steps steps,
    Optional<MakersLimit> maker,
    List<Shown> shown,
    Optional<Reason> partly) {

  public Measure {
    shown = List.copyOf(shown);
  }

  /**
   * A quantity beside the number.
   *
   * @param name by which the report's words call it
   * @param quantity as recorded, or as computed
   */
  public record Shown(String name, Quantity quantity) {}
}

package org.seafettle.survey;

import java.util.Optional;
import org.seafettle.quantity.Quantity;

/**
 * A limit from the engine maker's own manual, which beats the catalogue's.
 *
 * @param check the check it is for
 * @param lowest the lowest reading allowed
 * @param highest the highest reading allowed
 * @param hours the interval in hours of running
 * @param months the interval on the calendar, whichever comes first
 * @param source manual, table or page
 */
public record MakersLimit(
    String check,
    Optional<Quantity> lowest,
    Optional<Quantity> highest,
    Optional<Quantity> hours,
    Optional<Quantity> months,
    String source) {

  public MakersLimit {
    if (lowest.isEmpty() && highest.isEmpty() && hours.isEmpty() && months.isEmpty()) {
      throw new IllegalArgumentException("a maker's limit needs a limit");
    }
    if (source.isBlank()) {
      throw new IllegalArgumentException("a maker's limit needs its source");
    }
  }
}

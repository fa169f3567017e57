package org.seafettle.catalogue;

import java.util.Optional;
import java.util.OptionalDouble;
import org.seafettle.quantity.MeasuredUnit;

/**
 * A number that a check wants.
 *
 * @param name the word by which a finding gives it
 * @param unit the unit in which limits are stated
 * @param least the lowest plausible value; below it is bad input
 * @param most the highest plausible value; above it is bad input
 * @param required whether the check cannot be judged without it
 * @param many whether a list is wanted, one value a cell or cylinder
 * @param usualUncertainty the expanded uncertainty (k = 2) of the usual instrument, in the unit of
 *     the reading, for readings that state none
 * @param condition under which it has to be taken
 */
public record ReadingSpec(
    String name,
    MeasuredUnit unit,
    double least,
    double most,
    boolean required,
    boolean many,
    OptionalDouble usualUncertainty,
    Optional<Condition> condition) {

  public ReadingSpec {
    if (!(least < most)) {
      throw new IllegalArgumentException(name + ": no value is plausible");
    }
  }

  ReadingSpec with(Optional<Condition> other) {
    return new ReadingSpec(name, unit, least, most, required, many, usualUncertainty, other);
  }
}

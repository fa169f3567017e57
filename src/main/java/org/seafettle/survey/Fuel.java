package org.seafettle.survey;

import java.util.Optional;
import org.seafettle.quantity.Quantity;

/**
 * The fuel in the tank.
 *
 * @param kind what it is
 * @param tank how much the tank holds
 */
public record Fuel(Kind kind, Optional<Quantity> tank) {

  /** Gasoline by its greatest share of ethanol, or diesel. */
  public enum Kind implements Word {
    E0,
    E5,
    E10,
    E15,
    DIESEL;

    @Override
    public String word() {
      return Word.of(this);
    }

    public boolean isGasoline() {
      return this != DIESEL;
    }
  }
}

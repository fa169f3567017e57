package org.seafettle.catalogue;

import org.seafettle.survey.Word;

/** The computations that the catalogue's data may name. */
public enum Derivation implements Word {
  STATE_OF_CHARGE;

  /**
   * The number, from the readings and from what is known of the component.
   *
   * @throws org.seafettle.problem.Refused outside the formula's validity
   */
  double derive(Inputs inputs) {
    return 0;
  }

  @Override
  public String word() {
    return Word.of(this);
  }
}

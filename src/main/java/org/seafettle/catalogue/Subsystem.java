package org.seafettle.catalogue;

import org.seafettle.survey.Word;

/** The parts of a boat that are graded, each on its own. */
public enum Subsystem implements Word {
  OIL,
  COOLING,
  FUEL,
  ELECTRICAL,
  BILGE;

  @Override
  public String word() {
    return Word.of(this);
  }
}

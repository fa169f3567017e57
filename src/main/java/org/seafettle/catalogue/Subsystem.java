package org.seafettle.catalogue;

import org.seafettle.survey.Word;

/** The parts of a boat that are graded, each on its own. */
public enum Subsystem implements Word {
  OIL,
  COOLING,
  FUEL,
  ELECTRICAL,
  BILGE,
  /** The block itself, what turns with it, and what steers and holds it. */
  POWERHEAD;

  /**
   * Whether a survey may leave it out altogether. Such a subsystem counts for an engine as soon as
   * one look into it was taken there; until then nothing is told of it.
   */
  public boolean optional() {
    return this == POWERHEAD;
  }

  @Override
  public String word() {
    return Word.of(this);
  }
}

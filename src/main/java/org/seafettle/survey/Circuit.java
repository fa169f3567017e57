package org.seafettle.survey;

/** How an engine is cooled: by the water outside, or by coolant that this water cools. */
public enum Circuit implements Word {
  RAW_WATER,
  CLOSED_CIRCUIT;

  @Override
  public String word() {
    return Word.of(this);
  }
}

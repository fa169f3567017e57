package org.seafettle.survey;

/** Whom a survey is for, which decides what it has to cover. */
public enum Purpose implements Word {
  PRE_PURCHASE,
  SEASON_END,
  YEARLY_RECORD;

  @Override
  public String word() {
    return Word.of(this);
  }
}

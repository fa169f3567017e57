package org.seafettle.survey;

/** The water a boat lies in. */
public enum Water implements Word {
  SALT,
  BRACKISH,
  FRESH;

  @Override
  public String word() {
    return Word.of(this);
  }
}

package org.seafettle.catalogue;

import org.seafettle.survey.Word;

/** By when something has to be done, soonest first. */
public enum Deadline implements Word {
  AT_ONCE,
  BEFORE_NEXT_START,
  BEFORE_SWITCHING_ON,
  BEFORE_PLUGGING_IN,
  BEFORE_CHARGING,
  BEFORE_FUELLING,
  BEFORE_LAUNCHING,
  BEFORE_LEAVING_HER_AFLOAT,
  BEFORE_FROST,
  BEFORE_NEXT_USE,
  /** In a survey before a purchase; in any other as convenient. */
  BEFORE_PURCHASE,
  WITHIN_TEN_HOURS,
  BEFORE_NEXT_SEASON,
  NEXT_SERVICE,
  AS_CONVENIENT;

  @Override
  public String word() {
    return Word.of(this);
  }
}

package org.seafettle.report;

import org.seafettle.survey.Word;

/** The sheet that a report is set on. */
public enum Paper implements Word {
  A4,
  LETTER;

  /** As it is asked for, and as CSS names it. */
  @Override
  public String word() {
    return Word.of(this);
  }
}

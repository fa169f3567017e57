package org.seafettle.formula;

/** The four words of ILAC-G8:09/2019. */
public enum Verdict {
  PASS,
  CONDITIONAL_PASS,
  CONDITIONAL_FAIL,
  FAIL;

  public boolean isConditional() {
    return this == CONDITIONAL_PASS || this == CONDITIONAL_FAIL;
  }
}

package org.seafettle.formula.conformity;

/** The four words of ILAC-G8:09/2019, 4.2.3 (read in a public copy). */
public enum Verdict {
  /** Right by more than the uncertainty. */
  PASS,
  /** Right, but within the uncertainty of the limit. */
  CONDITIONAL_PASS,
  /** Wrong, but within the uncertainty of the limit. */
  CONDITIONAL_FAIL,
  /** Wrong by more than the uncertainty. */
  FAIL;

  /** Too close to call: measure again. */
  public boolean isConditional() {
    return this == CONDITIONAL_PASS || this == CONDITIONAL_FAIL;
  }
}

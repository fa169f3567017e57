package org.seafettle.survey;

/**
 * What a battery is made of. Gel and AGM are lead-acid too; LFP (lithium iron phosphate) is not.
 */
public enum Chemistry implements Word {
  FLOODED,
  AGM,
  GEL,
  LFP;

  @Override
  public String word() {
    return Word.of(this);
  }
}

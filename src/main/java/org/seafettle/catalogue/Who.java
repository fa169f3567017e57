package org.seafettle.catalogue;

import org.seafettle.survey.Word;

/** Who may do a piece of work. */
public enum Who implements Word {
  OWNER,
  MECHANIC,
  MARINE_ELECTRICIAN,
  YARD,
  SURVEYOR,
  FIRE_SERVICE;

  @Override
  public String word() {
    return Word.of(this);
  }
}

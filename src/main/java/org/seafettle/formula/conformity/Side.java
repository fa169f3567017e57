package org.seafettle.formula.conformity;

/** On which side of a limit a reading is right. */
public enum Side {
  /** The reading must not exceed the limit. */
  AT_MOST,
  /** The reading must not fall below the limit. */
  AT_LEAST
}

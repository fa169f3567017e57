package org.seafettle.report;

/** The sheet that a report is set on. */
public enum Paper {
  A4,
  LETTER
}

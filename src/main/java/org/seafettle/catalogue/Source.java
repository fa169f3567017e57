package org.seafettle.catalogue;

import org.seafettle.survey.Word;

/**
 * Where a limit comes from.
 *
 * @param id the word by which the catalogue's data names it
 * @param title document, edition and issuer as they are printed; empty for the ranks that have none
 * @param rank what kind of authority it is
 */
public record Source(String id, String title, Rank rank) {

  /** The kinds of authority, highest first. A lower one never replaces a higher. */
  public enum Rank implements Word {
    /** The manual of the engine that was surveyed, as the survey gives it. */
    MAKER,
    /** Law, whether or not it binds this boat. */
    LAW,
    /** A standard, read in the standard itself. */
    STANDARD,
    /** A manual or publication of a government or one of its services. */
    GOVERNMENT,
    /** The printed manual of another maker or trade. */
    PRINTED,
    /** A page or article that quotes another. */
    QUOTED,
    /** What is usual in the trade; no document was read. */
    COMMON_PRACTICE,
    /** Remembered and not verified against the document. */
    FROM_MEMORY,
    /** A choice of this program; editable. */
    PROGRAM_DEFAULT;

    @Override
    public String word() {
      return Word.of(this);
    }

    /** Whether a reader can look it up. */
    public boolean published() {
      return compareTo(QUOTED) <= 0;
    }
  }
}

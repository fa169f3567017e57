package org.seafettle.catalogue;

/**
 * A place in a source.
 *
 * @param source the source
 * @param at clause, page or table; empty for the whole
 */
public record Citation(Source source, String at) {

  /** As it is printed: title, then place. */
  public String text() {
    return at.isEmpty() ? source.title() : source.title() + ", " + at;
  }
}

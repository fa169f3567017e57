package org.seafettle.report;

/**
 * A line of a list with its label.
 *
 * @param label in a word or two
 * @param stress what must not be overlooked, told first; empty for most lines
 * @param text the line
 */
public record Row(String label, String stress, String text) {

  static Row of(String label, String text) {
    return new Row(label, "", text);
  }
}

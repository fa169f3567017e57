package org.seafettle.cli;

import java.util.List;

/** Text as Markdown wants it. */
final class Markdown {

  private Markdown() {}

  /** Plain text, so that nothing in it is taken for a sign of Markdown. */
  static String text(String text) {
    return text.replaceAll("([\\\\`*_<>\\[\\]|])", "\\\\$1");
  }

  /** A word as it stands in a file. */
  static String code(String word) {
    return "`" + word + "`";
  }

  /** A link to an entry of the same page, whose heading is its word. */
  static String link(String word) {
    return "[" + word + "](#" + word + ")";
  }

  static String strong(String text) {
    return "**" + text(text) + "**";
  }

  /** One row of a table, of cells that are Markdown already. */
  static String row(List<String> cells) {
    return "| " + String.join(" | ", cells) + " |";
  }

  /** The head of a table. */
  static List<String> head(String... titles) {
    return List.of(row(List.of(titles)), "|" + " --- |".repeat(titles.length));
  }
}

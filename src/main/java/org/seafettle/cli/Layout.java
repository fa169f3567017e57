package org.seafettle.cli;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.text.WordUtils;

/** Columns and paragraphs for a terminal. */
final class Layout {

  /** Comfortable to read, and fits the usual terminal. */
  private static final int WIDTH = 88;

  private Layout() {}

  static String pad(String text, int width) {
    return text + " ".repeat(Math.max(0, width - text.length()));
  }

  static String line(String... columns) {
    return String.join("  ", columns).stripTrailing();
  }

  /** A paragraph with a lead on its first line and the other lines under its text. */
  static List<String> paragraph(String lead, String text) {
    var wrapped = WordUtils.wrap(text, WIDTH - lead.length(), "\n", false).split("\n");
    var lines = new ArrayList<String>();
    for (int i = 0; i < wrapped.length; i++) {
      lines.add((i == 0 ? lead : " ".repeat(lead.length())) + wrapped[i]);
    }
    return lines;
  }
}

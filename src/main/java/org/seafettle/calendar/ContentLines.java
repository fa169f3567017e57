package org.seafettle.calendar;

import java.nio.charset.StandardCharsets;

/** The lines of an iCalendar file, folded and ended as RFC 5545, 3.1, wants them. */
final class ContentLines {

  /** Octets of a line without its end: RFC 5545, 3.1. */
  private static final int LONGEST = 75;

  private final StringBuilder lines = new StringBuilder();

  /** A line whose value is no free text. */
  ContentLines put(String name, String value) {
    fold(name + ":" + value);
    return this;
  }

  /** A line of free text: RFC 5545, 3.3.11. */
  ContentLines text(String name, String text) {
    return put(
        name,
        text.replace("\\", "\\\\")
            .replace(";", "\\;")
            .replace(",", "\\,")
            .replaceAll("\\R", "\\\\n"));
  }

  byte[] bytes() {
    return lines.toString().getBytes(StandardCharsets.UTF_8);
  }

  /** Breaks between characters only, never between the octets of one. */
  private void fold(String line) {
    int octets = 0;
    for (int at = 0; at < line.length(); ) {
      var character = Character.toString(line.codePointAt(at));
      int more = character.getBytes(StandardCharsets.UTF_8).length;
      if (octets + more > LONGEST) {
        lines.append("\r\n ");
        octets = 1;
      }
      lines.append(character);
      octets += more;
      at += character.length();
    }
    lines.append("\r\n");
  }
}

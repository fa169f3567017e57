package org.seafettle.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.text.Normalizer;
import java.util.Locale;
import java.util.function.IntPredicate;

/** Looks for characters that cannot be printed. */
final class TextChecks {

  private final Faults faults;
  private final IntPredicate printable;

  /**
   * @param printable whether the fonts at hand have a glyph for a code point
   */
  TextChecks(Faults faults, IntPredicate printable) {
    this.faults = faults;
    this.printable = printable;
  }

  /** Looks through every text of a file. */
  void look(String path, JsonNode node) {
    if (node.isTextual()) {
      look(path, Normalizer.normalize(node.textValue(), Normalizer.Form.NFC));
    }
    if (node.isArray()) {
      for (int i = 0; i < node.size(); i++) {
        look(FieldPath.item(path, i), node.get(i));
      }
    }
    node.properties().forEach(e -> look(FieldPath.child(path, e.getKey()), e.getValue()));
  }

  private void look(String path, String text) {
    text.codePoints()
        .filter(c -> !isSpace(c) && !(allowed(c) && printable.test(c)))
        .findFirst()
        .ifPresent(c -> blame(path, c));
  }

  private void blame(String path, int c) {
    if (c >= 0xD800 && c <= 0xDFFF) {
      faults.add(
          path,
          "The text has half of a character in it (" + code(c) + ").",
          "Write the whole character, or remove it.");
      return;
    }
    if (!allowed(c)) {
      faults.add(
          path,
          "The text has the control character " + name(c) + " in it, which no document may have.",
          "Remove it.");
      return;
    }
    faults.add(
        path,
        "The report's typeface has no character \""
            + Character.toString(c)
            + "\" ("
            + name(c)
            + ").",
        "Write it in other characters.");
  }

  private static boolean isSpace(int c) {
    return c == ' ' || c == '\t' || c == '\n' || c == '\r';
  }

  /**
   * Characters of XML 1.0 (fifth edition, production 2); not the controls from U+007F to U+009F.
   */
  private static boolean allowed(int c) {
    boolean xml =
        c == '\t'
            || c == '\n'
            || c == '\r'
            || (c >= 0x20 && c <= 0xD7FF)
            || (c >= 0xE000 && c <= 0xFFFD)
            || (c >= 0x10000 && c <= 0x10FFFF);
    return xml && !(c >= 0x7F && c <= 0x9F);
  }

  private static String code(int c) {
    return String.format(Locale.ROOT, "U+%04X", c);
  }

  private static String name(int c) {
    var name = Character.getName(c);
    return name == null ? code(c) : code(c) + " " + name;
  }
}

package org.seafettle.json;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.StandardCharsets;
import org.seafettle.problem.Place;
import org.seafettle.problem.Problem;
import org.seafettle.problem.Refused;

/** Turns the bytes of a file into text. JSON is UTF-8 without a mark in front (RFC 8259, 8.1). */
final class JsonText {

  /** More than any survey written by people has; a limit against files that fill the memory. */
  static final int MOST_BYTES = 10_000_000;

  private static final String SAVE_AS = "Save it as UTF-8 without a byte order mark.";

  private JsonText() {}

  /**
   * @throws Refused where it is no text in UTF-8
   */
  static String decode(String file, byte[] bytes) {
    if (bytes.length > MOST_BYTES) {
      throw refused(
          file, "The file is longer than 10 MB.", "Keep photographs in files of their own.");
    }
    if (starts(bytes, 0xEF, 0xBB, 0xBF)) {
      throw refused(file, "The file begins with a byte order mark.", SAVE_AS);
    }
    if (starts(bytes, 0xFE, 0xFF) || starts(bytes, 0xFF, 0xFE) || hasZero(bytes)) {
      throw refused(file, "The file is written in UTF-16 or UTF-32.", SAVE_AS);
    }
    return strict(file, bytes);
  }

  private static String strict(String file, byte[] bytes) {
    var in = ByteBuffer.wrap(bytes);
    var out = CharBuffer.allocate(bytes.length);
    var result = StandardCharsets.UTF_8.newDecoder().decode(in, out, true);
    if (result.isError()) {
      int line = 1 + (int) out.flip().chars().filter(c -> c == '\n').count();
      throw new Refused(
          new Problem(
              Place.line(file, "", line), "The file has bytes that are not UTF-8.", SAVE_AS));
    }
    return out.flip().toString();
  }

  private static boolean starts(byte[] bytes, int... mark) {
    if (bytes.length < mark.length) {
      return false;
    }
    for (int i = 0; i < mark.length; i++) {
      if ((bytes[i] & 0xFF) != mark[i]) {
        return false;
      }
    }
    return true;
  }

  /** A zero among the first four bytes: no character of a JSON file in UTF-8 begins so. */
  private static boolean hasZero(byte[] bytes) {
    for (int i = 0; i < Math.min(4, bytes.length); i++) {
      if (bytes[i] == 0) {
        return true;
      }
    }
    return false;
  }

  private static Refused refused(String file, String fault, String remedy) {
    return new Refused(new Problem(Place.file(file), fault, remedy));
  }
}

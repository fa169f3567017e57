package org.seafettle.json;

import java.util.regex.Pattern;

/** Writes the path of a field as people read it: {@code findings[3].readings.voltage}. */
final class FieldPath {

  private static final Pattern PLAIN = Pattern.compile("[A-Za-z0-9_-]+");

  private static final Pattern LAST = Pattern.compile("(\\[(?:\\d+|\"[^\"]*\")]|\\.?[\\w-]+)$");

  private FieldPath() {}

  static String child(String path, String name) {
    if (!PLAIN.matcher(name).matches()) {
      return path + "[\"" + name.replace("\"", "'") + "\"]";
    }
    return path.isEmpty() ? name : path + "." + name;
  }

  static String item(String path, int index) {
    return path + "[" + index + "]";
  }

  /** The path of what holds the field; empty for the whole file. */
  static String parent(String path) {
    var last = LAST.matcher(path);
    return last.find() ? path.substring(0, last.start()) : "";
  }
}

package org.seafettle.problem;

import java.util.OptionalInt;

/**
 * Where in an input a fault lies.
 *
 * @param file the file's name as the user gave it, or empty where there is no file
 * @param field the path of the field, such as {@code findings[3].readings.voltage}, or empty for
 *     the whole file
 * @param line the line in the file, counted from 1, where it is known
 */
public record Place(String file, String field, OptionalInt line) {

  /** A fault that belongs to no file, such as a formula asked outside its validity. */
  public static final Place NOWHERE = new Place("", "", OptionalInt.empty());

  public static Place file(String file) {
    return new Place(file, "", OptionalInt.empty());
  }

  public static Place field(String file, String field) {
    return new Place(file, field, OptionalInt.empty());
  }

  public static Place line(String file, String field, int line) {
    return new Place(file, field, OptionalInt.of(line));
  }

  /** As a person reads it: {@code survey.json: findings[3].readings.voltage, line 41}. */
  @Override
  public String toString() {
    var text = new StringBuilder(file);
    if (!field.isEmpty()) {
      text.append(text.isEmpty() ? "" : ": ").append(field);
    }
    line.ifPresent(n -> text.append(text.isEmpty() ? "line " : ", line ").append(n));
    return text.toString();
  }
}

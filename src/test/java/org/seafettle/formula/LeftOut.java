package org.seafettle.formula;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Why some check values are none of the program's business: {@code left-out.csv} names a row by its
 * id or a whole family.
 */
final class LeftOut {

  private final Map<String, String> reasons = new LinkedHashMap<>();

  private LeftOut() {}

  static LeftOut read() {
    var leftOut = new LeftOut();
    try (var in = LeftOut.class.getResourceAsStream("left-out.csv")) {
      new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().skip(1).forEach(leftOut::add);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return leftOut;
  }

  private void add(String line) {
    var parts = line.split(",", 2);
    if (reasons.put(parts[0], parts[1].replaceAll("^\"|\"$", "")) != null) {
      throw new AssertionError("two reasons for " + parts[0]);
    }
  }

  /** The reasons that hold for a row. */
  List<String> reasons(String id) {
    return Stream.of(id, Families.family(id))
        .filter(reasons::containsKey)
        .map(reasons::get)
        .toList();
  }

  /** The ids and families that are named. */
  Set<String> named() {
    return reasons.keySet();
  }
}

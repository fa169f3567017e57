package org.seafettle.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.seafettle.problem.Problem;

/**
 * A JSON file that could be read as such.
 *
 * @param file its name
 * @param root its content
 * @param lines the line of each field by its path, counted from 1
 * @param faults what is wrong with it although it could be read, such as a key written twice
 */
record JsonDocument(String file, JsonNode root, Map<String, Integer> lines, List<Problem> faults) {

  JsonDocument {
    lines = Collections.unmodifiableMap(new LinkedHashMap<>(lines));
    faults = List.copyOf(faults);
  }

  /** The line of a field; for one that is missing, the line of what ought to hold it. */
  OptionalInt line(String path) {
    for (var at = path; ; at = FieldPath.parent(at)) {
      if (lines.containsKey(at)) {
        return OptionalInt.of(lines.get(at));
      }
      if (at.isEmpty()) {
        return OptionalInt.empty();
      }
    }
  }
}

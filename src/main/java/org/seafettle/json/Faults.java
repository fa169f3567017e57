package org.seafettle.json;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.seafettle.problem.Place;
import org.seafettle.problem.Problem;

/** Collects the faults of one file; each place is blamed once. */
final class Faults {

  private final JsonDocument document;
  private final Set<String> blamed = new HashSet<>();
  private final List<Problem> problems = new ArrayList<>();

  Faults(JsonDocument document) {
    this.document = document;
    document.faults().forEach(p -> blamed.add(p.place().field()));
    problems.addAll(document.faults());
  }

  /** Blames a field, unless it has been blamed already. */
  void add(String path, String fault, String remedy) {
    if (blamed.add(path)) {
      problems.add(new Problem(place(path), fault, remedy));
    }
  }

  /** Faults of another file. */
  void addAll(List<Problem> others) {
    problems.addAll(others);
  }

  boolean at(String path) {
    return blamed.contains(path);
  }

  Place place(String path) {
    return new Place(document.file(), path, document.line(path));
  }

  /** In the order of the file; those of other files last. */
  List<Problem> inOrder() {
    return problems.stream()
        .sorted(
            Comparator.comparing((Problem p) -> !p.place().file().equals(document.file()))
                .thenComparingInt(
                    p -> p.place().file().equals(document.file()) ? p.place().line().orElse(0) : 0))
        .toList();
  }
}

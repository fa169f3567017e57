package org.seafettle.json;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.seafettle.catalogue.Check;
import org.seafettle.survey.Finding;

/** Reads how much of something was seen. */
final class FindingState {

  private static final List<String> EVIDENCE = List.of("is", "readings", "last");

  private FindingState() {}

  /**
   * The state that a finding says; without a word it was inspected. What the survey itself knows,
   * such as the year of a battery, asks for no reading.
   */
  static Finding.State of(Field item, Optional<Check> check) {
    var stated =
        Stream.of("partly", "not-inspected", "not-applicable")
            .filter(name -> item.child(name).present())
            .toList();
    if (stated.size() > 1) {
      item.child(stated.get(1))
          .blame(
              "\"" + stated.get(0) + "\" and \"" + stated.get(1) + "\" cannot both be.",
              "Keep the one that is true.");
    }
    if (stated.isEmpty()) {
      if (check.filter(c -> c.criterion().knowsWithoutReading()).isEmpty()) {
        saysSomething(item);
      }
      return new Finding.State.Inspected();
    }
    var reason = item.child(stated.get(0)).text().orElse("?");
    return switch (stated.get(0)) {
      case "partly" -> partly(item, reason);
      case "not-inspected" -> {
        saysNothingSeen(item, "not-inspected");
        yield new Finding.State.NotInspected(reason);
      }
      default -> {
        saysNothingSeen(item, "not-applicable");
        yield new Finding.State.NotApplicable(reason);
      }
    };
  }

  private static Finding.State partly(Field item, String reason) {
    saysSomething(item);
    return new Finding.State.Partly(reason);
  }

  private static void saysSomething(Field item) {
    if (item.node().isObject() && EVIDENCE.stream().noneMatch(e -> item.child(e).present())) {
      item.blame(
          "The finding does not say what was found.",
          "Add \"is\", \"readings\" or \"last\", or say why it was \"not-inspected\".");
    }
  }

  private static void saysNothingSeen(Field item, String state) {
    Stream.concat(EVIDENCE.stream(), Stream.of("conditions", "done", "begun"))
        .filter(e -> item.child(e).present())
        .findFirst()
        .ifPresent(
            e ->
                item.child(state)
                    .blame(
                        "\"" + state + "\" and \"" + e + "\" cannot both be.",
                        "Remove \"" + e + "\", or write \"partly\" where a part was seen."));
  }
}

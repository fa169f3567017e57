package org.seafettle.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.seafettle.assessment.Result;
import org.seafettle.assessment.Sighting;
import org.seafettle.catalogue.FindingClass;
import org.seafettle.catalogue.Measure;

/**
 * A stretch of the number line that is judged alike; what was found has its own, also where its
 * neighbour is of the same class.
 *
 * @param from its lower limit; none where it has no end
 * @param to its upper limit
 * @param judged how a number on it is judged
 * @param found whether what was found lies on it
 */
record Stretch(Optional<Double> from, Optional<Double> to, FindingClass judged, boolean found) {

  /** The stretches of a measure, lowest first. */
  static List<Stretch> of(Manuscript m, Result result, Measure measure) {
    var found = new ArrayList<Stretch>();
    var edges = measure.steps().edges();
    Optional<Double> from = Optional.empty();
    for (int i = 0; i <= edges.size(); i++) {
      boolean ends =
          i == edges.size()
              || judged(m, result, measure, i) != judged(m, result, measure, i + 1)
              || isFound(result, measure, i) != isFound(result, measure, i + 1);
      if (ends) {
        var to = i == edges.size() ? Optional.<Double>empty() : Optional.of(edges.get(i));
        found.add(
            new Stretch(from, to, judged(m, result, measure, i), isFound(result, measure, i)));
        from = to;
      }
    }
    return found;
  }

  private static boolean isFound(Result result, Measure measure, int step) {
    var name = measure.steps().names().get(step);
    return result
        .seen()
        .map(Sighting.Seen::outcome)
        .filter(o -> o.findingClass() != FindingClass.OK && o.name().equals(name))
        .isPresent();
  }

  private static FindingClass judged(Manuscript m, Result result, Measure measure, int step) {
    return result
        .check()
        .outcome(measure.steps().names().get(step), m.survey(), result.component())
        .orElseThrow()
        .findingClass();
  }

  /** The limits between them. */
  static List<Double> limits(List<Stretch> stretches) {
    return stretches.stream().flatMap(s -> s.to().stream()).toList();
  }
}

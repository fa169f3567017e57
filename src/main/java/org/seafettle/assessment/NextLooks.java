package org.seafettle.assessment;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.seafettle.catalogue.StopOrder;
import org.seafettle.survey.Survey;

/**
 * Ranks the unseen checks by how much seeing each would raise the index at worst; among equals by
 * what they could hide, people before the engine.
 */
final class NextLooks {

  private NextLooks() {}

  static List<NextLook> of(Survey survey, List<Result> results) {
    var grading = new Grading(survey, results);
    var looks = new ArrayList<NextLook>();
    for (var result : results) {
      if (result.leavesOpen()) {
        looks.add(new NextLook(result, result.check().subsystem(), raise(survey, grading, result)));
      }
    }
    return looks.stream()
        .sorted(
            Comparator.comparingDouble(NextLook::raisesLowBy)
                .reversed()
                .thenComparing(
                    Comparator.comparing((NextLook n) -> n.result().worst().findingClass())
                        .reversed())
                .thenComparing(n -> StopOrder.place(n.result().worst().stop())))
        .toList();
  }

  private static double raise(Survey survey, Grading grading, Result result) {
    return survey.engines().stream()
        .filter(e -> Grading.concerns(result.component(), e))
        .map(e -> grading.countingFor(e, result.check().subsystem()))
        .mapToDouble(
            counting ->
                Grading.grade(counting, r -> r == result ? r.unexpected() : r).low()
                    - Grading.grade(counting, r -> r).low())
        .max()
        .orElse(0);
  }
}

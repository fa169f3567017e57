package org.seafettle.assessment;

import java.util.Comparator;
import java.util.List;
import org.seafettle.catalogue.Catalogue;
import org.seafettle.catalogue.Check;
import org.seafettle.survey.Survey;

/**
 * The judgement of a survey. Everything that a report says is in it.
 *
 * @param survey what was judged
 * @param catalogue by what it was judged
 * @param results every check that applies and was recorded or expected, in the catalogue's order
 * @param engines the engines, in the survey's order
 * @param verdict what it comes to
 * @param causes what several findings together point to
 * @param plan what to do, and what to look at next
 * @param history the earlier surveys, oldest first
 */
public record Assessment(
    Survey survey,
    Catalogue catalogue,
    List<Result> results,
    List<EngineGrade> engines,
    Verdict verdict,
    List<Cause> causes,
    Plan plan,
    History history) {

  public Assessment {
    results = List.copyOf(results);
    engines = List.copyOf(engines);
    causes = List.copyOf(causes);
  }

  /** The findings, the gravest first, then by number. */
  public List<Result> findings() {
    return results.stream()
        .filter(r -> r.number().isPresent())
        .sorted(
            Comparator.comparing((Result r) -> r.seen().orElseThrow().found())
                .reversed()
                .thenComparing(r -> r.number().orElseThrow()))
        .toList();
  }

  /** What an expected look would have shown and was not seen, in full or in part. */
  public List<Result> open() {
    return results.stream().filter(Result::leavesOpen).toList();
  }

  /**
   * What to do next.
   *
   * @param tasks what to do, the most urgent first
   * @param looks what to inspect next, the most telling first
   * @param furtherTests optional checks that were not done
   * @param dues what falls due, in the order of the results
   */
  public record Plan(
      List<Task> tasks, List<NextLook> looks, List<Check> furtherTests, List<Due> dues) {

    public Plan {
      tasks = List.copyOf(tasks);
      looks = List.copyOf(looks);
      furtherTests = List.copyOf(furtherTests);
      dues = List.copyOf(dues);
    }
  }
}

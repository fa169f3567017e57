package org.seafettle.assessment;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.seafettle.catalogue.Catalogue;
import org.seafettle.catalogue.Check;
import org.seafettle.catalogue.FindingClass;
import org.seafettle.catalogue.Pattern;
import org.seafettle.survey.Engine;
import org.seafettle.survey.Survey;

/** Finds the patterns that the findings make. */
final class Causes {

  private Causes() {}

  static List<Cause> of(Survey survey, Catalogue catalogue, List<Result> results) {
    var opened = Opened.by(results);
    var checks = catalogue.byId();
    var causes = new ArrayList<Cause>();
    for (var pattern : catalogue.patterns()) {
      for (var engine : survey.engines()) {
        if (pattern.scope().covers(survey, engine)) {
          var needs =
              pattern.needs().stream()
                  .map(
                      n ->
                          n.only(
                              s ->
                                  canShow(checks.get(s.check()), s, survey, engine)
                                      && opened.counts(checks.get(s.check()), engine)))
                  .toList();
          match(pattern, needs, engine, concerning(engine, results)).ifPresent(causes::add);
        }
      }
    }
    return causes;
  }

  /** Whether there is such a look, and such an answer, on a boat with that engine. */
  private static boolean canShow(Check check, Pattern.Sign sign, Survey survey, Engine engine) {
    return check.scope().covers(survey, engine)
        && sign.outcomes().stream().anyMatch(o -> check.outcome(o, survey, engine).isPresent());
  }

  private static List<Result> concerning(Engine engine, List<Result> results) {
    return results.stream().filter(r -> Grading.concerns(r.component(), engine)).toList();
  }

  /**
   * A pattern fits if every need is met, or all but one whose look was not taken, and it explains a
   * finding.
   */
  private static Optional<Cause> match(
      Pattern pattern, List<Pattern.Need> needs, Engine engine, List<Result> results) {
    var from = new LinkedHashSet<Result>();
    var missing = new ArrayList<Pattern.Need>();
    for (var need : needs) {
      var signs = need.anyOf().stream().flatMap(s -> showing(s, results)).toList();
      if (!signs.isEmpty()) {
        from.addAll(signs);
      } else if (need.anyOf().stream().anyMatch(s -> couldStillShow(s, results))) {
        if (!need.onlyIfSeen()) {
          missing.add(need);
        }
      } else if (!need.onlyIfSeen() || !need.anyOf().isEmpty()) {
        return Optional.empty();
      }
    }
    int leftOpen = pattern.onlySettled() ? 0 : 1;
    if (missing.size() > leftOpen
        || from.stream().filter(Result::reports).noneMatch(r -> pattern.explains(r.check()))) {
      return Optional.empty();
    }
    return Optional.of(new Cause(pattern, engine, List.copyOf(from), missing.stream().findFirst()));
  }

  private static Stream<Result> showing(Pattern.Sign sign, List<Result> results) {
    return results.stream()
        .filter(r -> r.check().id().equals(sign.check()))
        .filter(
            r -> r.seen().filter(s -> sign.outcomes().contains(s.outcome().name())).isPresent());
  }

  /** Whether the look was not taken at all; one that was taken and showed nothing rules it out. */
  private static boolean couldStillShow(Pattern.Sign sign, List<Result> results) {
    return results.stream()
        .filter(r -> r.check().id().equals(sign.check()))
        .allMatch(r -> r.sighting() instanceof Sighting.Unseen);
  }

  /** The results with what settled patterns make graver. */
  static List<Result> raise(List<Result> results, List<Cause> causes) {
    return results.stream().map(r -> raise(r, causes)).toList();
  }

  private static Result raise(Result result, List<Cause> causes) {
    return causes.stream()
        .filter(Cause::settled)
        .filter(c -> Grading.concerns(result.component(), c.engine()))
        .map(Cause::pattern)
        .filter(p -> p.raise().filter(raise -> raises(raise, result)).isPresent())
        .max(java.util.Comparator.comparing(p -> p.raise().orElseThrow().to()))
        .flatMap(p -> result.seen().map(s -> result.with(s.raised(p))))
        .orElse(result);
  }

  private static boolean raises(Pattern.Raise raise, Result result) {
    return result.check().id().equals(raise.check())
        && result
            .seen()
            .map(Sighting.Seen::outcome)
            .filter(o -> o.findingClass() != FindingClass.OK)
            .filter(o -> raise.to().compareTo(o.findingClass()) > 0)
            .isPresent();
  }

  /** The causes with their findings as numbered. */
  static List<Cause> from(List<Cause> causes, List<Result> numbered) {
    return causes.stream()
        .map(
            c ->
                new Cause(
                    c.pattern(),
                    c.engine(),
                    c.from().stream().map(r -> same(r, numbered)).toList(),
                    c.missing()))
        .toList();
  }

  private static Result same(Result result, List<Result> numbered) {
    return numbered.stream()
        .filter(r -> r.check().equals(result.check()) && r.component().equals(result.component()))
        .findFirst()
        .orElseThrow();
  }
}

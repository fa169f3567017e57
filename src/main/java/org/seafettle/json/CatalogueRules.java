package org.seafettle.json;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.seafettle.catalogue.Cases;
import org.seafettle.catalogue.Check;
import org.seafettle.catalogue.Criterion;
import org.seafettle.catalogue.Interval;
import org.seafettle.catalogue.Outcome;
import org.seafettle.catalogue.Steps;
import org.seafettle.problem.Spelling;
import org.seafettle.survey.EngineType;

/** What has to hold within a check beyond each field being right. */
final class CatalogueRules {

  private static final Pattern WORD = Pattern.compile("[a-z][a-z0-9]*(-[a-z0-9]+)*");

  private final Check check;
  private final CatalogueEntry entry;

  CatalogueRules(Check check, CatalogueEntry entry) {
    this.check = check;
    this.entry = entry;
  }

  void hold() {
    namesAreWords();
    sentencesEnd();
    reachedOutcomesExist();
    outcomesCanBeReached();
    edgesAreWithinReach();
  }

  private void namesAreWords() {
    var names = new ArrayList<>(check.outcomes().stream().map(Outcome::name).toList());
    names.add(check.id());
    check.criterion().readings().forEach(r -> names.add(r.name()));
    names.stream()
        .filter(name -> !WORD.matcher(name).matches())
        .forEach(name -> entry.fault(quoted(name) + " is no word.", "Use a-z and hyphens."));
  }

  private void sentencesEnd() {
    var sentences = new ArrayList<>(check.guidance().how());
    sentences.add(check.guidance().why());
    for (var outcome : check.outcomes()) {
      sentences.add(outcome.saying().observed());
      sentences.add(outcome.saying().means());
      if (outcome.saying().brief().endsWith(".")) {
        entry.fault(quoted(outcome.saying().brief()) + " follows a colon.", "Drop its full stop.");
      }
    }
    sentences.stream()
        .filter(s -> !s.isEmpty() && !s.endsWith("."))
        .forEach(s -> entry.fault(quoted(s) + " does not end.", "Add a full stop."));
  }

  /** Each outcome that a number can lead to has to exist for every kind of engine in the scope. */
  private void reachedOutcomesExist() {
    var known = new HashSet<>(check.outcomes().stream().map(Outcome::name).toList());
    for (var name : check.criterion().reachable()) {
      if (!known.contains(name)) {
        entry.fault("There is no outcome " + quoted(name) + ".", Spelling.hint(name, known));
      } else if (!Arrays.stream(EngineType.values())
          .filter(check.scope()::covers)
          .filter(engine -> check.criterion().reachable(engine).contains(name))
          .allMatch(engine -> covered(name, engine))) {
        entry.fault(
            "The outcome " + quoted(name) + " does not exist for every engine it can be found on.",
            "Add it once more without \"for\".");
      }
    }
  }

  private boolean covered(String name, EngineType engine) {
    return check.outcomes().stream()
        .filter(o -> o.name().equals(name))
        .map(Outcome::scope)
        .anyMatch(
            scope ->
                scope.covers(engine)
                    && scope.features().isEmpty()
                    && scope.afloat().isEmpty()
                    && within(check.scope().circuits(), scope.circuits())
                    && within(check.scope().waters(), scope.waters())
                    && within(check.scope().chemistries(), scope.chemistries()));
  }

  private static <T> boolean within(Set<T> wanted, Set<T> given) {
    return given.isEmpty() || (!wanted.isEmpty() && given.containsAll(wanted));
  }

  private void outcomesCanBeReached() {
    if (check.outcomes().isEmpty()) {
      entry.fault("The check finds nothing.", "Add its outcomes.");
    }
    var reached = new HashSet<>(check.criterion().reachable());
    check.outcomes().stream()
        .filter(o -> !o.sayable() && !reached.contains(o.name()))
        .forEach(
            o ->
                entry.fault(
                    "The outcome " + quoted(o.name()) + " can neither be reached nor said.",
                    "Add it to the steps, or let it be sayable."));
  }

  private void edgesAreWithinReach() {
    if (check.criterion() instanceof Criterion.Scale scale) {
      edges(scale.limits().steps(), scale.reading().least(), scale.reading().most());
    } else if (check.criterion() instanceof Criterion.Spread spread) {
      double widest = spread.reading().most() - spread.reading().least();
      edges(spread.limits().steps(), 0, spread.relative() ? 100 : widest);
    } else if (check.criterion() instanceof Interval interval) {
      edges(Cases.always(interval.steps()), 0, Double.POSITIVE_INFINITY);
    }
  }

  private void edges(Cases<Steps> cases, double least, double most) {
    cases.cases().stream()
        .map(Cases.Case::value)
        .map(Steps::edges)
        .flatMap(List::stream)
        .filter(edge -> !(edge >= least && edge <= most))
        .forEach(
            edge ->
                entry.fault(
                    "The edge " + edge + " lies outside what is plausible.",
                    "Keep it between " + least + " and " + most + "."));
  }

  private static String quoted(String text) {
    return "\"" + text + "\"";
  }
}

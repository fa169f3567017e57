package org.seafettle.json;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.seafettle.catalogue.Scope;
import org.seafettle.survey.Battery;
import org.seafettle.survey.Component;
import org.seafettle.survey.Engine;
import org.seafettle.survey.Survey;
import org.seafettle.survey.Word;

/** Says why something is not true of a component. */
final class ScopeWords {

  private ScopeWords() {}

  /** Why the scope does not cover a component, in words that follow a colon; empty if it does. */
  static Optional<String> outside(Scope scope, Survey survey, Component component) {
    if (scope.covers(survey, component)) {
      return Optional.empty();
    }
    return Stream.<Supplier<Optional<String>>>of(
            () -> engine(scope, survey, component),
            () -> battery(scope, survey, component),
            () -> water(scope, survey, component),
            () -> afloat(scope, survey, component),
            () -> features(scope, survey, component))
        .flatMap(reason -> reason.get().stream())
        .findFirst()
        .or(() -> Optional.of("no engine aboard is of that kind"));
  }

  private static Optional<String> engine(Scope scope, Survey survey, Component component) {
    if (!(component instanceof Engine engine)) {
      return Optional.empty();
    }
    var types = only(scope.engines(), Set.of(), scope);
    if (!types.covers(survey, engine)) {
      return Optional.of("it is of type " + engine.type().word());
    }
    var circuits =
        new Scope(Set.of(), scope.circuits(), Set.of(), Set.of(), Optional.empty(), Map.of());
    return circuits.covers(survey, engine)
        ? Optional.empty()
        : engine.circuit().map(c -> "its cooling is " + c.word());
  }

  private static Scope only(
      Set<org.seafettle.survey.EngineType> engines,
      Set<org.seafettle.survey.Chemistry> chemistries,
      Scope scope) {
    return new Scope(engines, Set.of(), Set.of(), chemistries, Optional.empty(), Map.of());
  }

  private static Optional<String> battery(Scope scope, Survey survey, Component component) {
    return component instanceof Battery battery
            && !only(Set.of(), scope.chemistries(), scope).covers(survey, battery)
        ? battery.chemistry().map(c -> "its chemistry is " + c.word())
        : Optional.empty();
  }

  private static Optional<String> water(Scope scope, Survey survey, Component component) {
    var waters =
        new Scope(Set.of(), Set.of(), scope.waters(), Set.of(), Optional.empty(), Map.of());
    return waters.covers(survey, component)
        ? Optional.empty()
        : survey.boat().water().map(w -> "the boat lies in " + w.word() + " water");
  }

  private static Optional<String> afloat(Scope scope, Survey survey, Component component) {
    var afloat = new Scope(Set.of(), Set.of(), Set.of(), Set.of(), scope.afloat(), Map.of());
    return afloat.covers(survey, component)
        ? Optional.empty()
        : survey
            .occasion()
            .conditions()
            .afloat()
            .map(is -> is ? "the boat was afloat" : "the boat was ashore");
  }

  private static Optional<String> features(Scope scope, Survey survey, Component component) {
    return scope.features().entrySet().stream()
        .filter(
            f -> survey.boat().has(f.getKey()).filter(has -> !has.equals(f.getValue())).isPresent())
        .map(f -> name(f.getKey(), f.getValue()))
        .findFirst();
  }

  private static String name(Word feature, boolean wanted) {
    return "the survey says \"" + feature.word() + "\": " + !wanted;
  }
}

package org.seafettle.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import org.seafettle.quantity.MeasuredUnit;
import org.seafettle.survey.EngineType;
import org.seafettle.survey.MakersLimit;

/**
 * The limits of a number: the catalogue's by case, and what a maker's limit leads to.
 *
 * @param steps the catalogue's own
 * @param belowMaker the outcome below the lowest value that the maker allows
 * @param withinMaker the outcome where the maker's limit is kept
 * @param aboveMaker the outcome above the highest value that the maker allows
 */
public record Limits(
    Cases<Steps> steps,
    Optional<String> belowMaker,
    Optional<String> withinMaker,
    Optional<String> aboveMaker) {

  List<String> reachable() {
    return reachable(scope -> true);
  }

  List<String> reachable(EngineType engine) {
    return reachable(scope -> scope.covers(engine));
  }

  private List<String> reachable(Predicate<Scope> on) {
    var names = new ArrayList<String>();
    steps.cases().stream()
        .filter(c -> on.test(c.scope()))
        .forEach(c -> names.addAll(c.value().names()));
    List.of(belowMaker, withinMaker, aboveMaker).forEach(name -> name.ifPresent(names::add));
    return names.stream().distinct().toList();
  }

  Measure hold(
      Facts facts,
      String name,
      double value,
      MeasuredUnit unit,
      OptionalDouble uncertainty,
      List<Measure.Shown> shown) {
    var own = steps.pick(facts.survey(), facts.component());
    var maker = facts.makersLimit().filter(limit -> makers(limit, unit).isPresent());
    var holding =
        maker
            .flatMap(limit -> makers(limit, unit))
            .map(makers -> own.map(o -> further(makers, o)).orElse(makers))
            .or(() -> own)
            .orElseThrow(() -> new Criterion.Unjudgeable(Reason.of(Reason.Kind.NO_MAKERS_LIMIT)));
    return new Measure(name, value, unit, uncertainty, holding, maker, shown, Optional.empty());
  }

  /** The steps that a maker's limit makes, where this check can use one. */
  private Optional<Steps> makers(MakersLimit limit, MeasuredUnit unit) {
    var names = new ArrayList<String>();
    var edges = new ArrayList<Double>();
    if (withinMaker.isEmpty()) {
      return Optional.empty();
    }
    names.add(withinMaker.get());
    if (limit.lowest().isPresent() && belowMaker.isPresent()) {
      names.add(0, belowMaker.get());
      edges.add(limit.lowest().get().in(unit));
    }
    if (limit.highest().isPresent() && aboveMaker.isPresent()) {
      names.add(aboveMaker.get());
      edges.add(limit.highest().get().in(unit));
    }
    return edges.isEmpty() ? Optional.empty() : Optional.of(new Steps(names, edges));
  }

  /**
   * The maker's steps with those of the catalogue that lie further out: a maker tells what is
   * allowed, and what lies far outside of that stays what it is.
   */
  private static Steps further(Steps makers, Steps own) {
    var names = new ArrayList<>(makers.names());
    var edges = new ArrayList<>(makers.edges());
    for (int i = own.names().indexOf(names.get(0)) - 1; i >= 0; i--) {
      if (own.edges().get(i) < edges.get(0)) {
        names.add(0, own.names().get(i));
        edges.add(0, own.edges().get(i));
      }
    }
    int last = own.names().lastIndexOf(names.get(names.size() - 1));
    for (int i = last; last >= 0 && i < own.edges().size(); i++) {
      if (own.edges().get(i) > edges.get(edges.size() - 1)) {
        names.add(own.names().get(i + 1));
        edges.add(own.edges().get(i));
      }
    }
    return new Steps(names, edges);
  }
}

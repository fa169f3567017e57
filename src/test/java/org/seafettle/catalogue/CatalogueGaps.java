package org.seafettle.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.seafettle.assessment.Measured;
import org.seafettle.assessment.Sighting;

/** What the cases of a check leave untried, each gap a sentence. */
final class CatalogueGaps {

  /** Of the edge's size: what is computed or counted in days seldom hits it. */
  private static final double NEAR = 0.005;

  private final Check check;
  private final List<CatalogueCase.Result> results;
  private final List<CatalogueCase.Result.Look> looks;
  private final List<String> gaps = new ArrayList<>();

  CatalogueGaps(Check check, List<CatalogueCase.Result> results) {
    this.check = check;
    this.results = results;
    this.looks =
        results.stream()
            .filter(CatalogueCase.Result.Look.class::isInstance)
            .map(CatalogueCase.Result.Look.class::cast)
            .toList();
  }

  List<String> find() {
    outcomes();
    if (check.criterion() instanceof Criterion.Scale scale) {
      limits(scale.limits());
    } else if (check.criterion() instanceof Criterion.Spread spread) {
      limits(spread.limits());
    } else if (check.criterion() instanceof Criterion.Derived derived) {
      limits(derived.limits());
    } else if (check.criterion() instanceof Interval interval) {
      interval(interval);
    }
    if (results.stream().noneMatch(CatalogueCase.Result.Refusal.class::isInstance)) {
      gaps.add("No case gives " + check.id() + " a bad input.");
    }
    return gaps;
  }

  private void outcomes() {
    for (var outcome : check.outcomes()) {
      if (looks.stream().noneMatch(l -> seen(l).filter(s -> s.outcome() == outcome).isPresent())) {
        gaps.add(
            "No case gives the outcome \"%s\" of class %s."
                .formatted(outcome.name(), outcome.findingClass().word()));
      }
    }
  }

  private void limits(Limits limits) {
    limits.steps().cases().forEach(c -> edges(c.value()));
    maker(limits.belowMaker());
    maker(limits.withinMaker());
    maker(limits.aboveMaker());
  }

  private void maker(Optional<String> outcome) {
    outcome
        .filter(
            name ->
                looks.stream()
                    .flatMap(l -> seen(l).stream())
                    .filter(s -> s.measured().flatMap(m -> m.measure().maker()).isPresent())
                    .noneMatch(s -> s.outcome().name().equals(name)))
        .ifPresent(name -> gaps.add("No case gives \"" + name + "\" by a maker's limit."));
  }

  private void interval(Interval interval) {
    edges(interval.steps());
    for (var due : interval.due().cases()) {
      boolean tried =
          looks.stream()
              .filter(l -> seen(l).flatMap(Sighting.Seen::measured).isPresent())
              .anyMatch(
                  l ->
                      interval.due().pick(l.survey(), l.component()).stream()
                          .anyMatch(d -> d == due.value()));
      if (!tried) {
        gaps.add("No case tries the interval " + due.value() + ".");
      }
    }
  }

  /** Each edge is tried at, in the step below and in the step above. */
  private void edges(Steps steps) {
    var values =
        looks.stream()
            .flatMap(l -> seen(l).stream())
            .flatMap(s -> s.measured().stream())
            .map(Measured::measure)
            .filter(m -> m.steps() == steps)
            .map(Measure::value)
            .toList();
    for (int i = 0; i < steps.edges().size(); i++) {
      int step = i;
      double edge = steps.edges().get(i);
      if (values.stream().noneMatch(v -> near(v, edge))) {
        gaps.add("No case lies at the edge " + edge + " of " + steps.names() + ".");
      }
      IntStream.of(step, step + 1)
          .filter(s -> values.stream().noneMatch(v -> !near(v, edge) && steps.below(v) == s))
          .forEach(
              s ->
                  gaps.add(
                      "No case lies in \"%s\" beside the edge %s of %s."
                          .formatted(steps.names().get(s), edge, steps.names())));
    }
  }

  private boolean near(double value, double edge) {
    boolean computed =
        check.criterion() instanceof Criterion.Derived || check.criterion() instanceof Interval;
    double size = edge == 0 ? 1 : Math.max(0.1, Math.abs(edge));
    return Math.abs(value - edge) <= (computed ? NEAR : 1e-9) * size;
  }

  private static Optional<Sighting.Seen> seen(CatalogueCase.Result.Look look) {
    return look.sighting() instanceof Sighting.Seen seen ? Optional.of(seen) : Optional.empty();
  }
}

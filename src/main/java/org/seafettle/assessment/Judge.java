package org.seafettle.assessment;

import java.util.Comparator;
import java.util.Optional;
import org.seafettle.catalogue.Check;
import org.seafettle.catalogue.Criterion;
import org.seafettle.catalogue.Facts;
import org.seafettle.catalogue.FindingClass;
import org.seafettle.catalogue.Measure;
import org.seafettle.catalogue.Outcome;
import org.seafettle.catalogue.Reason;
import org.seafettle.catalogue.Steps;
import org.seafettle.formula.DoesNotHold;
import org.seafettle.formula.conformity.Conformity;
import org.seafettle.formula.conformity.Side;
import org.seafettle.problem.Refused;
import org.seafettle.quantity.MeasuredUnit;
import org.seafettle.quantity.Quantity;
import org.seafettle.survey.Component;
import org.seafettle.survey.Evidence;
import org.seafettle.survey.Finding;
import org.seafettle.survey.Survey;

/** Judges one check on one component. */
final class Judge {

  private final Survey survey;
  private final Check check;
  private final Component component;

  Judge(Survey survey, Check check, Component component) {
    this.survey = survey;
    this.check = check;
    this.component = component;
  }

  Sighting judge(Finding finding) {
    if (finding.state() instanceof Finding.State.NotInspected not) {
      return new Sighting.Unseen(new Reason(Reason.Kind.STATED, not.reason()));
    }
    if (finding.state() instanceof Finding.State.NotApplicable not) {
      return new Sighting.NotApplicable(not.reason());
    }
    var partly =
        finding.state() instanceof Finding.State.Partly part
            ? Optional.of(new Reason(Reason.Kind.STATED, part.reason()))
            : Optional.<Reason>empty();
    try {
      return seen(finding.evidence(), partly, finding.done().isPresent());
    } catch (Criterion.Unjudgeable e) {
      return new Sighting.Unseen(e.reason());
    } catch (DoesNotHold e) {
      return new Sighting.Unseen(reason(e));
    } catch (Refused e) {
      return new Sighting.Unseen(new Reason(Reason.Kind.CONDITION_NOT_MET, "does-not-hold"));
    }
  }

  private static Reason reason(DoesNotHold rule) {
    return new Reason(
        Reason.Kind.CONDITION_NOT_MET,
        rule.rule(),
        rule.quantity(),
        rule.values().stream()
            .map(v -> Quantity.of(v.number(), MeasuredUnit.of(v.unit())))
            .toList());
  }

  private Sighting.Seen seen(Evidence evidence, Optional<Reason> partly, boolean settled) {
    var said =
        evidence.words().stream()
            .flatMap(word -> check.outcome(word, survey, component).stream())
            .max(Comparator.comparing(Outcome::findingClass));
    if (said.isPresent()) {
      return new Sighting.Seen(said.get(), Optional.empty(), Optional.empty(), settled, partly);
    }
    var measure = check.criterion().measure(new Facts(survey, component, check.id(), evidence));
    var outcome = outcome(measure.steps(), measure.value());
    var measured =
        new Measured(measure, comparison(measure, outcome), hidden(measure, outcome, evidence));
    return new Sighting.Seen(
        outcome, Optional.of(measured), Optional.empty(), settled, partly.or(measure::partly));
  }

  /** The step on which a value lies; on an edge, the milder of its two sides. */
  private Outcome outcome(Steps steps, double value) {
    int below = steps.below(value);
    var outcome = named(steps.names().get(below));
    return steps.onEdge(value, below)
        ? milder(outcome, named(steps.names().get(below + 1)))
        : outcome;
  }

  private static Outcome milder(Outcome a, Outcome b) {
    return a.findingClass().compareTo(b.findingClass()) <= 0 ? a : b;
  }

  private Outcome named(String name) {
    return check
        .outcome(name, survey, component)
        .orElseThrow(
            () -> new IllegalStateException(check.id() + " has no outcome called " + name));
  }

  /** The comparison with the nearest edge between two classes. */
  private Optional<Comparison> comparison(Measure measure, Outcome outcome) {
    if (measure.uncertainty().isEmpty() || measure.uncertainty().getAsDouble() <= 0) {
      return Optional.empty();
    }
    var steps = measure.steps();
    return java.util.stream.IntStream.range(0, steps.edges().size())
        .boxed()
        .filter(i -> classAt(steps, i) != classAt(steps, i + 1))
        .min(Comparator.comparingDouble(i -> Math.abs(steps.edges().get(i) - measure.value())))
        .map(i -> compare(measure, outcome, i));
  }

  private FindingClass classAt(Steps steps, int step) {
    return named(steps.names().get(step)).findingClass();
  }

  private Comparison compare(Measure measure, Outcome outcome, int edge) {
    var steps = measure.steps();
    double limit = steps.edges().get(edge);
    double expanded = measure.uncertainty().orElseThrow();
    boolean upper = classAt(steps, edge).compareTo(classAt(steps, edge + 1)) < 0;
    var side = upper ? Side.AT_MOST : Side.AT_LEAST;
    boolean isBelow = measure.value() < limit || (measure.value() == limit && upper);
    var other = named(steps.names().get(isBelow ? edge + 1 : edge));
    return new Comparison(
        limit,
        Conformity.verdict(measure.value(), expanded, limit, side),
        Conformity.probability(measure.value(), expanded / 2, limit, side),
        other);
  }

  /** What the catalogue says where a looser limit of the maker hides something grave. */
  private Optional<Outcome> hidden(Measure measure, Outcome outcome, Evidence evidence) {
    if (measure.maker().isEmpty()) {
      return Optional.empty();
    }
    var facts = new Facts(survey, component, check.id(), evidence);
    try {
      var own = check.criterion().measure(facts.withoutMakersLimits());
      return Optional.of(outcome(own.steps(), own.value()))
          .filter(o -> o.findingClass().compareTo(outcome.findingClass()) > 0)
          .filter(Judge::mustBeShown);
    } catch (Criterion.Unjudgeable noLimitOfItsOwn) {
      return Optional.empty();
    }
  }

  private static boolean mustBeShown(Outcome outcome) {
    return outcome.findingClass() == FindingClass.STOP
        || outcome.advice().filter(Outcome.Advice::requiredByLaw).isPresent();
  }
}

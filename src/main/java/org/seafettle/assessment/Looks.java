package org.seafettle.assessment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.seafettle.catalogue.Catalogue;
import org.seafettle.catalogue.Check;
import org.seafettle.catalogue.Reason;
import org.seafettle.survey.Component;
import org.seafettle.survey.Survey;

/**
 * Every look that was taken, and every expected one that was not. Silence is a look not taken:
 * nothing unseen is ever taken for good.
 */
final class Looks {

  private final Survey survey;
  private final Opened opened;

  private Looks(Survey survey, Opened opened) {
    this.survey = survey;
    this.opened = opened;
  }

  static List<Result> of(Survey survey, Catalogue catalogue) {
    var closed = new Looks(survey, Opened.by(List.of()));
    var optional =
        catalogue.checks().stream()
            .filter(c -> c.subsystem().optional())
            .flatMap(closed::results)
            .toList();
    var looks = new Looks(survey, Opened.by(optional));
    return catalogue.checks().stream().flatMap(looks::results).toList();
  }

  private Stream<Result> results(Check check) {
    var on = survey.components().filter(c -> c.kind() == check.on()).toList();
    var covered = new ArrayList<Component>(on);
    covered.addAll(standIns(check));
    return covered.stream()
        .filter(component -> check.scope().covers(survey, component))
        .flatMap(component -> result(check, component).stream());
  }

  /**
   * Where a battery or pump that ought to be there was not recorded, the engine or the boat stands
   * in for it, so that what was not recorded counts as not seen.
   */
  private List<Component> standIns(Check check) {
    return switch (check.on()) {
      case BATTERY ->
          survey.engines().stream()
              .filter(
                  e -> survey.outfit().batteries().stream().noneMatch(b -> b.servesEngine(e.id())))
              .map(Component.class::cast)
              .toList();
      case PUMP -> survey.outfit().pumps().isEmpty() ? List.of(survey.boat()) : List.of();
      case ENGINE, BOAT -> List.of();
    };
  }

  private Optional<Result> result(Check check, Component component) {
    var finding = survey.finding(check.id(), component.id());
    boolean expected =
        check.expected().contains(survey.occasion().purpose()) && opened.counts(check, component);
    if (finding.isEmpty() && !expected) {
      return Optional.empty();
    }
    var silent =
        Reason.of(
            component.kind() == check.on()
                ? Reason.Kind.NOT_RECORDED
                : Reason.Kind.COMPONENT_NOT_RECORDED);
    var sighting =
        finding
            .map(new Judge(survey, check, component)::judge)
            .orElseGet(() -> new Sighting.Unseen(silent));
    return Optional.of(
        new Result(
            OptionalInt.empty(),
            check,
            component,
            sighting,
            expected,
            check.worst(survey, component),
            finding));
  }
}

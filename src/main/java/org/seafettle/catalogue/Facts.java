package org.seafettle.catalogue;

import java.util.List;
import java.util.Optional;
import org.seafettle.survey.Component;
import org.seafettle.survey.Engine;
import org.seafettle.survey.Evidence;
import org.seafettle.survey.MakersLimit;
import org.seafettle.survey.Outfit;
import org.seafettle.survey.Survey;

/**
 * All that a criterion may look at.
 *
 * @param survey the whole survey
 * @param component the one that is judged
 * @param check the check's id
 * @param evidence what was seen and measured
 */
public record Facts(Survey survey, Component component, String check, Evidence evidence) {

  /** The same without any limit from a maker. */
  public Facts withoutMakersLimits() {
    var bare = survey.engines().stream().map(e -> e.withLimits(List.of())).toList();
    var outfit = new Outfit(bare, survey.outfit().batteries(), survey.outfit().pumps());
    var here = bare.stream().filter(e -> e.id().equals(component.id())).findFirst();
    return new Facts(
        survey.with(outfit), here.map(Component.class::cast).orElse(component), check, evidence);
  }

  /**
   * The engine maker's limit for this check. For a component that is not an engine, the limit of
   * the first engine that brings one: the manuals of engines also speak of batteries and filters.
   */
  public Optional<MakersLimit> makersLimit() {
    if (component instanceof Engine engine) {
      return engine.limit(check);
    }
    return survey.engines().stream().flatMap(e -> e.limit(check).stream()).findFirst();
  }
}

package org.seafettle.assessment;

import java.util.Collection;
import java.util.Set;
import java.util.stream.Collectors;
import org.seafettle.catalogue.Check;
import org.seafettle.catalogue.Subsystem;
import org.seafettle.survey.Component;

/**
 * What of the optional subsystems was opened. One look that was taken opens the subsystem for its
 * engine, and what else a survey for the purpose has to cover there counts from then on: nobody
 * shall be graded by the one look that went well. A look that was only tried opens nothing.
 */
final class Opened {

  private record Place(Subsystem subsystem, String component) {}

  private final Set<Place> places;

  private Opened(Set<Place> places) {
    this.places = places;
  }

  static Opened by(Collection<Result> looks) {
    return new Opened(
        looks.stream()
            .filter(r -> r.check().subsystem().optional() && r.seen().isPresent())
            .map(r -> new Place(r.check().subsystem(), r.component().id()))
            .collect(Collectors.toSet()));
  }

  /** Whether a subsystem counts on a component. */
  boolean counts(Subsystem subsystem, Component on) {
    return !subsystem.optional() || places.contains(new Place(subsystem, on.id()));
  }

  boolean counts(Check check, Component on) {
    return counts(check.subsystem(), on);
  }
}

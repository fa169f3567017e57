package org.seafettle.survey;

import java.util.HashSet;
import java.util.List;
import java.util.stream.Stream;

/** The engines, batteries and pumps of a boat. */
public record Outfit(List<Engine> engines, List<Battery> batteries, List<Pump> pumps) {

  public Outfit {
    engines = List.copyOf(engines);
    batteries = List.copyOf(batteries);
    pumps = List.copyOf(pumps);
    if (engines.isEmpty()) {
      throw new IllegalArgumentException("a survey of engines needs an engine");
    }
    var ids = new HashSet<String>();
    ids.add(Boat.ID);
    Stream.of(engines, batteries, pumps)
        .flatMap(List::stream)
        .map(Component::id)
        .filter(id -> !ids.add(id))
        .findFirst()
        .ifPresent(
            id -> {
              throw new IllegalArgumentException("two components are called " + id);
            });
  }

  Stream<Component> components() {
    return Stream.of(engines, batteries, pumps).flatMap(List::stream);
  }
}

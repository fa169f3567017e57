package org.seafettle.survey;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One survey of one boat on one day, as it was recorded.
 *
 * @param occasion when, where, by whom, for whom and under which conditions
 * @param boat the boat herself
 * @param outfit her engines, batteries and pumps
 * @param findings what was looked at, in the order in which it was written down
 * @param photos the photographs, in the order of the file
 * @param work what was done to the boat, oldest first as recorded
 * @param prices the yard's price list, where the survey brings one
 * @param earlier paths of earlier surveys of the same boat, relative to this survey's folder
 */
public record Survey(
    Occasion occasion,
    Boat boat,
    Outfit outfit,
    List<Finding> findings,
    List<Photo> photos,
    List<Work> work,
    Optional<Prices> prices,
    List<String> earlier) {

  public Survey {
    findings = List.copyOf(findings);
    photos = List.copyOf(photos);
    work = List.copyOf(work);
    earlier = List.copyOf(earlier);
  }

  public Survey with(Outfit other) {
    return new Survey(occasion, boat, other, findings, photos, work, prices, earlier);
  }

  public List<Engine> engines() {
    return outfit.engines();
  }

  /** Every component a finding can be on: engines, batteries, pumps, then the boat. */
  public Stream<Component> components() {
    return Stream.concat(outfit.components(), Stream.of(boat));
  }

  public Optional<Component> component(String id) {
    return components().filter(c -> c.id().equals(id)).findFirst();
  }

  public Optional<Finding> finding(String check, String on) {
    return findings.stream().filter(f -> f.check().equals(check) && f.on().equals(on)).findFirst();
  }
}

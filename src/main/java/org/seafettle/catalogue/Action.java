package org.seafettle.catalogue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import org.seafettle.survey.Component;
import org.seafettle.survey.Survey;

/**
 * Something to be done. Several findings may lead to the same action.
 *
 * @param id the word by which the catalogue's data names it
 * @param does what to do, in the imperative
 * @param who who may do it, the first being the usual one
 * @param parts the usual parts, by the words that a price list uses
 * @param hours hours of work
 * @param cautions what can hurt while doing it, on any engine or battery
 */
public record Action(
    String id,
    String does,
    List<Who> who,
    List<String> parts,
    Optional<Hours> hours,
    List<Caution> cautions) {

  public Action {
    who = List.copyOf(who);
    parts = List.copyOf(parts);
    cautions = List.copyOf(cautions);
    if (who.isEmpty()) {
      throw new IllegalArgumentException("nobody may do " + id);
    }
  }

  /** The same with what can hurt on this component of this boat. */
  public Action on(Survey survey, Component component) {
    var here = new LinkedHashMap<String, Caution>();
    cautions.stream()
        .filter(c -> c.scope().covers(survey, component))
        .forEach(c -> here.putIfAbsent(c.id(), c));
    return new Action(id, does, who, parts, hours, List.copyOf(here.values()));
  }

  /** Hours of work with good access, one practitioner's judgement. */
  public record Hours(double least, double most) {

    public Hours {
      if (!(least > 0 && most >= least)) {
        throw new IllegalArgumentException("hours " + least + " to " + most);
      }
    }
  }
}

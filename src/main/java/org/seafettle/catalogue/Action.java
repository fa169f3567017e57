package org.seafettle.catalogue;

import java.util.List;
import java.util.Optional;

/**
 * Something to be done. Several findings may lead to the same action.
 *
 * @param id the word by which the catalogue's data names it
 * @param does what to do, in the imperative
 * @param who who may do it, the first being the usual one
 * @param parts the usual parts, by the words that a price list uses
 * @param hours hours of work
 * @param cautions what can hurt while doing it
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

  /** Hours of work with good access, one practitioner's judgement. */
  public record Hours(double least, double most) {

    public Hours {
      if (!(least > 0 && most >= least)) {
        throw new IllegalArgumentException("hours " + least + " to " + most);
      }
    }
  }
}

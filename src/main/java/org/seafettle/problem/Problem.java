package org.seafettle.problem;

/**
 * One fault in an input, written for the person who has to mend it.
 *
 * @param place where it is
 * @param fault what is wrong, one sentence
 * @param remedy what to do about it, one sentence in the imperative
 */
public record Problem(Place place, String fault, String remedy) {

  public Problem {
    if (fault.isBlank() || remedy.isBlank()) {
      throw new IllegalArgumentException("a problem needs a fault and a remedy");
    }
  }

  public static Problem of(String fault, String remedy) {
    return new Problem(Place.NOWHERE, fault, remedy);
  }

  public Problem at(Place elsewhere) {
    return new Problem(elsewhere, fault, remedy);
  }

  /** The place on a line of its own, then the fault, then the remedy. */
  @Override
  public String toString() {
    var at = place.toString();
    return (at.isEmpty() ? "" : at + "\n  ") + fault + "\n  " + remedy;
  }
}

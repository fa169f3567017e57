package org.seafettle.catalogue;

import java.util.Optional;

/**
 * One answer that a check can give.
 *
 * @param name the word for it; in a survey file where it is {@code sayable}
 * @param scope for what it is true; among outcomes of one name the first that covers is meant
 * @param findingClass how grave it is
 * @param saying how it is told
 * @param advice what to do; absent only where nothing is to be done
 * @param citation where the limit comes from
 * @param sayable whether a surveyor may state it in place of a reading
 */
public record Outcome(
    String name,
    Scope scope,
    FindingClass findingClass,
    Saying saying,
    Optional<Advice> advice,
    Citation citation,
    boolean sayable) {

  public Outcome {
    boolean stops = advice.flatMap(Advice::stop).isPresent();
    if (stops != (findingClass == FindingClass.STOP)) {
      throw new IllegalArgumentException(
          name + ": a stop, and only a stop, says what must not be done");
    }
    if (advice.isEmpty() && findingClass != FindingClass.OK) {
      throw new IllegalArgumentException(name + ": says that something is wrong, not what to do");
    }
  }

  /** What must not be done while it is open. */
  public Optional<StopOrder> stop() {
    return advice.flatMap(Advice::stop);
  }

  /**
   * How an outcome is told.
   *
   * @param observed the fact, a sentence: "The oil on the stick is milky."
   * @param brief the same in a few words, to follow a colon: "water in its oil"
   * @param means what it reveals, a sentence; empty where the fact says it all
   */
  public record Saying(String observed, String brief, String means) {}

  /**
   * What to do about it.
   *
   * @param action the action
   * @param by by when
   * @param stop what must not be done until then
   * @param requiredByLaw whether a law requires it of boats to which that law applies
   */
  public record Advice(
      Action action, Deadline by, Optional<StopOrder> stop, boolean requiredByLaw) {}
}

package org.seafettle.catalogue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * A cause that only several findings together point to.
 *
 * @param id the word by which the catalogue's data names it
 * @param scope for what engines and boats it is true
 * @param needs all of them are needed
 * @param cause the likely cause, a sentence
 * @param reasoning why a mechanic would say so
 * @param confirms what would confirm it
 * @param rulesOut what would speak against it
 * @param explains the checks at whose findings it is told; at all of its needs where empty
 * @param onlySettled whether it is told only once every look was taken, never asked as a question
 * @param raise the finding that it makes graver, where it does
 */
public record Pattern(
    String id,
    Scope scope,
    List<Need> needs,
    String cause,
    String reasoning,
    String confirms,
    String rulesOut,
    Set<String> explains,
    boolean onlySettled,
    Optional<Raise> raise) {

  public Pattern {
    needs = List.copyOf(needs);
    explains = Set.copyOf(explains);
    if (needs.size() < 2) {
      throw new IllegalArgumentException(id + ": one finding alone is no pattern");
    }
  }

  /** Whether it is told at the findings of this check. */
  public boolean explains(Check check) {
    return explains.isEmpty() || explains.contains(check.id());
  }

  /**
   * Something that has to be found; one of its signs suffices.
   *
   * @param anyOf the signs
   * @param onlyIfSeen whether it is waived where none of its looks was taken: what was not looked
   *     at cannot speak against the cause, what was seen to be otherwise does
   */
  public record Need(List<Sign> anyOf, boolean onlyIfSeen) {

    public Need {
      anyOf = List.copyOf(anyOf);
    }

    /** The same with those of its signs that are asked; it may be left with none. */
    public Need only(Predicate<Sign> asked) {
      return new Need(anyOf.stream().filter(asked).toList(), onlyIfSeen);
    }
  }

  /**
   * A finding that counts as a sign.
   *
   * @param check the check
   * @param outcomes the names of the outcomes, one of which has to be found
   */
  public record Sign(String check, Set<String> outcomes) {

    public Sign {
      outcomes = Set.copyOf(outcomes);
    }
  }

  /**
   * What a pattern makes graver. Never milder.
   *
   * @param check the check whose finding is raised
   * @param to the class it is raised to, below {@code STOP} unless {@code stop} says what must not
   *     be done
   * @param stop what must not be done, for the gravest class
   * @param by by when
   */
  public record Raise(
      String check, FindingClass to, Optional<StopOrder> stop, Optional<Deadline> by) {

    public Raise {
      if ((to == FindingClass.STOP) != stop.isPresent()) {
        throw new IllegalArgumentException("a stop, and only a stop, says what must not be done");
      }
    }
  }
}

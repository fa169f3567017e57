package org.seafettle.problem;

import java.util.List;
import java.util.stream.Collectors;

/**
 * An input was refused. Carries every fault that was found, not only the first, in the order of
 * their places.
 */
public class Refused extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final transient List<Problem> problems;

  public Refused(List<Problem> problems) {
    super(problems.stream().map(Problem::toString).collect(Collectors.joining("\n")));
    if (problems.isEmpty()) {
      throw new IllegalArgumentException("nothing to refuse");
    }
    this.problems = List.copyOf(problems);
  }

  public Refused(Problem problem) {
    this(List.of(problem));
  }

  /** For rules that know what is wrong but not in which file, such as formulas. */
  public static Refused because(String fault, String remedy) {
    return new Refused(Problem.of(fault, remedy));
  }

  /** Throws when the list has anything in it. */
  public static void ifAny(List<Problem> problems) {
    if (!problems.isEmpty()) {
      throw new Refused(problems);
    }
  }

  public List<Problem> problems() {
    return problems;
  }
}

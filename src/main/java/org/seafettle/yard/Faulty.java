package org.seafettle.yard;

import java.util.List;
import org.seafettle.problem.Problem;

/**
 * A survey that could not be used.
 *
 * @param source the folder or archive that it came in
 * @param faults all of them
 */
public record Faulty(String source, List<Fault> faults) implements Entry {

  public Faulty {
    faults = List.copyOf(faults);
  }

  /**
   * One fault.
   *
   * @param place where it is; may be empty
   * @param fault what is wrong
   * @param remedy what to do about it
   */
  public record Fault(String place, String fault, String remedy) {}

  public static Faulty of(String source, List<Problem> problems) {
    return new Faulty(
        source,
        problems.stream()
            .map(p -> new Fault(p.place().toString(), p.fault(), p.remedy()))
            .toList());
  }
}

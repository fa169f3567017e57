package org.seafettle.json;

import java.util.ArrayList;
import java.util.List;
import org.seafettle.problem.Place;
import org.seafettle.problem.Problem;
import org.seafettle.problem.Refused;

/** What is wrong with the catalogue's data, noted while reading goes on. */
final class CatalogueFaults {

  private final List<Problem> problems = new ArrayList<>();

  void note(String file, String field, String fault, String remedy) {
    problems.add(new Problem(Place.field(file, field), fault, remedy));
  }

  boolean none() {
    return problems.isEmpty();
  }

  /**
   * Ends the reading where anything was noted.
   *
   * @throws Refused with all that was noted
   */
  void end() {
    Refused.ifAny(problems);
  }
}

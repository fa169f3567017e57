package org.seafettle.json;

import java.util.Map;

/** Takes out of a report what lies in it. */
@FunctionalInterface
public interface Enclosures {

  /**
   * The enclosed files by name; none where there are none.
   *
   * @param name of the report, for what is wrong with it
   * @throws org.seafettle.problem.Refused where it is no report that can be read
   */
  Map<String, byte[]> in(String name, byte[] report);
}

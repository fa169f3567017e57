package org.seafettle.assessment;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.seafettle.catalogue.FindingClass;
import org.seafettle.catalogue.StopOrder;

/**
 * What the survey comes to. It stands apart from the index.
 *
 * @param readiness in one word
 * @param stops what must not be done, and because of which finding
 * @param counts findings that are open, by class
 */
public record Verdict(Readiness readiness, List<Stop> stops, Map<FindingClass, Integer> counts) {

  public Verdict {
    stops = List.copyOf(stops);
    var all = new EnumMap<FindingClass, Integer>(FindingClass.class);
    for (var c : FindingClass.values()) {
      all.put(c, counts.getOrDefault(c, 0));
    }
    counts = Collections.unmodifiableMap(all);
  }

  /** Whether the boat may be used. */
  public enum Readiness {
    /** At least one thing must not be done. */
    STOP,
    /** Something has to be done before use. */
    NOT_BEFORE_WORK,
    /** Nothing stands against it, but too little was seen to say more. */
    NOT_ENOUGH_SEEN,
    /** Nothing stands against it as far as seen; something expected was not seen. */
    READY_AS_FAR_AS_SEEN,
    /** Nothing stands against it. */
    READY
  }

  /**
   * Something that must not be done.
   *
   * @param order what
   * @param because the finding
   */
  public record Stop(StopOrder order, Result because) {}
}

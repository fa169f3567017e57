package org.seafettle.difference;

import java.util.Optional;
import org.seafettle.assessment.Grade;
import org.seafettle.catalogue.Subsystem;
import org.seafettle.survey.Engine;

/**
 * An index then and now.
 *
 * @param engine the engine
 * @param subsystem of which it is; empty for the engine as a whole
 * @param then the grade then; empty where the engine was not aboard, or the subsystem not opened
 * @param now the grade now
 * @param seenOnce whether something open in it was looked at in one of the two surveys only
 */
public record GradeChange(
    Engine engine,
    Optional<Subsystem> subsystem,
    Optional<Grade> then,
    Grade now,
    boolean seenOnce) {

  /** What two ranges prove about what lies in them. */
  public enum Proof {
    BETTER,
    WORSE,
    /** The ranges are one and the same number. */
    SAME,
    /** The ranges overlap: what was not seen may be all there is to it. */
    NOT_PROVEN,
    /** The ranges are apart, but something open was looked at in one of the surveys only. */
    SEEN_ONCE,
    /** There is nothing to hold it against. */
    NOTHING_BEFORE
  }

  /**
   * A change is proven only where the ranges do not overlap. Optional checks widen no range, so a
   * finding that only one survey looked for proves nothing either.
   */
  public Proof proof() {
    if (then.isEmpty()) {
      return Proof.NOTHING_BEFORE;
    }
    var before = then.get();
    if (now.low() > before.high()) {
      return seenOnce ? Proof.SEEN_ONCE : Proof.BETTER;
    }
    if (now.high() < before.low()) {
      return seenOnce ? Proof.SEEN_ONCE : Proof.WORSE;
    }
    return now.certain() && before.certain() ? Proof.SAME : Proof.NOT_PROVEN;
  }
}

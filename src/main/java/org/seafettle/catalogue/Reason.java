package org.seafettle.catalogue;

import java.util.List;
import org.seafettle.quantity.Quantity;

/**
 * Why a check could not be judged, or only in part. Save for what the surveyor wrote, it holds no
 * sentence: each word has its text in the words of the report.
 *
 * @param kind what kind of reason it is
 * @param text what the surveyor says, or the word for the reading, fact or rule; empty where the
 *     kind says it all
 * @param of the word for the quantity that the rule speaks of; mostly empty
 * @param values of which the rule speaks
 */
public record Reason(Kind kind, String text, String of, List<Quantity> values) {

  public Reason {
    values = List.copyOf(values);
  }

  public Reason(Kind kind, String text) {
    this(kind, text, "", List.of());
  }

  public static Reason of(Kind kind) {
    return new Reason(kind, "");
  }

  /** The kinds of reason. */
  public enum Kind {
    /** The survey says nothing about it. */
    NOT_RECORDED,
    /** The surveyor says why. */
    STATED,
    /** A reading or a fact that the check cannot do without is missing; the text names it. */
    READING_MISSING,
    /** No limit from the engine maker's manual was recorded, and there is no general one. */
    NO_MAKERS_LIMIT,
    /** It is not known when it was last done. */
    LAST_DONE_UNKNOWN,
    /** The hours are not known: judged by the calendar alone. */
    HOURS_UNKNOWN,
    /** A rule of the formula was not met; the text names it. */
    CONDITION_NOT_MET,
    /** What the check is on was not recorded, such as a battery. */
    COMPONENT_NOT_RECORDED
  }
}

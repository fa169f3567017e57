package org.seafettle.catalogue;

/**
 * Why a check could not be judged, or only in part.
 *
 * @param kind what kind of reason it is
 * @param text what the surveyor or the rule says; empty where the kind says it all
 */
public record Reason(Kind kind, String text) {

  public static Reason of(Kind kind) {
    return new Reason(kind, "");
  }

  /** The kinds of reason. */
  public enum Kind {
    /** The survey says nothing about it. */
    NOT_RECORDED,
    /** The surveyor says why. */
    STATED,
    /** A reading that the check cannot do without is missing; the text names it. */
    READING_MISSING,
    /** No limit from the engine maker's manual was recorded, and there is no general one. */
    NO_MAKERS_LIMIT,
    /** It is not known when it was last done. */
    LAST_DONE_UNKNOWN,
    /** The hours are not known: judged by the calendar alone. */
    HOURS_UNKNOWN,
    /** A condition of the rule was not met; the text says which. */
    CONDITION_NOT_MET,
    /** What the check is on was not recorded, such as a battery. */
    COMPONENT_NOT_RECORDED
  }
}

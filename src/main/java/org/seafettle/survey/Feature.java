package org.seafettle.survey;

/** What a boat may have, and what checks ask for. */
public enum Feature implements Word {
  /** An inlet for shore power. */
  SHORE_POWER,
  /** A cabin in which people can be shut in. */
  CABIN,
  /** An engine or fuel space that is closed, so that vapour can gather in it. */
  CLOSED_ENGINE_SPACE,
  /** A fuel tank that is part of the boat. */
  BUILT_IN_TANK,
  /** A drain plug in the hull. */
  DRAIN_PLUG,
  /** Seacocks or other openings below the waterline. */
  SEACOCKS,
  /** A lanyard or other emergency engine stop at the helm. */
  EMERGENCY_STOP;

  @Override
  public String word() {
    return Word.of(this);
  }
}

package org.seafettle.survey;

/** A thing that a finding can be on. */
public sealed interface Component permits Boat, Engine, Battery, Pump {

  /** The word by which findings name it; unique in a survey, {@code boat} for the boat. */
  String id();

  Kind kind();

  /** Whether it is the very one that another survey of the same boat recorded. */
  default boolean isSameAs(Component other) {
    return kind() == other.kind() && id().equals(other.id());
  }

  /** The kinds of component, in the order in which a report tells them. */
  enum Kind {
    ENGINE,
    BATTERY,
    PUMP,
    BOAT
  }
}

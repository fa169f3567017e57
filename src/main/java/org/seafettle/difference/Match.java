package org.seafettle.difference;

import org.seafettle.survey.Component;

/** When a component of one survey is held against one of the other. */
public enum Match {
  /** On one boat: an exchanged engine or battery is another one, whatever it is called. */
  ONE_BOAT,
  /** On two boats: of the same name, whatever stands on its plate. */
  TWO_BOATS;

  boolean same(Component one, Component other) {
    return this == ONE_BOAT
        ? one.isSameAs(other)
        : one.kind() == other.kind() && one.id().equals(other.id());
  }
}

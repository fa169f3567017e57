package org.seafettle.difference;

import org.seafettle.survey.Component;
import org.seafettle.survey.Engine;

/** When a component of one survey is held against one of the other. */
public enum Match {
  /** On one boat: of the same name, and an engine with another serial number is another engine. */
  ONE_BOAT,
  /** On two boats: of the same name, whatever stands on its plate. */
  TWO_BOATS;

  boolean same(Component one, Component other) {
    return one.kind() == other.kind()
        && one.id().equals(other.id())
        && (this == TWO_BOATS || !isExchanged(one, other));
  }

  private static boolean isExchanged(Component one, Component other) {
    return one instanceof Engine then
        && other instanceof Engine now
        && then.plate().serial().isPresent()
        && now.plate().serial().isPresent()
        && !then.plate().serial().equals(now.plate().serial());
  }
}

package org.seafettle.formula.battery;

/** How a battery is built; the volts of one say nothing about another. */
public enum Chemistry {
  FLOODED,
  AGM,
  GEL,
  LITHIUM_IRON_PHOSPHATE
}

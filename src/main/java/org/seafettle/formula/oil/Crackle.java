package org.seafettle.formula.oil;

import java.util.OptionalDouble;

/**
 * What a drop of oil does on a plate of 160 °C, and the water that this suggests, percent. A
 * workshop test, never aboard: fuel in the oil burns. Published text of the test (secondary);
 * against the laboratory it scatters widely, so confirm with Karl Fischer.
 */
public enum Crackle {
  /** No bubbles and no sound: no free or emulsified water. */
  SILENT(0, 0.05),
  /** Bubbles of about 0.5 mm that vanish at once. */
  VERY_SMALL_BUBBLES(0.05, 0.10),
  /** Bubbles of about 2 mm that gather, grow to about 4 mm and vanish. */
  GROWING_BUBBLES(0.10, 0.20),
  /** Bubbles from 2 to 4 mm again and again, violent. */
  VIOLENT(0.20, Double.POSITIVE_INFINITY);

  private final double atLeast;
  private final double atMost;

  Crackle(double atLeast, double atMost) {
    this.atLeast = atLeast;
    this.atMost = atMost;
  }

  /** The least water that this suggests, percent. */
  public double atLeastPercent() {
    return atLeast;
  }

  /** The most water that this suggests, percent; empty where the test sets no upper end. */
  public OptionalDouble atMostPercent() {
    return Double.isInfinite(atMost) ? OptionalDouble.empty() : OptionalDouble.of(atMost);
  }
}

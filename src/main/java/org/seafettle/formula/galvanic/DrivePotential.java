package org.seafettle.formula.galvanic;

import org.seafettle.formula.Validity;

/**
 * What the potential of an aluminium drive against a silver/silver-chloride electrode means.
 * Mercury Service Manual 28 (90-863160, May 2000), p. 1C-33, which prints the magnitude.
 */
public enum DrivePotential {
  CORRODING,
  PROTECTED,
  /** Strips paint and attacks aluminium, which does not bear it. */
  OVERPROTECTED;

  /** The water that the boat floats in. */
  public enum Water {
    SALT(-1100, -850),
    FRESH(-1050, -750);

    private final double lowest;
    private final double highest;

    Water(double lowest, double highest) {
      this.lowest = lowest;
      this.highest = highest;
    }
  }

  /**
   * @param millivolts signed, -1600 to 0; the ends of the protected window belong to it
   */
  public static DrivePotential of(double millivolts, Water water) {
    Validity.within("A potential against silver/silver chloride", millivolts, -1600, 0, "mV");
    if (millivolts > water.highest) {
      return CORRODING;
    }
    return millivolts < water.lowest ? OVERPROTECTED : PROTECTED;
  }

  /**
   * How far a potential lies outside the protected window, mV; negative inside by as much as to the
   * nearer end.
   */
  public static double outsideMillivolts(double millivolts, Water water) {
    Validity.within("A potential against silver/silver chloride", millivolts, -1600, 0, "mV");
    return Math.max(millivolts - water.highest, water.lowest - millivolts);
  }
}

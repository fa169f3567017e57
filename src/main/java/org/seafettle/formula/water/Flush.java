package org.seafettle.formula.water;

import org.seafettle.formula.Validity;

/** Whether a flush with fresh water reached the whole engine. */
public enum Flush {
  /** Less than the 5 min at idle that Evinrude's flushing page asks for. */
  TOO_SHORT,
  /** At least 5 but less than the 10 min in which the thermostat opens (secondary pages). */
  THERMOSTAT_SHUT,
  /** The hose gave less than 140 or more than 300 kPa (20 to 40 psi: Evinrude's flushing page). */
  PRESSURE_WRONG,
  ADEQUATE;

  /**
   * @param minutes at idle or through the flush port, 0 to 120
   * @param hoseKilopascals at the hose, 0 to 1000 kPa gauge
   */
  public static Flush of(double minutes, double hoseKilopascals) {
    Validity.within("A flushing time", minutes, 0, 120, "min");
    Validity.within("A hose pressure", hoseKilopascals, 0, 1000, "kPa");
    if (minutes < 5) {
      return TOO_SHORT;
    }
    if (hoseKilopascals < 140 || hoseKilopascals > 300) {
      return PRESSURE_WRONG;
    }
    return minutes < 10 ? THERMOSTAT_SHUT : ADEQUATE;
  }
}

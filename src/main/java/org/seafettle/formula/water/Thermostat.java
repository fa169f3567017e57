package org.seafettle.formula.water;

import org.seafettle.formula.Validity;

/**
 * The maker's band for a thermostat, such as 50 to 54 °C to start and 60 to 64 °C to open fully
 * (Mercury 15 EFI manual, 2017, p. 218).
 *
 * @param startLowestC least temperature at which it may start to open
 * @param startHighestC highest at which it must have started
 * @param fullC temperature at which it is fully open
 */
public record Thermostat(double startLowestC, double startHighestC, double fullC) {

  public Thermostat {
    Validity.within("An opening temperature", startLowestC, 20, 110, "°C");
    Validity.within("An opening temperature", startHighestC, startLowestC, 110, "°C");
    Validity.within("A full-open temperature", fullC, startHighestC, 120, "°C");
  }

  /** How the engine runs after ten minutes at idle. */
  public enum Running {
    /** More than 5 °C below the start of opening: leaking or stuck open. */
    TOO_COLD,
    NORMAL,
    /** More than 15 °C above full opening. */
    TOO_HOT,
    /** Within 10 °C of the alarm. */
    NEAR_ALARM
  }

  /** Degrees by which it opens outside the band on the bench: below negative, inside zero. */
  public double deviationC(double openedC) {
    Validity.within("An opening temperature", openedC, 20, 110, "°C");
    if (openedC > startHighestC) {
      return openedC - startHighestC;
    }
    return Math.min(0, openedC - startLowestC);
  }

  /**
   * The running temperature against the band; the four limits are program defaults.
   *
   * @param runningC -5 to 150 °C
   * @param alarmC where the alarm sounds, above full opening to 150 °C
   */
  public Running running(double runningC, double alarmC) {
    Validity.within("A running temperature", runningC, -5, 150, "°C");
    Validity.within("An alarm temperature", alarmC, fullC, 150, "°C");
    if (runningC >= alarmC - 10) {
      return Running.NEAR_ALARM;
    }
    if (runningC > fullC + 15) {
      return Running.TOO_HOT;
    }
    return runningC < startLowestC - 5 ? Running.TOO_COLD : Running.NORMAL;
  }
}

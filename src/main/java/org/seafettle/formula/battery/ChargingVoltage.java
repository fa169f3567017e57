package org.seafettle.formula.battery;

import org.seafettle.formula.Validity;

/** What a charger should hold, and how a capacity test is corrected for temperature. */
public final class ChargingVoltage {

  /** Trojan user guide, table 6 note. */
  public static final double TROJAN_MILLIVOLTS = 5;

  /** Several pages quoting one battery reference; secondary. */
  public static final double LOWER_MILLIVOLTS = 3;

  private ChargingVoltage() {}

  /**
   * The target at a temperature: {@code V = V25 - n c (T - 25)/1000}.
   *
   * @param voltsAt25C the maker's target at 25 °C for the whole battery
   * @param temperatureC of the battery, -20 to 50 °C
   * @param cells in series, six in a 12 V lead-acid battery
   * @param millivoltsPerCell compensation for each cell and degree Celsius, 0 to 10 mV; zero for
   *     lithium, whose chargers must not compensate
   */
  public static double target(
      double voltsAt25C, double temperatureC, int cells, double millivoltsPerCell) {
    Validity.within("A battery temperature", temperatureC, -20, 50, "°C");
    Validity.within("A number of cells", cells, 1, 48, "");
    Validity.within("A compensation", millivoltsPerCell, 0, 10, "mV/°C");
    Validity.within("A charging voltage of a cell", voltsAt25C / cells, 1.9, 3.7, "V");
    return voltsAt25C - cells * millivoltsPerCell * (temperatureC - 25) / 1000;
  }

  /**
   * The minutes of a discharge test as at 27 °C: {@code M (1 - 0.009 (T - 27))}. Trojan user guide
   * 7.5; holds from 24 to 32 °C.
   */
  public static double correctedDischargeMinutes(double minutes, double temperatureC) {
    Validity.positive("A discharge time", minutes, "min");
    Validity.within("An acid temperature", temperatureC, 24, 32, "°C");
    return minutes * (1 - 0.009 * (temperatureC - 27));
  }
}

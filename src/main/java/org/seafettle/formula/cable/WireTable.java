package org.seafettle.formula.cable;

import static org.seafettle.formula.cable.Gauge.AWG_1;
import static org.seafettle.formula.cable.Gauge.AWG_10;
import static org.seafettle.formula.cable.Gauge.AWG_12;
import static org.seafettle.formula.cable.Gauge.AWG_14;
import static org.seafettle.formula.cable.Gauge.AWG_16;
import static org.seafettle.formula.cable.Gauge.AWG_18;
import static org.seafettle.formula.cable.Gauge.AWG_1_0;
import static org.seafettle.formula.cable.Gauge.AWG_2;
import static org.seafettle.formula.cable.Gauge.AWG_2_0;
import static org.seafettle.formula.cable.Gauge.AWG_3_0;
import static org.seafettle.formula.cable.Gauge.AWG_4;
import static org.seafettle.formula.cable.Gauge.AWG_4_0;
import static org.seafettle.formula.cable.Gauge.AWG_6;
import static org.seafettle.formula.cable.Gauge.AWG_8;

import java.util.List;
import org.seafettle.formula.Validity;
import org.seafettle.problem.Refused;

/** Areas of stranded boat wire in circular mils: Ancor catalogue 2023, p. 70, secondary. */
public enum WireTable {
  NOMINAL(
      1600, 2600, 4100, 6500, 10_500, 16_800, 26_600, 42_000, 66_500, 83_690, 105_600, 133_100,
      167_800, 211_600),
  SAE_MINIMUM(
      1537, 2336, 3702, 5833, 9343, 14_810, 24_538, 37_360, 62_450, 77_790, 98_980, 125_100,
      158_600, 205_500);

  private static final List<Gauge> SIZES =
      List.of(
          AWG_18, AWG_16, AWG_14, AWG_12, AWG_10, AWG_8, AWG_6, AWG_4, AWG_2, AWG_1, AWG_1_0,
          AWG_2_0, AWG_3_0, AWG_4_0);

  private final double[] areas;

  WireTable(double... areas) {
    this.areas = areas;
  }

  /**
   * The smallest size whose area is at least that many circular mils.
   *
   * @throws Refused when 4/0 is too small
   */
  public Gauge smallest(double circularMils) {
    Validity.positive("A required area", circularMils, "cmil");
    for (int i = 0; i < areas.length; i++) {
      if (areas[i] >= circularMils) {
        return SIZES.get(i);
      }
    }
    throw Refused.because(
        "No single wire of the table is large enough for this current and length.",
        "Shorten the run, allow a larger drop or run conductors in parallel as the code permits.");
  }
}

package org.seafettle.formula.oil;

import java.util.Arrays;
import java.util.List;
import org.seafettle.formula.DoesNotHold;
import org.seafettle.formula.Validity;
import org.seafettle.problem.Refused;

/**
 * The engine oil grades of SAE J300, January 2015, by kinematic viscosity at 100 °C (secondary:
 * raso.name). Since 2013 the thin grades overlap, so that an oil can be two grades at once.
 */
public enum SaeGrade {
  SAE_8("8", 4.0, 6.1),
  SAE_12("12", 5.0, 7.1),
  SAE_16("16", 6.1, 8.2),
  SAE_20("20", 6.9, 9.3),
  SAE_30("30", 9.3, 12.5),
  SAE_40("40", 12.5, 16.3),
  SAE_50("50", 16.3, 21.9),
  SAE_60("60", 21.9, 26.1);

  private final String label;
  private final double lowest;
  private final double below;

  SaeGrade(String label, double lowest, double below) {
    this.label = label;
    this.lowest = lowest;
    this.below = below;
  }

  /**
   * Every grade whose band holds the viscosity, thinnest first; none below 4.0 and from 26.1.
   *
   * @param viscosity at 100 °C, 2 to 40 mm2/s
   */
  public static List<SaeGrade> of(double viscosity) {
    Validity.within("A viscosity at 100 °C", viscosity, 2, 40, "mm²/s");
    return Arrays.stream(values()).filter(grade -> grade.holds(viscosity)).toList();
  }

  /** The number on the bottle, after the W where there is one. */
  public String label() {
    return label;
  }

  /** The lower end of the band, which belongs to it, mm2/s at 100 °C. */
  public double lowest() {
    return lowest;
  }

  /** The upper end of the band, which no longer belongs to it, mm2/s at 100 °C. */
  public double below() {
    return below;
  }

  /**
   * The grade of a label.
   *
   * @param number after the W where there is one: 8, 12, 16, 20, 30, 40, 50 or 60
   * @throws Refused where there is no such grade
   */
  public static SaeGrade labelled(double number) {
    return Arrays.stream(values())
        .filter(grade -> Double.parseDouble(grade.label) == number)
        .findFirst()
        .orElseThrow(
            () ->
                DoesNotHold.because(
                    "no-such-grade",
                    "There is no engine oil grade of that number.",
                    "Give the number after the W: 8, 12, 16, 20, 30, 40, 50 or 60."));
  }

  /**
   * Where a viscosity lies from this grade's band: 0 at its lower end and 1 at its upper, below and
   * above in whole grades, so that -1 has lost one grade and 2 has gained one. Straight lines
   * between the ends of neighbouring bands, a program default.
   *
   * @param viscosity at 100 °C, 2 to 40 mm2/s
   */
  public double position(double viscosity) {
    Validity.within("A viscosity at 100 °C", viscosity, 2, 40, "mm²/s");
    if (viscosity < lowest) {
      return -gradesBelow(viscosity);
    }
    return viscosity < below ? (viscosity - lowest) / (below - lowest) : 1 + gradesAbove(viscosity);
  }

  private double gradesBelow(double viscosity) {
    int i = ordinal();
    while (i > 1 && viscosity < values()[i - 1].lowest) {
      i--;
    }
    var upper = values()[Math.max(i, 1)];
    var lower = values()[Math.max(i, 1) - 1];
    double within = (upper.lowest - viscosity) / (upper.lowest - lower.lowest);
    return ordinal() - upper.ordinal() + within;
  }

  private double gradesAbove(double viscosity) {
    int last = values().length - 1;
    int i = ordinal();
    while (i < last - 1 && viscosity > values()[i + 1].below) {
      i++;
    }
    var lower = values()[Math.min(i, last - 1)];
    var upper = values()[Math.min(i, last - 1) + 1];
    return lower.ordinal() - ordinal() + (viscosity - lower.below) / (upper.below - lower.below);
  }

  private boolean holds(double viscosity) {
    return viscosity >= lowest && viscosity < below;
  }
}

package org.seafettle.formula.oil;

import java.util.Arrays;
import java.util.List;
import org.seafettle.formula.Validity;

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

  private boolean holds(double viscosity) {
    return viscosity >= lowest && viscosity < below;
  }
}

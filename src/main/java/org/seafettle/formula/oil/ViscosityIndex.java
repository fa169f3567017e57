package org.seafettle.formula.oil;

import org.seafettle.formula.Validity;
import org.seafettle.problem.Refused;

/**
 * How little an oil thins as it warms: ASTM D2270 / ISO 2909 (secondary text of the standard). The
 * standard's table is not carried: L and H are given for 2 to 70 mm2/s at 100 °C and computed
 * above.
 *
 * @param low L, the viscosity at 40 °C of an oil of index 0 with the same viscosity at 100 °C
 * @param high H, that of an oil of index 100
 */
public record ViscosityIndex(double low, double high) {

  public ViscosityIndex {
    Validity.positive("H", high, "mm²/s");
    Validity.positive("L", low, "mm²/s");
    if (low <= high) {
      throw Refused.because("L is not above H.", "Read both again from the standard's table.");
    }
  }

  /**
   * L and H of an oil of more than 70 and up to 500 mm2/s at 100 °C, by the standard's equations.
   */
  public static ViscosityIndex above70(double viscosity100) {
    double y = Validity.within("A viscosity at 100 °C", viscosity100, 70, 500, "mm²/s");
    return new ViscosityIndex(0.8353 * y * y + 14.67 * y - 216, 0.1684 * y * y + 11.85 * y - 97);
  }

  /**
   * The index as it is reported, a whole number. Diagnostic only: no limit condemns a used oil.
   *
   * @param viscosity40 2 to 100 000 mm2/s
   * @param viscosity100 2 to 500 mm2/s, below that at 40 °C
   */
  public long of(double viscosity40, double viscosity100) {
    Validity.within("A viscosity at 100 °C", viscosity100, 2, 500, "mm²/s");
    Validity.within("A viscosity at 40 °C", viscosity40, viscosity100, 100_000, "mm²/s");
    if (viscosity40 >= high) {
      return Math.round(100 * (low - viscosity40) / (low - high));
    }
    double n = Math.log10(high / viscosity40) / Math.log10(viscosity100);
    return Math.round((Math.pow(10, n) - 1) / 0.00715 + 100);
  }
}

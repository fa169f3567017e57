package org.seafettle.formula.engine;

import java.util.Collections;
import java.util.List;
import org.seafettle.formula.DoesNotHold;
import org.seafettle.formula.Validity;

/** Compression and leak-down of the cylinders; pressures in any one unit. */
public final class Compression {

  private Compression() {}

  /**
   * How far the lowest cylinder lies below the highest: {@code 100 (max - min)/max} percent.
   * Mercury 40 hp four-stroke manual 2001, p. 55 (the rule, not its example table).
   *
   * @param pressures of at least two cylinders, none negative
   */
  public static double spreadPercent(List<Double> pressures) {
    if (pressures.size() < 2) {
      throw DoesNotHold.because(
          "too-few-cylinders",
          "A spread needs the compression of at least two cylinders.",
          "Measure every cylinder.");
    }
    pressures.forEach(p -> Validity.notNegative("A compression", p, ""));
    double highest = Validity.positive("The highest compression", Collections.max(pressures), "");
    return 100 * (highest - Collections.min(pressures)) / highest;
  }

  /**
   * The least compression beside a highest one: {@code 0.85 max}. Mercury 15 and 25 hp EFI manuals,
   * pp. 61 and 50.
   */
  public static double lowestAllowed(double highest) {
    return 0.85 * Validity.positive("A compression", highest, "");
  }

  /**
   * Leak-down, {@code 100 (Pin - Pcyl)/Pin} percent. FAA AC 43.13-1B: 60 of 80 psi, 25 %, on a hot
   * engine is to be looked into (secondary quotation).
   */
  public static double leakDownPercent(double supply, double cylinder) {
    Validity.positive("A supply pressure", supply, "");
    Validity.within("A cylinder pressure", cylinder, 0, supply, "");
    return 100 * (supply - cylinder) / supply;
  }
}

package org.seafettle.formula.oil;

import java.util.List;
import org.seafettle.formula.DoesNotHold;
import org.seafettle.formula.Validity;
import org.seafettle.problem.Refused;

/** Metal that wears into the oil. Program rules: no uniform limit condemns an engine. */
public final class Wear {

  /** On the oil before its figures tell anything, h; a program default. */
  private static final double LEAST_HOURS = 5;

  private Wear() {}

  /**
   * Metal gained in 100 h of oil life, ppm: {@code 100 (C - C0)/h}.
   *
   * @param usedPpm in the used oil, 0 to 5000 ppm, corrected for make-up
   * @param newPpm in the new oil, 0 to 5000 ppm
   * @param oilHours since the change, from 5 h: less says nothing
   */
  public static double per100Hours(double usedPpm, double newPpm, double oilHours) {
    ppm(usedPpm);
    Validity.within("A time on the oil", oilHours, LEAST_HOURS, 5000, "h");
    return 100 * (usedPpm - ppm(newPpm)) / oilHours;
  }

  /** What the metal would be without the oil that was added: {@code C (1 + added/sump)}. */
  public static double correctedForMakeUp(double ppm, double addedLitres, double sumpLitres) {
    Validity.positive("A sump", sumpLitres, "L");
    return ppm(ppm)
        * (1
            + Validity.within("A make-up volume", addedLitres, 0, 3 * sumpLitres, "L")
                / sumpLitres);
  }

  /**
   * A figure of a used oil, if the oil was in the engine long enough to carry one: right after a
   * change every oil looks good.
   *
   * @param oilHours since the change, from 5 h
   * @throws Refused where the oil is fresher
   */
  public static double telling(double ppm, double oilHours) {
    if (!(oilHours >= LEAST_HOURS)) {
      throw DoesNotHold.because(
          "oil-too-fresh",
          "The oil had run for less than 5 h: right after a change every oil looks good.",
          "Draw another sample after 10 to 25 h.");
    }
    return ppm(ppm);
  }

  /**
   * A rate over the median of the earlier ones of the same engine; a program rule.
   *
   * @param earlier at least three, above zero in the middle
   */
  public static double overMedian(double rate, List<Double> earlier) {
    if (earlier.size() < 3) {
      throw DoesNotHold.because(
          "too-few-samples",
          "Fewer than three earlier samples make no history.",
          "Keep the figure, and compare it when there are more.");
    }
    var sorted = earlier.stream().sorted().toList();
    int half = sorted.size() / 2;
    double median =
        sorted.size() % 2 == 1 ? sorted.get(half) : (sorted.get(half - 1) + sorted.get(half)) / 2;
    return rate / Validity.positive("A median of the earlier rates", median, "ppm");
  }

  private static double ppm(double ppm) {
    return Validity.within("A metal content", ppm, 0, 5000, "ppm");
  }
}

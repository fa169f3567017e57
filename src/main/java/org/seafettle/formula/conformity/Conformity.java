package org.seafettle.formula.conformity;

import org.seafettle.formula.Validity;
import org.seafettle.problem.Refused;

/**
 * A reading with its uncertainty against a limit.
 *
 * <p>Verdict: ILAC-G8:09/2019, 4.2.3, non-binary with a guard band of the expanded uncertainty U =
 * 2u. Probability: JCGM 106:2012, normal model (clause 7, from memory, unverified).
 */
public final class Conformity {

  /** Readings are decimals, which binary fractions miss by less than this share. */
  private static final double ROUNDING = 1e-9;

  private Conformity() {}

  /**
   * The verdict on a reading; a reading on an edge has the better word.
   *
   * @param expanded the uncertainty U with coverage factor 2, not negative, in the reading's unit
   */
  public static Verdict verdict(double reading, double expanded, double limit, Side side) {
    Validity.notNegative("An uncertainty", expanded, "");
    double excess = finite(side == Side.AT_MOST ? reading - limit : limit - reading);
    double slack = ROUNDING * (Math.abs(reading) + Math.abs(limit));
    if (excess <= -expanded + slack) {
      return Verdict.PASS;
    }
    if (excess <= slack) {
      return Verdict.CONDITIONAL_PASS;
    }
    return excess <= expanded + slack ? Verdict.CONDITIONAL_FAIL : Verdict.FAIL;
  }

  /**
   * The probability that the true value keeps the limit: {@code Phi((T - y)/u)}, 0 to 1.
   *
   * @param standard the standard uncertainty u = U/2, above zero
   */
  public static double probability(double reading, double standard, double limit, Side side) {
    Validity.positive("A standard uncertainty", standard, "");
    double margin = side == Side.AT_MOST ? limit - reading : reading - limit;
    return phi(finite(margin) / standard);
  }

  /** The probability that the true value lies between two limits. */
  public static double probabilityBetween(
      double reading, double standard, double low, double high) {
    return probability(reading, standard, high, Side.AT_MOST)
        - phi((finite(low) - reading) / standard);
  }

  /**
   * The standard normal distribution function by its series {@code 1/2 + f(x) (x + x^3/3 + x^5/(3
   * 5) + ...)}, G. Marsaglia, Evaluating the Normal Distribution, Journal of Statistical Software
   * 11(4), 2004: good to all digits that a probability shows; beyond 8 standard deviations 0 or 1.
   */
  static double phi(double x) {
    if (Math.abs(x) > 8) {
      return x > 0 ? 1 : 0;
    }
    double sum = x;
    double term = x;
    for (int i = 3; Math.abs(term) > 1e-17 * Math.abs(sum); i += 2) {
      term *= x * x / i;
      sum += term;
    }
    return 0.5 + sum * Math.exp(-0.5 * x * x) / Math.sqrt(2 * Math.PI);
  }

  private static double finite(double value) {
    if (Double.isFinite(value)) {
      return value;
    }
    throw Refused.because("The reading or its limit is no number.", "Give both as numbers.");
  }
}

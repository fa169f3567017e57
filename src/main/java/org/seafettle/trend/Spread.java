package org.seafettle.trend;

import java.util.List;
import org.apache.commons.statistics.distribution.TDistribution;
import org.seafettle.problem.Refused;

/**
 * Numbers without order, such as the hours of past seasons: their middle and how far they scatter.
 *
 * @param sorted the least first
 */
public record Spread(List<Double> sorted) {

  public Spread {
    if (sorted.isEmpty() || sorted.stream().anyMatch(v -> !Double.isFinite(v))) {
      throw Refused.because("There are no numbers here.", "Give one number at least.");
    }
    sorted = sorted.stream().sorted().toList();
  }

  public static Spread of(List<Double> values) {
    return new Spread(values);
  }

  /** The one in the middle, or half way between the two there. */
  public double median() {
    int half = sorted.size() / 2;
    return sorted.size() % 2 == 1
        ? sorted.get(half)
        : (sorted.get(half - 1) + sorted.get(half)) / 2;
  }

  public double mean() {
    return sorted.stream().mapToDouble(v -> v).sum() / sorted.size();
  }

  /**
   * The standard deviation of what they are a sample of, with {@code n - 1}.
   *
   * @throws Refused for a single number
   */
  public double standardDeviation() {
    if (sorted.size() < 2) {
      throw Refused.because("One number does not scatter.", "Give two numbers at least.");
    }
    double mean = mean();
    double squares = sorted.stream().mapToDouble(v -> (v - mean) * (v - mean)).sum();
    return Math.sqrt(squares / (sorted.size() - 1));
  }

  /**
   * Between what the next such number lies, if they scatter normally and follow no trend: {@code
   * mean +- t s sqrt(1 + 1/n)}, t of Student with n - 1 degrees of freedom.
   *
   * @param confidence between 0 and 1
   * @throws Refused for a single number
   */
  public Span next(double confidence) {
    double scatter = standardDeviation() * Math.sqrt(1 + 1.0 / sorted.size());
    return Span.about(mean(), student(sorted.size() - 1, confidence) * scatter);
  }

  /** How many standard deviations hold a share of the middle, by Student's distribution. */
  static double student(int degreesOfFreedom, double confidence) {
    if (!(confidence > 0 && confidence < 1)) {
      throw new IllegalArgumentException("a confidence of " + confidence);
    }
    return TDistribution.of(degreesOfFreedom).inverseCumulativeProbability((1 + confidence) / 2);
  }
}

package org.seafettle.trend;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.seafettle.problem.Refused;

/**
 * Whether readings go one way: {@code S} counts the pairs that rise less those that fall. Pairs of
 * one season and pairs of equal readings count nothing. Mann 1945 and Kendall 1975, with the
 * variance for ties in both from R. O. Gilbert, Statistical Methods for Environmental Pollution
 * Monitoring, 1987, chapters 16 and 17 (secondary).
 *
 * @param s the pairs that rise less those that fall
 * @param variance of S where there is no trend
 * @param p the probability of an S at least so far from zero, either way, where there is no trend:
 *     0 to 1; exact up to ten readings, ties and all, by counting every order of them; beyond ten
 *     from the normal distribution, as is usual
 */
public record MannKendall(int s, double variance, double p) {

  /** Beyond so many readings the normal distribution is good enough (Gilbert 1987). */
  private static final int MOST_COUNTED = 10;

  /**
   * The test of these readings.
   *
   * @throws Refused with fewer than three readings
   */
  public static MannKendall of(Course course) {
    var readings = course.readings();
    if (readings.size() < 3) {
      throw Refused.because(
          readings.size() + " readings cannot be tested for a trend.", "Give at least three.");
    }
    int s = score(readings);
    double variance = variance(readings);
    double p = readings.size() <= MOST_COUNTED ? counted(readings, s) : normal(z(s, variance));
    return new MannKendall(s, variance, p);
  }

  /** S over its standard deviation, one nearer to zero for continuity; 0 where S is. */
  public double z() {
    return z(s, variance);
  }

  private static double z(int s, double variance) {
    return s == 0 ? 0 : (s - Math.signum(s)) / Math.sqrt(variance);
  }

  private static double normal(double z) {
    return 2 * NormalDistribution.of(0, 1).survivalProbability(Math.abs(z));
  }

  private static int score(List<Course.Reading> readings) {
    int s = 0;
    for (var one : readings) {
      for (var other : readings) {
        s += one.at() < other.at() ? (int) Math.signum(other.value() - one.value()) : 0;
      }
    }
    return s;
  }

  private static double variance(List<Course.Reading> readings) {
    double n = readings.size();
    var inTime = Ties.of(readings, Course.Reading::at);
    var inValue = Ties.of(readings, Course.Reading::value);
    return (n * (n - 1) * (2 * n + 5) - inTime.five() - inValue.five()) / 18
        + inTime.threes() * inValue.threes() / (9 * n * (n - 1) * (n - 2))
        + inTime.pairs() * inValue.pairs() / (2 * n * (n - 1));
  }

  private static double counted(List<Course.Reading> readings, int s) {
    var orders = Orders.of(readings);
    return (double) orders.atLeast(Math.abs(s)) / orders.all();
  }

  /** Sums over the groups of t equal ones: t(t-1)(2t+5), t(t-1)(t-2), t(t-1). */
  private record Ties(double five, double threes, double pairs) {

    static Ties of(List<Course.Reading> readings, ToDoubleFunction<Course.Reading> what) {
      var groups =
          readings.stream()
              .collect(
                  Collectors.groupingBy(r -> what.applyAsDouble(r) + 0.0, Collectors.counting()))
              .values();
      return new Ties(
          groups.stream().mapToDouble(t -> t * (t - 1) * (2 * t + 5)).sum(),
          groups.stream().mapToDouble(t -> t * (t - 1) * (t - 2)).sum(),
          groups.stream().mapToDouble(t -> t * (t - 1)).sum());
    }
  }
}

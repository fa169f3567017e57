package org.seafettle.trend;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.seafettle.problem.Refused;

/**
 * The line that one wrong reading cannot turn: its slope is the median of the slopes of all pairs
 * of different seasons, its intercept the median of {@code y - slope x}. Theil 1950 and Sen 1968,
 * in Gilbert 1987, pp. 217-218 (secondary).
 *
 * @param slopes of all pairs, rising, in the reading's unit per season or per hour
 * @param slope their median
 * @param intercept at season or hour zero, in the reading's unit
 */
public record TheilSen(List<Double> slopes, double slope, double intercept) {

  public TheilSen {
    slopes = List.copyOf(slopes);
  }

  /**
   * The line through these readings.
   *
   * @throws Refused unless there are readings of two different seasons
   */
  public static TheilSen of(Course course) {
    var slopes = new ArrayList<Double>();
    for (var one : course.readings()) {
      for (var other : course.readings()) {
        if (one.at() < other.at()) {
          slopes.add((other.value() - one.value()) / (other.at() - one.at()));
        }
      }
    }
    if (slopes.isEmpty()) {
      throw Refused.because(
          "Readings of one season have no slope.", "Give readings of two seasons at least.");
    }
    slopes.sort(Double::compare);
    double slope = Spread.of(slopes).median();
    var rests = course.readings().stream().map(r -> r.value() - slope * r.at()).toList();
    return new TheilSen(slopes, slope, Spread.of(rests).median());
  }

  /** The line's value at a season or an hour. */
  public double at(double place) {
    return intercept + slope * place;
  }

  /**
   * Between which slopes the true one lies: the slopes of the pairs with the ranks {@link
   * #lowerRank} from below and from above, with straight lines between two of them, but never
   * beyond the outermost. From five seasons on those alone hold with 98 %.
   *
   * @param confidence above 0, at most 0.98
   */
  public Span limits(MannKendall test, double confidence) {
    double rank = Math.max(1, lowerRank(test, confidence));
    return new Span(ranked(rank), ranked(slopes.size() + 1 - rank));
  }

  /**
   * The rank of the lower limit's slope: {@code (N - z sd(S))/2} of N slopes.
   *
   * @param confidence above 0, at most 0.98
   */
  public double lowerRank(MannKendall test, double confidence) {
    if (!(confidence > 0 && confidence <= 0.98)) {
      throw new IllegalArgumentException("a confidence of " + confidence);
    }
    double z = NormalDistribution.of(0, 1).inverseCumulativeProbability((1 + confidence) / 2);
    return (slopes.size() - z * Math.sqrt(test.variance())) / 2;
  }

  private double ranked(double rank) {
    int below = Math.min((int) rank, slopes.size());
    int above = Math.min(below + 1, slopes.size());
    double low = slopes.get(below - 1);
    return low + (rank - below) * (slopes.get(above - 1) - low);
  }
}

package org.seafettle.trend;

import org.seafettle.problem.Refused;

/**
 * The straight line of least squares: {@code y = intercept + slope x}. Its intervals hold if the
 * readings scatter about it normally and equally; what all of them are wrong by together does not
 * show. Checked with the certified values of NIST StRD "Norris" (secondary).
 *
 * @param readings their number, 3 or more
 * @param meanPlace the mean of the seasons or hours
 * @param meanValue the mean of the readings
 * @param squares the sum of squares of the seasons or hours about their mean, above zero
 * @param slope in the reading's unit per season or per hour
 * @param residualSquares the sum of squares of the readings about the line
 */
public record Line(
    int readings,
    double meanPlace,
    double meanValue,
    double squares,
    double slope,
    double residualSquares) {

  /**
   * The line through these readings.
   *
   * @throws Refused with fewer than three readings, or all of one season
   */
  public static Line of(Course course) {
    var all = course.readings();
    if (all.size() < 3 || course.occasions() < 2) {
      throw Refused.because(
          "These readings do not fix a line and its scatter.",
          "Give at least three, of two different seasons or more.");
    }
    double x = all.stream().mapToDouble(Course.Reading::at).sum() / all.size();
    double y = all.stream().mapToDouble(Course.Reading::value).sum() / all.size();
    double xx = all.stream().mapToDouble(r -> (r.at() - x) * (r.at() - x)).sum();
    double xy = all.stream().mapToDouble(r -> (r.at() - x) * (r.value() - y)).sum();
    double slope = xy / xx;
    double rest =
        all.stream().mapToDouble(r -> r.value() - y - slope * (r.at() - x)).map(d -> d * d).sum();
    return new Line(all.size(), x, y, xx, slope, rest);
  }

  public double intercept() {
    return meanValue - slope * meanPlace;
  }

  /** The line's value at a season or an hour. */
  public double at(double place) {
    return meanValue + slope * (place - meanPlace);
  }

  /** The sum of squares that the line explains. */
  public double regressionSquares() {
    return slope * slope * squares;
  }

  /** The standard deviation of the readings about the line. */
  public double residualDeviation() {
    return Math.sqrt(residualSquares / (readings - 2));
  }

  public double slopeDeviation() {
    return residualDeviation() / Math.sqrt(squares);
  }

  public double interceptDeviation() {
    return residualDeviation() * Math.sqrt(1.0 / readings + meanPlace * meanPlace / squares);
  }

  /** The share of the readings' scatter that the line explains, 0 to 1; NaN if they are equal. */
  public double explained() {
    return regressionSquares() / (regressionSquares() + residualSquares);
  }

  /** The F statistic of the slope. */
  public double f() {
    return regressionSquares() * (readings - 2) / residualSquares;
  }

  /**
   * Between what the line itself lies at a place.
   *
   * @param confidence between 0 and 1
   */
  public Span lineWithin(double place, double confidence) {
    return Span.about(at(place), half(place, confidence, 0));
  }

  /**
   * Between what a single further reading at a place would lie: {@code +- t s sqrt(1 + 1/n + (x -
   * mean)^2/Sxx)}, t of Student with n - 2 degrees of freedom.
   *
   * @param confidence between 0 and 1
   */
  public Span readingWithin(double place, double confidence) {
    return Span.about(at(place), half(place, confidence, 1));
  }

  private double half(double place, double confidence, int oneReading) {
    double away = place - meanPlace;
    return scatter(confidence) * Math.sqrt(oneReading + 1.0 / readings + away * away / squares);
  }

  /** {@code t s}: how far a share of the readings lies from a line that is known exactly. */
  double scatter(double confidence) {
    return Spread.student(readings - 2, confidence) * residualDeviation();
  }
}

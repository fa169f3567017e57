package org.seafettle.trend;

/**
 * When a reading that keeps its course comes to a limit. An estimate for planning the next look,
 * never a promise that nothing fails before.
 */
public sealed interface Crossing {

  /** The confidence of the span; usual. */
  double CONFIDENCE = 0.95;

  /**
   * The limit is ahead.
   *
   * @param at the season or hour at which the line comes to it
   * @param earliest from when a single reading may lie beyond it; not before the last reading
   * @param latest from when every reading is expected beyond it
   */
  record Expected(double at, double earliest, double latest) implements Crossing {}

  /**
   * Nothing can be said.
   *
   * @param why the reason
   */
  record Unknown(Why why) implements Crossing {}

  /** Why nothing can be said of when a limit is reached. */
  enum Why {
    /** There are fewer than five seasons. */
    TOO_FEW,
    /** The readings scatter so much that the slope may as well be nothing. */
    NO_PROVEN_SLOPE,
    /** The line leads away from the limit, or came to it before the last reading. */
    NOT_AHEAD,
    /** It lies further ahead than the readings reach back: a program default. */
    TOO_FAR
  }

  /**
   * Where the least-squares line and both edges of its prediction interval come to the limit: the
   * roots of {@code (line - limit)^2 = t^2 s^2 (1 + 1/n + (x - mean)^2/Sxx)}, inverse prediction
   * after Fieller (from memory, unverified; it follows from the interval itself).
   *
   * @param limit in the unit of the readings
   */
  static Crossing of(Course course, double limit) {
    if (!course.enough()) {
      return new Unknown(Why.TOO_FEW);
    }
    var line = Line.of(course);
    double k = line.scatter(CONFIDENCE);
    double steep = line.slope() * line.slope() - k * k / line.squares();
    if (!(steep > 0)) {
      return new Unknown(Why.NO_PROVEN_SLOPE);
    }
    double first = course.readings().get(0).at();
    double last = course.readings().get(course.readings().size() - 1).at();
    double gap = line.meanValue() - limit;
    double at = line.meanPlace() - gap / line.slope();
    if (!(at > last)) {
      return new Unknown(Why.NOT_AHEAD);
    }
    if (at - last > last - first) {
      return new Unknown(Why.TOO_FAR);
    }
    double middle = line.meanPlace() - line.slope() * gap / steep;
    double half =
        k * Math.sqrt(gap * gap / line.squares() + steep * (1 + 1.0 / line.readings())) / steep;
    return new Expected(at, Math.max(last, middle - half), middle + half);
  }
}

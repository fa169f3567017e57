package org.seafettle.trend;

/** What may be said of a reading over the seasons. */
public sealed interface Trend {

  /** The most that chance may do for a trend to count as proven, both ways together; usual. */
  double CHANCE = 0.05;

  /**
   * Too few to speak of any trend, whichever way they go.
   *
   * @param seasons how many there are
   */
  record TooFew(int seasons) implements Trend {}

  /**
   * Chance alone would do as much.
   *
   * @param line the middle of the readings
   * @param test how it was told
   */
  record Unproven(TheilSen line, MannKendall test) implements Trend {}

  /**
   * The readings go one way.
   *
   * @param line the middle of the readings; its slope can be 0 where many readings are equal
   * @param test how it was told
   */
  record Proven(TheilSen line, MannKendall test) implements Trend {

    public boolean rising() {
      return test.s() > 0;
    }

    /** Between which slopes the true one lies, with 95 %. */
    public Span slopes() {
      return line.limits(test, 1 - CHANCE);
    }
  }

  /** Theil-Sen and Mann-Kendall, from five seasons on. */
  static Trend of(Course course) {
    if (!course.enough()) {
      return new TooFew(course.occasions());
    }
    var line = TheilSen.of(course);
    var test = MannKendall.of(course);
    return test.p() <= CHANCE ? new Proven(line, test) : new Unproven(line, test);
  }
}

package org.seafettle.trend;

/**
 * From a lowest to a highest value, both in the unit of what they bound.
 *
 * @param low the lower end
 * @param high the upper end, not below the lower
 */
public record Span(double low, double high) {

  public Span {
    if (!(low <= high)) {
      throw new IllegalArgumentException(low + " to " + high);
    }
  }

  /** As far below a middle as above it. */
  static Span about(double middle, double half) {
    return new Span(middle - half, middle + half);
  }

  /** Whether a value lies between the ends or on one. */
  public boolean contains(double value) {
    return low <= value && value <= high;
  }
}

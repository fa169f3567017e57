package org.seafettle.report;

import java.util.Locale;

/** Places values along a drawn scale. */
record Ruler(double least, double most) {

  static final Ruler INDEX = new Ruler(0, 100);

  String at(double value) {
    return written(place(value));
  }

  double place(double value) {
    double within = Math.max(least, Math.min(most, value));
    double length = Scale.WIDTH - 2 * Scale.MARGIN;
    return Scale.MARGIN + length * (within - least) / (most - least);
  }

  Scale.Band band(double from, double to, Scale.Tint tint, String label) {
    double left = place(from);
    double right = place(to);
    return new Scale.Band(
        written(left),
        written((left + right) / 2),
        written(right - left),
        tint.name().toLowerCase(Locale.ROOT),
        fits(label, right - left) ? label : "");
  }

  /** A limit with its value beneath, moved inwards where it would be cut off at an edge. */
  Scale.Tick tick(double value, String label) {
    return new Scale.Tick(at(value), written(middle(value, label)), label);
  }

  private double middle(double value, String label) {
    double half = half(label);
    return Math.max(half, Math.min(Scale.WIDTH - half, place(value)));
  }

  private static double half(String label) {
    return label.length() * 3.2;
  }

  /** Whether two limits can both have their values beneath. */
  boolean apart(double one, String its, double other, String theirs) {
    return Math.abs(middle(one, its) - middle(other, theirs)) >= half(its) + half(theirs) + 6;
  }

  /** A letter of that size takes less than six of the drawing's units; no label touches a limit. */
  private static boolean fits(String label, double width) {
    return label.length() * 5.6 + 8 < width;
  }

  static String written(double place) {
    return String.format(Locale.ROOT, "%.1f", place);
  }
}

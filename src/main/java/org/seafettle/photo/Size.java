package org.seafettle.photo;

/**
 * A picture's size.
 *
 * @param width in pixels, at least 1
 * @param height in pixels, at least 1
 */
public record Size(int width, int height) {

  public Size {
    if (width < 1 || height < 1) {
      throw new IllegalArgumentException("no picture is " + width + " x " + height);
    }
  }

  public int longestEdge() {
    return Math.max(width, height);
  }

  public int shortestEdge() {
    return Math.min(width, height);
  }

  public long pixels() {
    return (long) width * height;
  }

  /** The same picture lying on its side. */
  public Size onItsSide() {
    return new Size(height, width);
  }

  /**
   * The largest size of the same shape whose longest edge is at most {@code edge} pixels. A smaller
   * picture keeps its size: nothing is gained by enlarging it.
   */
  public Size fitting(int edge) {
    if (longestEdge() <= edge) {
      return this;
    }
    double scale = (double) edge / longestEdge();
    return new Size(scaled(width, scale), scaled(height, scale));
  }

  private static int scaled(int length, double scale) {
    return Math.max(1, (int) Math.round(length * scale));
  }

  @Override
  public String toString() {
    return width + " x " + height;
  }
}

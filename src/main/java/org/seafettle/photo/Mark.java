package org.seafettle.photo;

/**
 * A numbered mark on a picture.
 *
 * @param number as printed beside it, 1 to 99
 * @param x from the left edge of the upright picture, 0 to 1 of its width
 * @param y from the upper edge of the upright picture, 0 to 1 of its height
 * @param shape ring around the spot or arrow to it
 */
public record Mark(int number, double x, double y, Shape shape) {

  /** What is drawn. */
  public enum Shape {
    RING,
    ARROW
  }

  public Mark {
    if (number < 1 || number > 99) {
      throw new IllegalArgumentException("a mark's number is 1 to 99, not " + number);
    }
    if (!(x >= 0 && x <= 1 && y >= 0 && y <= 1)) {
      throw new IllegalArgumentException("a mark off the picture: " + x + ", " + y);
    }
  }

  public static Mark ring(int number, double x, double y) {
    return new Mark(number, x, y, Shape.RING);
  }

  public static Mark arrow(int number, double x, double y) {
    return new Mark(number, x, y, Shape.ARROW);
  }
}

package org.seafettle.photo;

/**
 * How a stored picture must be turned to stand upright: the tag Orientation (0x0112) of EXIF (CIPA
 * DC-008), values 1 to 8.
 */
public enum Orientation {
  UPRIGHT(1, false, false, false),
  MIRRORED(2, false, true, false),
  UPSIDE_DOWN(3, false, true, true),
  MIRRORED_UPSIDE_DOWN(4, false, false, true),
  TRANSPOSED(5, true, false, false),
  TURN_RIGHT(6, true, false, true),
  TRANSVERSE(7, true, true, true),
  TURN_LEFT(8, true, true, false);

  private final int tag;
  private final boolean swapsEdges;
  private final boolean fromRight;
  private final boolean fromBottom;

  Orientation(int tag, boolean swapsEdges, boolean fromRight, boolean fromBottom) {
    this.tag = tag;
    this.swapsEdges = swapsEdges;
    this.fromRight = fromRight;
    this.fromBottom = fromBottom;
  }

  /** The value in EXIF, 1 to 8. */
  public int tag() {
    return tag;
  }

  /** A value outside 1 to 8 says nothing, so the picture is left as it is. */
  public static Orientation of(int tag) {
    return tag >= 1 && tag <= 8 ? values()[tag - 1] : UPRIGHT;
  }

  /** The size of the upright picture. */
  public Size upright(Size stored) {
    return swapsEdges ? stored.onItsSide() : stored;
  }

  /** Turns pixels stored row by row; the same array where there is nothing to turn. */
  int[] upright(int[] stored, Size size) {
    if (this == UPRIGHT) {
      return stored;
    }
    var turned = upright(size);
    var pixels = new int[stored.length];
    for (int y = 0, i = 0; y < turned.height(); y++) {
      for (int x = 0; x < turned.width(); x++, i++) {
        int column = swapsEdges ? y : x;
        int row = swapsEdges ? x : y;
        column = fromRight ? size.width() - 1 - column : column;
        row = fromBottom ? size.height() - 1 - row : row;
        pixels[i] = stored[row * size.width() + column];
      }
    }
    return pixels;
  }
}

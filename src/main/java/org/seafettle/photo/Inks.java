package org.seafettle.photo;

import java.awt.image.BufferedImage;
import java.awt.image.Raster;

/**
 * Printing inks without a profile as colours of light: each ink takes away its part of the light,
 * and black its part of all three. Plain arithmetic, so that the colours are the same everywhere; a
 * press would print others.
 */
final class Inks {

  private static final int YCCK = 2;

  private Inks() {}

  /**
   * @param raster the four components as stored: 255 is no ink
   * @param transform what Adobe's segment says; 2 for luminance and colour differences instead of
   *     cyan, magenta and yellow
   */
  static BufferedImage srgb(Raster raster, int transform) {
    int width = raster.getWidth();
    var image = new BufferedImage(width, raster.getHeight(), BufferedImage.TYPE_INT_RGB);
    var row = new int[width * 4];
    var colours = new int[width];
    for (int y = 0; y < raster.getHeight(); y++) {
      raster.getPixels(raster.getMinX(), raster.getMinY() + y, width, 1, row);
      for (int x = 0; x < width; x++) {
        colours[x] = light(row, 4 * x, transform == YCCK);
      }
      image.setRGB(0, y, width, 1, colours, 0, width);
    }
    return image;
  }

  private static int light(int[] row, int at, boolean differences) {
    int paper = row[at + 3];
    return differences
        ? fromDifferences(row[at], row[at + 1] - 128, row[at + 2] - 128, paper)
        : rgb(row[at], row[at + 1], row[at + 2], paper);
  }

  /** ITU-T T.871, section 7; what comes out is the ink, so the light is what it leaves. */
  private static int fromDifferences(int y, int cb, int cr, int paper) {
    return rgb(
        255 - clipped(y + 1.402 * cr),
        255 - clipped(y - 0.344136 * cb - 0.714136 * cr),
        255 - clipped(y + 1.772 * cb),
        paper);
  }

  private static int clipped(double value) {
    return (int) Math.max(0, Math.min(255, Math.round(value)));
  }

  private static int rgb(int red, int green, int blue, int paper) {
    return red * paper / 255 << 16 | green * paper / 255 << 8 | blue * paper / 255;
  }
}

package org.seafettle.photo;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.util.HashSet;
import java.util.List;

/** Scales pictures, turns them upright and draws marks on them. */
final class Darkroom {

  private Darkroom() {}

  /**
   * @param decoded the picture as stored
   * @param size what it is scaled down to before it is turned
   */
  static BufferedImage upright(BufferedImage decoded, Size size, Orientation orientation) {
    var stored = scaled(decoded, size);
    if (orientation == Orientation.UPRIGHT) {
      return stored;
    }
    var picture = blank(orientation.upright(size));
    int[] pixels = orientation.upright(pixels(stored), size);
    System.arraycopy(pixels, 0, pixels(picture), 0, pixels.length);
    return picture;
  }

  /** In steps of at most a half, so that every pixel has its part in the result. */
  private static BufferedImage scaled(BufferedImage image, Size wanted) {
    int width = Math.max(wanted.width(), (image.getWidth() + 1) / 2);
    int height = Math.max(wanted.height(), (image.getHeight() + 1) / 2);
    var step = blank(new Size(width, height));
    var pen = step.createGraphics();
    pen.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    pen.drawImage(image, 0, 0, width, height, null);
    pen.dispose();
    return width == wanted.width() && height == wanted.height() ? step : scaled(step, wanted);
  }

  static void mark(BufferedImage picture, List<Mark> marks) {
    Graphics2D pen = picture.createGraphics();
    var size = new Size(picture.getWidth(), picture.getHeight());
    marks.forEach(mark -> new MarkDrawing(mark, size).draw(pen));
    pen.dispose();
  }

  /** Whether a picture has at most so many different colours. */
  static boolean hasFewColours(BufferedImage picture, int most) {
    var seen = new HashSet<Integer>();
    var row = new int[picture.getWidth()];
    for (int y = 0; y < picture.getHeight() && seen.size() <= most; y++) {
      picture.getRGB(0, y, row.length, 1, row, 0, row.length);
      int last = row[0] + 1;
      for (int x = 0; x < row.length && seen.size() <= most; x++) {
        if (row[x] != last) {
          last = row[x];
          seen.add(last);
        }
      }
    }
    return seen.size() <= most;
  }

  private static BufferedImage blank(Size size) {
    return new BufferedImage(size.width(), size.height(), BufferedImage.TYPE_INT_RGB);
  }

  private static int[] pixels(BufferedImage image) {
    return ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
  }
}

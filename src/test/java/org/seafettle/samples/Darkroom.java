package org.seafettle.samples;

import java.awt.Rectangle;
import java.awt.image.BufferedImage;

/** What makes a drawing look taken: the lamp, the dark corners, a little grain, and our band. */
final class Darkroom {

  private static final Lettering SMALL = Lettering.of("Roboto-Regular.ttf");
  static final String BAND = "drawn for demonstration – no real boat or engine";

  private Darkroom() {}

  static BufferedImage developed(Canvas canvas) {
    light(canvas);
    band(canvas);
    var image = new BufferedImage(canvas.width, canvas.height, BufferedImage.TYPE_INT_RGB);
    var pixels = new int[canvas.width * canvas.height];
    for (int i = 0; i < pixels.length; i++) {
      for (int c = 0; c < 3; c++) {
        pixels[i] = pixels[i] << 8 | toned(canvas.rgb[c][i]);
      }
    }
    image.setRGB(0, 0, canvas.width, canvas.height, pixels, 0, canvas.width);
    return image;
  }

  /** Highlights roll off instead of being cut. */
  private static int toned(double value) {
    double v = value <= 0.8 ? value : 0.8 + 0.2 * (1 - 1 / (1 + (value - 0.8) / 0.2));
    return (int) Math.round(255 * Math.min(1, Math.max(0, v)));
  }

  private static void light(Canvas canvas) {
    double lampX = canvas.width * (0.38 + 0.2 * canvas.random.nextDouble());
    double lampY = canvas.height * (0.36 + 0.16 * canvas.random.nextDouble());
    double reach = Math.max(canvas.width, canvas.height);
    var whole = new Rectangle(canvas.width, canvas.height);
    float[] grain = new Noise(canvas.random.nextInt(), 5).over(whole).values();
    for (int y = 0; y < canvas.height; y++) {
      for (int x = 0; x < canvas.width; x++) {
        double dx = (x - lampX) / reach;
        double dy = (y - lampY) / reach;
        double lamp = 1.10 - 0.95 * (dx * dx + dy * dy);
        int i = y * canvas.width + x;
        double speck = 0.022 * (grain[i] - 0.5);
        canvas.rgb[0][i] = (float) (canvas.rgb[0][i] * lamp * 1.01 + speck);
        canvas.rgb[1][i] = (float) (canvas.rgb[1][i] * lamp + speck);
        canvas.rgb[2][i] = (float) (canvas.rgb[2][i] * lamp * 0.985 + speck);
      }
    }
  }

  private static void band(Canvas canvas) {
    canvas.tilt(0, 0);
    int deep = 38;
    canvas.paint(
        Shapes.box(0, canvas.height - deep, canvas.width, deep), Coat.of(0x10161c).opacity(0.62));
    canvas.paint(SMALL.outline(BAND, 23, 20, canvas.height - 12), Coat.of(0xe9edf0).opacity(0.92));
  }
}

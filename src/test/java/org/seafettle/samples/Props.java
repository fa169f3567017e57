package org.seafettle.samples;

import static org.seafettle.samples.Shapes.*;

import java.awt.Shape;

/** What stands about in more than one picture. */
final class Props {

  static final Lettering PLAIN = Lettering.of("Roboto-Regular.ttf");
  static final Lettering BOLD = Lettering.of("Roboto-Bold.ttf");

  private Props() {}

  static void cloth(Canvas c) {
    c.paint(c.everything(), Coat.of(0xe4e3dd).rough(46, 300).mottled(0.10));
    for (int i = 0; i < 5; i++) {
      double y = c.height * (0.1 + 0.2 * i) + 60 * c.random.nextGaussian();
      double bend = 90 * c.random.nextGaussian();
      Shape fold = run(16, -60, y, c.width * 0.5, y + bend, c.width + 60, y + 50);
      c.paint(fold, Coat.of(0xb9b7b0).opacity(0.35).soft(22));
      c.paint(moved(fold, -12, -24), Coat.of(0xffffff).opacity(0.45).soft(20));
    }
    c.defocus(2);
  }

  static void engineSide(Canvas c, int paint) {
    c.paint(c.everything(), Coat.of(0x1c2024).rough(10, 90).mottled(0.3));
    c.paint(
        box(-100, c.height * 0.18, c.width + 200, c.height * 0.62, 40), Coat.castIron(paint, 26));
    for (int i = 0; i < 6; i++) {
      double x = c.width * (0.04 + 0.18 * i);
      c.paint(box(x, c.height * 0.25, 70, c.height * 0.48, 20), Coat.castIron(paint, 16));
      bolt(c, x + 35, c.height * 0.22, 26);
    }
    c.put(
        run(
            64,
            -40,
            c.height * 0.93,
            c.width * 0.4,
            c.height * 0.86,
            c.width + 40,
            c.height * 0.95),
        Coat.rubber(0x1a1b1d, 20),
        20);
    c.defocus(11);
  }

  static void gelcoat(Canvas c, int rgb) {
    c.paint(c.everything(), Coat.of(rgb).rough(14, 240).mottled(0.12));
    c.paint(c.everything(), Coat.of(rgb).opacity(0.5).rough(2.2, 16).mottled(0.10));
  }

  static void bench(Canvas c) {
    c.paint(c.everything(), Coat.of(0x8c6a47).mottled(0.25));
    for (int i = -2; i < 9; i++) {
      double y = i * 170 + 20;
      c.paint(
          box(-c.width, y, 3.0 * c.width, 164, 4),
          Coat.of(0x9a7550 + 0x050403 * c.random.nextInt(4)).round(4).mottled(0.25));
      for (int k = 0; k < 9; k++) {
        double g = y + 12 + 150 * c.random.nextDouble();
        double s = 10 * c.random.nextGaussian();
        c.paint(
            run(2.5, -60, g, c.width * 0.3, g + s, c.width * 0.7, g - s, c.width + 60, g + s),
            Coat.of(0x5a3f26).opacity(0.35).soft(2));
      }
    }
    c.defocus(4);
  }

  static void sea(Canvas c, double horizon) {
    c.paint(c.everything(), Coat.of(0xb9cdd9).mottled(0.10).rough(0, 400));
    c.paint(
        box(-200, horizon - 46, c.width + 400, 60), Coat.of(0x6f8077).soft(12).ragged(0.5, 160));
    c.paint(
        box(-200, horizon, c.width + 400, c.height), Coat.of(0x4d7382).rough(30, 130).mottled(0.2));
    for (int i = 0; i < 46; i++) {
      double d = c.random.nextDouble();
      double y = horizon + 14 + d * d * (c.height - horizon);
      double x = c.width * c.random.nextDouble();
      double w = 40 + 240 * d;
      c.paint(
          run(3 + 9 * d, x - w, y, x, y - 5, x + w, y + 3),
          Coat.of(0xcfe0e6).opacity(0.35).soft(4));
    }
    c.defocus(7);
  }

  static void bolt(Canvas c, double x, double y, double r) {
    c.put(disc(x, y, r * 1.35), Coat.steel(r * 0.2), r * 0.35);
    c.put(hexagon(x, y, r), Coat.steel(r * 0.3), r * 0.3);
  }

  /** A worm-drive clamp across a horizontal hose. */
  static void clamp(Canvas c, double x, double y, double tall, boolean rusty) {
    Shape strip = box(x - 22, y - tall / 2 - 5, 44, tall + 10, 5);
    c.put(strip, Coat.steel(12), 9);
    for (int i = 0; i < 7; i++) {
      c.paint(
          box(x - 9, y - tall / 2 + 10 + i * (tall - 20) / 7, 18, 5),
          Coat.of(0x4a4f54).opacity(0.7));
    }
    c.put(box(x - 30, y - 22, 60, 44, 6), Coat.steel(8), 8);
    c.put(disc(x, y, 15), Coat.steel(6), 3);
    c.paint(box(x - 13, y - 3, 26, 6), Coat.of(0x2a2d30));
    if (rusty) {
      c.paint(strip, Coat.stain(0x8a4317, 0.85, 0.75));
      c.paint(box(x - 32, y - 24, 64, 48, 8), Coat.stain(0x7a3510, 0.85, 0.8));
    }
  }

  /** A thumb and a finger in a blue glove that hold something at the point, from the right. */
  static void glove(Canvas c, double x, double y) {
    Coat blue = Coat.of(0x3f74b5).round(46).gloss(0.18).rough(2.4, 46).mottled(0.10);
    c.put(run(170, x + 40, y + 74, x + 260, y + 160, x + 560, y + 250), blue, 26);
    c.put(run(150, x, y - 30, x + 240, y - 120, x + 540, y - 130), blue, 26);
  }

  static void write(
      Canvas c, String text, double size, double x, double y, int rgb, double opacity) {
    c.paint(PLAIN.outline(text, size, x, y), Coat.of(rgb).opacity(opacity));
  }
}

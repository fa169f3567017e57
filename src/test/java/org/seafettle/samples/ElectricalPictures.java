package org.seafettle.samples;

import static org.seafettle.samples.Shapes.*;

import java.awt.Shape;
import java.awt.geom.Path2D;
import java.util.function.Consumer;

/** What is photographed of the electrical system. */
final class ElectricalPictures {

  private static final int[] SEGMENTS = {
    0x3f, 0x06, 0x5b, 0x4f, 0x66, 0x6d, 0x7d, 0x07, 0x7f, 0x6f
  };

  private ElectricalPictures() {}

  /** A battery from above, its terminals clean or green. */
  static Consumer<Canvas> battery(boolean green) {
    return c -> {
      Props.gelcoat(c, 0xa9a79d);
      c.defocus(8);
      c.tilt(3, -0.06);
      c.put(box(200, 330, 1200, 700, 26), Coat.plastic(0x1d2023, 24), 70);
      c.put(box(170, 250, 1260, 560, 26), Coat.plastic(0x2a2d31, 26), 24);
      c.put(box(420, 390, 760, 240, 20), Coat.plastic(0x34383c, 14), 8);
      for (int i = 0; i < 6; i++) {
        c.put(disc(490 + i * 124, 510, 44), Coat.plastic(0x202326, 12), 6);
        c.paint(box(466 + i * 124, 505, 48, 10), Coat.of(0x0e0f10));
      }
      c.put(box(420, 680, 760, 110, 10), Coat.of(0xd8d3c0).round(3), 3);
      c.paint(Props.BOLD.outline("12 V   90 Ah   760 A (EN)", 54, 450, 752), Coat.of(0x20262b));
      terminal(c, 290, 0xb02a2a, "+", green);
      terminal(c, 1310, 0x23262a, "–", false);
      c.put(box(-80, 880, 1800, 84, 4), Coat.rubber(0x3c4248, 6), 14);
      c.tilt(0, 0);
    };
  }

  private static void terminal(Canvas c, double x, int cable, String sign, boolean green) {
    c.paint(Props.BOLD.centred(sign, 90, x, 330), Coat.of(0xc9ced2));
    c.put(
        run(
            74,
            x,
            480,
            x + (x < 800 ? -60 : 60),
            300,
            x + (x < 800 ? -200 : 200),
            80,
            x + (x < 800 ? -260 : 260),
            -60),
        Coat.rubber(cable, 24).gloss(0.3),
        34);
    c.put(box(x - 80, 430, 160, 180, 30), Coat.of(0x9ba1a6).round(22).gloss(0.4).metal(0.3), 22);
    c.put(disc(x, 500, 58), Coat.of(0xadb2b5).round(14).gloss(0.4).metal(0.3), 16);
    Props.bolt(c, x, 585, 24);
    if (green) {
      for (int i = 0; i < 5; i++) {
        c.paint(
            disc(x + 56 * c.random.nextGaussian(), 470 + 60 * c.random.nextGaussian(), 46 + 9 * i),
            Coat.of(i % 2 == 0 ? 0x5fae93 : 0xa9d6c6)
                .opacity(0.95)
                .soft(26)
                .ragged(0.95, 34)
                .round(12)
                .rough(9, 12)
                .mottled(0.3));
      }
      c.paint(
          run(54, x, 400, x - 50, 310, x - 110, 215),
          Coat.of(0x57a58b).opacity(0.8).soft(12).ragged(1, 24).rough(6, 10));
    }
  }

  /** A multimeter that shows a reading. */
  static Consumer<Canvas> meter(String reading, String unit) {
    return c -> {
      Props.bench(c);
      c.tilt(-4, 0);
      c.put(
          run(34, 470, 1500, 420, 1330, 250, 1260, 60, 1400, -60, 1700),
          Coat.plastic(0xa82020, 11),
          26);
      c.put(
          run(34, 730, 1500, 780, 1330, 960, 1280, 1120, 1420, 1260, 1650),
          Coat.plastic(0x17191b, 11),
          26);
      c.put(box(240, 110, 720, 1330, 90), Coat.plastic(0xd7a11e, 46), 70);
      c.put(box(280, 150, 640, 1250, 64), Coat.plastic(0x2a2e32, 22), 8);
      c.put(box(330, 220, 540, 330, 18), Coat.plastic(0x17191b, 12), 4);
      c.paint(box(350, 240, 500, 290, 10), Coat.of(0xb6c3a6).mottled(0.06));
      Shape figures =
          digits(reading, 372 + 112 * (4 - reading.replace(".", "").length()), 300, 170);
      c.paint(moved(figures, 5, 6), Coat.of(0x8c997e).opacity(0.6).soft(3));
      c.paint(figures, Coat.of(0x161b15));
      c.paint(Props.BOLD.outline(unit, 50, 775, 514), Coat.of(0x161b15));
      c.paint(Props.PLAIN.outline("DC", 36, 372, 514), Coat.of(0x161b15));
      c.paint(polygon(350, 240, 620, 240, 470, 530, 350, 530), Coat.of(0xffffff).opacity(0.10));
      c.put(disc(600, 880, 190), Coat.plastic(0x1d2023, 26), 14);
      c.put(turned(box(572, 700, 56, 360, 24), 52, 600, 880), Coat.plastic(0x3a3f44, 18), 16);
      c.paint(turned(box(595, 712, 10, 60, 4), 52, 600, 880), Coat.of(0xf1f3f4));
      String[] scale = {"OFF", "V~", "V", "A", "Ω", "mA"};
      for (int i = 0; i < scale.length; i++) {
        double a = StrictMath.toRadians(-158 + i * 60);
        c.paint(
            Props.BOLD.centred(
                scale[i], 34, 600 + 242 * StrictMath.cos(a), 892 + 242 * StrictMath.sin(a)),
            Coat.of(0xdfe3e6));
      }
      for (double x : new double[] {430, 600, 770}) {
        c.put(ring(x, 1270, 26, 48), Coat.plastic(x == 430 ? 0xa82020 : 0x454a4f, 10), 6);
        c.paint(disc(x, 1270, 26), Coat.of(0x050505));
      }
      c.put(box(390, 1270, 80, 240, 26), Coat.plastic(0xa82020, 24), 18);
      c.put(box(690, 1270, 80, 240, 26), Coat.plastic(0x1b1d1f, 24), 18);
      c.tilt(0, 0);
    };
  }

  /** Digits of seven bars. */
  static Shape digits(String text, double x, double y, double tall) {
    var all = new Path2D.Double();
    double pen = x;
    for (char sign : text.toCharArray()) {
      if (sign == '.') {
        all.append(box(pen - tall * 0.10, y + tall * 0.92, tall * 0.09, tall * 0.09), false);
      } else if (sign == '-') {
        all.append(bar(pen, y, tall, 6), false);
        pen += tall * 0.62;
      } else {
        for (int bar = 0; bar < 7; bar++) {
          if ((SEGMENTS[sign - '0'] >> bar & 1) == 1) {
            all.append(bar(pen, y, tall, bar), false);
          }
        }
        pen += tall * 0.66;
      }
    }
    return all;
  }

  private static Shape bar(double x, double y, double tall, int which) {
    double w = tall * 0.48;
    double t = tall * 0.135;
    double half = tall / 2;
    return switch (which) {
      case 0 -> flat(x, y, w, t);
      case 1 -> upright(x + w, y, half, t);
      case 2 -> upright(x + w, y + half, half, t);
      case 3 -> flat(x, y + tall, w, t);
      case 4 -> upright(x, y + half, half, t);
      case 5 -> upright(x, y, half, t);
      case 6 -> flat(x, y + half, w, t);
      default -> throw new IllegalArgumentException("a digit has seven bars, not " + which);
    };
  }

  private static Shape flat(double x, double y, double w, double t) {
    double h = t / 2;
    double tip = t * 0.16;
    double from = x + tip;
    double to = x + w - tip;
    return polygon(from, y, from + h, y - h, to - h, y - h, to, y, to - h, y + h, from + h, y + h);
  }

  private static Shape upright(double x, double y, double l, double t) {
    double h = t / 2;
    double tip = t * 0.16;
    double from = y + tip;
    double to = y + l - tip;
    return polygon(x, from, x + h, from + h, x + h, to - h, x, to, x - h, to - h, x - h, from + h);
  }

  /** The main fuse in its holder, with its cover off. */
  static Consumer<Canvas> fuse(boolean corroded) {
    return c -> {
      Props.gelcoat(c, 0xd4d1c6);
      c.defocus(4);
      c.tilt(2, 0.05);
      c.put(run(86, -80, 760, 200, 640, 460, 600), Coat.rubber(0xa52424, 30).gloss(0.3), 36);
      c.put(run(86, 1140, 600, 1380, 640, 1700, 800), Coat.rubber(0xa52424, 30).gloss(0.3), 36);
      c.put(box(330, 400, 940, 400, 40), Coat.plastic(0x23272b, 30), 46);
      c.put(box(380, 450, 840, 300, 24), Coat.plastic(0x15181a, 12), 4);
      for (double x : new double[] {500, 1100}) {
        c.put(
            box(x - 100, 520, 200, 160, 12), Coat.of(0xc7ccd0).round(12).gloss(0.5).metal(0.4), 14);
        Props.bolt(c, x, 600, 46);
      }
      c.put(box(560, 545, 480, 110, 12), Coat.of(0xe0e4e6).opacity(0.8).round(16).gloss(0.6), 16);
      c.paint(
          cutRun(40, 570, 600, 700, 600, 740, 582, 860, 582, 900, 600, 1030, 600),
          Coat.of(0xc79a3e).round(6).gloss(0.4));
      c.paint(Props.BOLD.centred("100 A", 50, 800, 640), Coat.of(0x2b2f33));
      if (corroded) {
        c.paint(
            disc(500, 600, 120),
            Coat.of(0x62ab92).opacity(0.95).soft(26).ragged(0.9, 34).round(10).rough(8, 12));
        c.paint(disc(1110, 650, 80), Coat.stain(0x8a4a20, 0.8, 0.8));
      }
      c.tilt(0, 0);
    };
  }

  /** The emergency stop with its lanyard at the helm. */
  static Consumer<Canvas> lanyardStop() {
    return c -> {
      Props.gelcoat(c, 0x3b4046);
      c.defocus(5);
      c.put(box(160, 180, 1280, 720, 60), Coat.plastic(0x24282c, 30), 30);
      c.put(disc(560, 500, 200), Coat.plastic(0x15181a, 24), 26);
      c.paint(Props.BOLD.centred("RUN", 46, 560, 372), Coat.of(0xe9edf0));
      c.paint(Props.BOLD.centred("STOP", 46, 560, 668), Coat.of(0xe25b5b));
      c.put(disc(560, 500, 110), Coat.plastic(0xc22121, 40), 22);
      c.put(box(470, 470, 180, 70, 26), Coat.plastic(0xd23030, 20), 16);
      var xy = new double[2 * 60];
      for (int i = 0; i < 60; i++) {
        double t = i / 59.0;
        xy[2 * i] = 640 + t * 640 + 44 * StrictMath.cos(i * 1.25);
        xy[2 * i + 1] = 520 + 330 * t * t + 52 * StrictMath.sin(i * 1.25);
      }
      c.put(run(24, xy), Coat.plastic(0xcf2626, 9), 20);
      c.put(box(1250, 820, 190, 80, 30), Coat.steel(16), 20);
      c.put(disc(1150, 330, 90), Coat.steel(18), 18);
      c.put(box(1136, 260, 28, 140, 10), Coat.of(0xb0903f).round(8).metal(0.3).gloss(0.4), 10);
    };
  }
}

package org.seafettle.samples;

import static org.seafettle.samples.Shapes.*;

import java.awt.Shape;
import java.util.function.Consumer;

/** What is photographed of cooling and exhaust. */
final class CoolingPictures {

  static final int PINK = 0xd46a78;
  static final int GREEN = 0x5fae54;

  private CoolingPictures() {}

  /** Water from the telltale of an outboard: a firm jet, or a dribble. */
  static Consumer<Canvas> telltale(boolean strong, int cowl) {
    return c -> {
      Props.sea(c, 470);
      Shape side = polygon(-80, -60, 860, -60, 900, 210, 850, 700, 760, 930, 700, 1700, -80, 1700);
      c.put(side, Coat.plastic(cowl, 90).gloss(0.5), 40);
      c.put(run(26, -40, 690, 400, 730, 846, 700), Coat.rubber(0x16181a, 8), 8);
      c.paint(polygon(-60, 300, 770, 330, 760, 372, -60, 350), Coat.of(0xd7dde1).opacity(0.75));
      c.paint(polygon(-60, 390, 740, 402, 734, 420, -60, 412), Coat.of(0x9b2335).opacity(0.8));
      c.put(ring(700, 830, 15, 30), Coat.plastic(0x2b2f33, 8), 6);
      c.paint(disc(700, 830, 15), Coat.of(0x050607));
      if (strong) {
        Shape jet = run(24, 704, 830, 860, 838, 1010, 930, 1100, 1130, 1130, 1420);
        c.paint(moved(jet, 4, 5), Coat.of(0xdfeef4).opacity(0.55).soft(9));
        c.paint(jet, Coat.of(0xe6f2f7).opacity(0.9).soft(2).round(10).gloss(0.8).mottled(0.25));
        spray(c, 1130, 1430, 130, 90);
        spray(c, 1060, 1040, 60, 26);
      } else {
        c.paint(
            run(13, 704, 834, 722, 900, 716, 1100, 726, 1320, 716, 1700),
            Coat.of(0xd9e8ee).opacity(0.8).ragged(0.35, 60).soft(4).round(6).gloss(0.7));
        for (int i = 0; i < 7; i++) {
          c.paint(
              drop(
                  724 + 10 * c.random.nextGaussian(),
                  960 + i * 90 + 20 * c.random.nextGaussian(),
                  9,
                  24),
              Coat.of(0xe9f3f7).opacity(0.85).round(5).gloss(0.8));
        }
      }
    };
  }

  private static void spray(Canvas c, double x, double y, double reach, int drops) {
    for (int i = 0; i < drops; i++) {
      double r = 2 + 7 * c.random.nextDouble();
      c.paint(
          disc(
              x + reach * c.random.nextGaussian() * 0.6,
              y + reach * c.random.nextGaussian() * 0.35,
              r),
          Coat.of(0xf2f9fc).opacity(0.7).soft(2));
    }
  }

  /** An impeller on a cloth: its vanes bent one way for good, one of them gone where told so. */
  static Consumer<Canvas> impeller(boolean vaneMissing) {
    return c -> {
      Props.cloth(c);
      c.tilt(-4, 0.04, 1.12);
      double x = 780;
      double y = 590;
      Shape star = disc(x, y, 196);
      for (int i = 0; i < 7; i++) {
        if (vaneMissing && i == 2) {
          star =
              both(
                  star,
                  turned(
                      polygon(
                          x - 40, y - 170, x + 44, y - 170, x + 30, y - 214, x + 6, y - 204, x - 20,
                          y - 226),
                      i * 360 / 7.0,
                      x,
                      y));
        } else {
          Shape vane =
              both(
                  cutRun(84, x, y - 140, x + 14, y - 240, x + 60, y - 300, x + 132, y - 336),
                  disc(x + 134, y - 334, 46));
          star = both(star, turned(vane, i * 360 / 7.0, x, y));
        }
      }
      c.put(star, Coat.rubber(0x22252a, 20).gloss(0.22), 40);
      for (int i = 0; i < 7; i++) {
        if (!(vaneMissing && i == 2)) {
          c.paint(
              turned(crack(c.random, x - 34, y - 216, x + 30, y - 232, 9), i * 360 / 7.0, x, y),
              Coat.of(0x060606).opacity(0.9));
        }
      }
      c.paint(ring(x, y, 118, 150), Coat.rubber(0x2b2f34, 8));
      c.put(disc(x, y, 100), Coat.of(0xb98a3c).round(12).gloss(0.5).metal(0.35), 6);
      c.paint(disc(x, y, 62), Coat.of(0x15120c));
      c.paint(box(x - 16, y - 84, 32, 40), Coat.of(0x15120c));
      if (vaneMissing) {
        c.put(
            turned(polygon(1250, 900, 1370, 880, 1390, 930, 1320, 960, 1260, 950), 12, 1300, 920),
            Coat.rubber(0x22252a, 14),
            18);
      }
      c.tilt(0, 0);
    };
  }

  /** A wet exhaust elbow with its hose: surface rust, or trails from a seam that weeps. */
  static Consumer<Canvas> elbow(boolean trails) {
    return c -> {
      Props.engineSide(c, 0x4c5a5e);
      Shape bend = cutRun(300, 140, 1000, 180, 560, 470, 350, 900, 372);
      c.put(bend, Coat.castIron(0x6d7478, 84), 50);
      c.put(box(-10, 900, 320, 90, 18), Coat.castIron(0x646b70, 20), 24);
      Props.bolt(c, 30, 940, 30);
      Props.bolt(c, 270, 940, 30);
      c.put(cutRun(110, 520, -40, 545, 130, 570, 240), Coat.rubber(0x191b1d, 30), 26);
      c.put(box(500, 205, 150, 40, 14), Coat.castIron(0x70777b, 14), 10);
      c.put(cutRun(344, 870, 372, 1200, 384, 1700, 470), Coat.rubber(0x1d1f21, 100), 44);
      for (int i = 0; i < 6; i++) {
        c.paint(
            run(6, 1130 + i * 80, 210, 1120 + i * 80, 390, 1104 + i * 80, 570),
            Coat.of(0x0b0c0d).opacity(0.5).soft(4));
      }
      Props.clamp(c, 920, 372, 348, trails);
      Props.clamp(c, 1030, 376, 348, trails);
      c.paint(
          within(bend, run(trails ? 230 : 150, 170, 900, 230, 580, 480, 400, 840, 400)),
          Coat.stain(0x8f4a1c, trails ? 0.75 : 0.5, 0.95).ragged(0.95, 90).rough(2, 10));
      c.paint(
          within(bend, run(200, 150, 960, 200, 560, 470, 330, 880, 360)),
          Coat.stain(0x5e2f12, 0.5, 0.95).ragged(1, 30));
      if (trails) {
        for (int i = 0; i < 9; i++) {
          double x = 430 + 46 * i + 12 * c.random.nextGaussian();
          double y = 470 + 18 * c.random.nextGaussian();
          double l = 160 + 220 * c.random.nextDouble();
          c.paint(
              run(18, x, y, x + 5, y + l * 0.5, x - 4, y + l),
              Coat.of(0xa3501a).opacity(0.75).soft(9));
          c.paint(run(8, x, y, x + 5, y + l * 0.4), Coat.of(0x4e1f08).opacity(0.7).soft(4));
        }
        c.paint(
            box(600, 470, 260, 70, 30),
            Coat.of(0xf0efe6).opacity(0.85).soft(14).ragged(0.8, 22).rough(4, 9));
      }
    };
  }

  /** A belt over two pulleys, seen close; cracked across where told so. */
  static Consumer<Canvas> belt(boolean cracked) {
    return c -> {
      Props.engineSide(c, 0x3f5c50);
      c.put(disc(300, 560, 350), Coat.steel(30), 46);
      c.put(disc(300, 560, 300), Coat.castIron(0x3a4045, 24), 10);
      for (int i = 0; i < 5; i++) {
        c.paint(turned(oval(300, 390, 60, 74), i * 72, 300, 560), Coat.of(0x14171a).round(8));
      }
      Props.bolt(c, 300, 560, 52);
      c.put(disc(1380, 860, 210), Coat.steel(24), 36);
      c.put(disc(1380, 860, 168), Coat.castIron(0x42484d, 20), 8);
      Props.bolt(c, 1380, 860, 44);
      Shape upper =
          cutRun(96, -70, 400, 60, 250, 300, 194, 640, 276, 1100, 490, 1430, 640, 1620, 800);
      c.put(upper, Coat.rubber(0x26282a, 22), 36);
      c.put(
          cutRun(96, 1620, 1010, 1440, 1100, 1240, 1060, 700, 960, 340, 934, 100, 880, -60, 760),
          Coat.rubber(0x242628, 22),
          30);
      if (cracked) {
        for (int i = 0; i < 15; i++) {
          double x = 330 + i * 62 + 9 * c.random.nextGaussian();
          double y = 203 + (x - 330) * 0.44 - 40 * Math.sin((x - 330) / 300);
          c.paint(crack(c.random, x + 26, y - 34, x - 20, y + 58, 14), Coat.of(0x030303));
          c.paint(
              moved(crack(c.random, x + 26, y - 34, x - 20, y + 58, 6), 7, 2),
              Coat.of(0x8b8d8e).opacity(0.5).soft(2));
        }
        c.paint(
            cutRun(20, 560, 206, 1100, 440, 1400, 590),
            Coat.of(0x9fa3a5).opacity(0.55).ragged(0.9, 18).soft(3));
      }
    };
  }

  /** A pencil anode from a heat exchanger beside a rule; {@code left} of it is there. */
  static Consumer<Canvas> pencilAnode(double left) {
    return c -> {
      Props.bench(c);
      c.tilt(-5, 0, 1.12);
      Shape rule = box(140, 820, 1300, 130, 6);
      c.put(rule, Coat.steel(5).metal(0.2), 16);
      for (int mm = 0; mm <= 120; mm++) {
        double x = 180 + mm * 10;
        c.paint(box(x, 822, 2.4, mm % 10 == 0 ? 56 : mm % 5 == 0 ? 42 : 28), Coat.of(0x1b1e20));
        if (mm % 10 == 0) {
          c.paint(Props.PLAIN.centred(String.valueOf(mm / 10), 40, x, 918), Coat.of(0x1b1e20));
        }
      }
      c.put(hexagon(300, 560, 130), Coat.of(0xb98d3f).round(16).gloss(0.6).metal(0.4), 34);
      c.put(box(380, 490, 130, 140, 8), Coat.of(0xae8236).round(14).gloss(0.5).metal(0.4), 30);
      for (int i = 0; i < 6; i++) {
        c.paint(box(392 + i * 20, 488, 6, 144), Coat.of(0x5d4212).opacity(0.7));
      }
      Shape full = box(508, 512, 700, 96, 30);
      c.paint(without(full, box(510, 516, 694, 88, 26)), Coat.of(0x2d3338).opacity(0.30));
      c.put(
          both(box(508, 512, 90, 96, 10), box(560, 518, 700 * left - 60, 80, 34)),
          Coat.of(0x9aa0a1)
              .soft(7)
              .ragged(0.35, 34)
              .round(26)
              .rough(13, 26)
              .mottled(0.35)
              .gloss(0.12),
          24);
      c.paint(box(540, 516, 700 * left - 30, 86, 30), Coat.stain(0xe3e2da, 0.6, 0.85));
      c.tilt(0, 0);
    };
  }

  /** The expansion tank of a closed circuit; {@code level} 0 is the low mark, 1 the full mark. */
  static Consumer<Canvas> expansionTank(int coolant, double level, boolean oilFilm) {
    return c -> {
      Props.engineSide(c, 0x5b666d);
      c.put(
          cutRun(90, 980, 1010, 1200, 1090, 1400, 1060, 1700, 1150), Coat.rubber(0x1b1d1f, 26), 30);
      Shape tank = box(330, 250, 760, 800, 90);
      c.put(tank, Coat.of(0xdcdccb).round(70).gloss(0.25).mottled(0.08), 56);
      double y = 880 - level * 330;
      Shape inside = within(box(360, 280, 700, 740, 70), box(0, y, 1600, 1200));
      c.paint(inside, Coat.of(coolant).opacity(0.72).round(30).gloss(0.1));
      c.paint(box(362, y - 8, 696, 18, 8), Coat.of(0xffffff).opacity(0.35).soft(3));
      if (oilFilm) {
        c.paint(
            box(364, y - 34, 692, 74, 20),
            Coat.of(0x5b3a1c).opacity(0.92).soft(10).ragged(0.55, 50).gloss(0.5).round(8));
        c.paint(box(370, y - 130, 680, 110, 30), Coat.stain(0x6a4a2a, 0.5, 0.8));
      }
      c.put(box(330, 560, 760, 14, 6), Coat.of(0xcfcfbe).round(6), 3);
      for (String mark : new String[] {"FULL", "LOW"}) {
        double at = mark.equals("FULL") ? 550 : 880;
        c.paint(box(880, at - 4, 170, 8), Coat.of(0x22272b));
        c.paint(Props.BOLD.outline(mark, 52, 895, at - 16), Coat.of(0x22272b));
      }
      c.put(oval(710, 236, 190, 76), Coat.plastic(0x1e2225, 30), 18);
      c.put(oval(710, 196, 176, 64), Coat.plastic(0x24292d, 26), 12);
      c.paint(Props.BOLD.centred("OPEN COLD ONLY", 30, 710, 206), Coat.of(0xe0b422));
      c.put(cutRun(60, 340, 330, 180, 300, 60, 420, -60, 470), Coat.rubber(0x1b1d1f, 18), 22);
      Props.clamp(c, 300, 322, 70, false);
    };
  }
}

package org.seafettle.samples;

import static org.seafettle.samples.Shapes.*;

import java.awt.Shape;
import java.util.function.Consumer;

/** What is photographed of the fuel system. */
final class FuelPictures {

  static final int GASOLINE = 0xd8a83a;
  static final int DIESEL = 0xc4602e;

  private FuelPictures() {}

  /** A fuel hose with its marking, running to a barb; cracked where told so. */
  static Consumer<Canvas> hose(String marking, boolean cracked) {
    return c -> {
      Props.gelcoat(c, 0xb9b6aa);
      c.defocus(6);
      c.tilt(-7, 0);
      c.put(box(1240, 420, 420, 330, 30), Coat.castIron(0x7b8286, 34), 50);
      c.put(box(1120, 520, 180, 120, 18), Coat.of(0xb08a42).round(36).gloss(0.5).metal(0.3), 30);
      Shape hose = cutRun(230, -80, 760, 240, 640, 640, 570, 900, 576, 1150, 580);
      c.put(hose, Coat.rubber(0x25272a, 74).gloss(0.16), 58);
      Shape letters = turned(Props.BOLD.outline(marking, 46, 300, 640), -9, 300, 640);
      c.paint(letters, Coat.of(0xd9dbd5).opacity(cracked ? 0.62 : 0.9));
      Props.clamp(c, 1060, 578, 236, cracked);
      if (cracked) {
        for (int i = 0; i < 46; i++) {
          double x = 560 + 450 * c.random.nextDouble();
          double y = 480 + 190 * c.random.nextDouble();
          double l = 18 + 44 * c.random.nextDouble();
          c.paint(
              crack(c.random, x, y - l, x + 22 * c.random.nextGaussian(), y + l, 7),
              Coat.of(0x040404).opacity(0.9));
        }
        c.paint(crack(c.random, 880, 470, 850, 690, 30), Coat.of(0x000000));
        c.paint(crack(c.random, 770, 500, 800, 670, 22), Coat.of(0x000000));
        c.paint(oval(880, 745, 190, 44), Coat.stain(0x7d6a3a, 0.5, 0.6));
      }
      c.tilt(0, 0);
    };
  }

  /** The clear bowl of a separator; {@code water} is the share of it that is water. */
  static Consumer<Canvas> separator(int fuel, double water, boolean dirty) {
    return c -> {
      Props.engineSide(c, 0x8d9498);
      c.put(box(250, -40, 700, 230, 26), Coat.castIron(0x30353a, 40), 46);
      c.put(cutRun(120, 240, 90, 90, 110, -60, 160), Coat.rubber(0x1a1c1e, 36), 30);
      c.put(cutRun(120, 960, 90, 1110, 110, 1300, 60), Coat.rubber(0x1a1c1e, 36), 30);
      c.put(box(300, 170, 600, 620, 40), Coat.plastic(0xd8dad6, 120).gloss(0.5), 54);
      c.paint(box(300, 390, 600, 190), Coat.of(0x1f4e79).opacity(0.9).gloss(0.3));
      c.paint(Props.BOLD.centred("FUEL / WATER", 66, 600, 470), Coat.of(0xf2f4f5));
      c.paint(Props.PLAIN.centred("10 µm element – turn by hand", 34, 600, 540), Coat.of(0xdce6ee));
      Shape bowl =
          both(box(320, 790, 560, 330, 40), polygon(360, 1100, 840, 1100, 700, 1330, 500, 1330));
      c.put(bowl, Coat.of(0xcfd6d6).round(50).gloss(0.7), 46);
      Shape inside =
          both(box(346, 806, 508, 300, 30), polygon(380, 1090, 820, 1090, 690, 1310, 510, 1310));
      c.paint(inside, Coat.of(fuel).opacity(0.82).round(40).gloss(0.6));
      if (water > 0) {
        double y = 1310 - 504 * water;
        c.paint(
            within(inside, box(0, y, 1200, 800)),
            Coat.of(0xcfe0e4).opacity(0.80).round(26).gloss(0.5));
        c.paint(within(inside, box(0, y - 7, 1200, 14)), Coat.of(0xffffff).opacity(0.75).soft(3));
        for (int i = 0; i < 16; i++) {
          c.paint(
              disc(
                  420 + 350 * c.random.nextDouble(),
                  y - 8 - 60 * c.random.nextDouble(),
                  4 + 9 * c.random.nextDouble()),
              Coat.of(0xe6eef0).opacity(0.7).round(5).gloss(0.8));
        }
      }
      if (dirty) {
        for (int i = 0; i < 120; i++) {
          double x = 600 + 85 * c.random.nextGaussian();
          c.paint(
              oval(
                  x,
                  1290 - Math.abs(16 * c.random.nextGaussian()),
                  5 + 6 * c.random.nextDouble(),
                  4),
              Coat.of(0x1c1510).opacity(0.8));
        }
      }
      c.put(box(300, 776, 600, 46, 16), Coat.plastic(0x2a2e32, 16), 12);
      c.put(box(560, 1325, 80, 90, 12), Coat.of(0xb08a42).round(20).gloss(0.5).metal(0.3), 20);
      c.put(box(480, 1380, 240, 44, 18), Coat.of(0xb08a42).round(16).gloss(0.5).metal(0.3), 20);
      c.paint(box(372, 830, 30, 250, 14), Coat.of(0xffffff).opacity(0.5).soft(8));
    };
  }

  /** A sample in a glass jar on deck; {@code lower} is the share of a lower layer. */
  static Consumer<Canvas> jar(int fuel, double lower, int lowerColour) {
    return c -> {
      Props.sea(c, 430);
      c.paint(box(-100, 1080, 1500, 700), Coat.of(0xdad7cd).rough(3, 18).mottled(0.1));
      c.paint(box(-100, 1072, 1500, 20), Coat.of(0x8f8c82).soft(6));
      c.shadow(oval(660, 1385, 380, 60), 50, 14, 36, 0.55);
      Shape glass = box(300, 420, 620, 970, 90);
      c.paint(glass, Coat.of(0xe4eef0).opacity(0.55).round(40).gloss(0.6));
      Shape inside = within(box(330, 440, 560, 920, 74), box(0, 610, 1200, 900));
      c.paint(inside, Coat.of(fuel).opacity(0.84).round(60).gloss(0.2));
      c.paint(oval(610, 612, 276, 30), Coat.of(fuel).opacity(0.9).gloss(0.4).round(10));
      if (lower > 0) {
        double y = 1360 - 750 * lower;
        c.paint(
            within(inside, box(0, y, 1200, 900)),
            Coat.of(lowerColour).opacity(0.86).round(50).gloss(0.2));
        c.paint(oval(610, y, 276, 26), Coat.of(0xf4efe0).opacity(0.55).soft(3));
      }
      c.paint(box(372, 500, 44, 780, 20), Coat.of(0xffffff).opacity(0.55).soft(12));
      c.paint(box(838, 560, 20, 700, 10), Coat.of(0xffffff).opacity(0.35).soft(8));
      c.put(box(330, 330, 560, 130, 24), Coat.of(0xc9cdd0).round(20).gloss(0.5).metal(0.45), 14);
      for (int i = 0; i < 26; i++) {
        c.paint(box(346 + i * 21, 352, 5, 92), Coat.of(0x5b6166).opacity(0.45));
      }
    };
  }

  /** A primer bulb in its hose. */
  static Consumer<Canvas> primerBulb(boolean cracked) {
    return c -> {
      Props.gelcoat(c, 0xcfccc0);
      c.defocus(5);
      c.tilt(8, 0);
      c.put(run(96, -90, 560, 200, 600, 420, 600), Coat.rubber(0x232528, 32), 40);
      c.put(run(96, 1180, 600, 1400, 590, 1700, 700), Coat.rubber(0x232528, 32), 40);
      Shape bulb = both(oval(800, 600, 360, 190), box(420, 530, 760, 140, 50));
      c.put(bulb, Coat.rubber(0x2a2c2f, 100).gloss(0.2), 60);
      for (int i = 0; i < 9; i++) {
        c.paint(
            oval(640 + i * 40, 600, 6, 150 - 8 * Math.abs(i - 4)),
            Coat.of(0x0f1011).opacity(0.45).soft(4));
      }
      c.paint(
          polygon(700, 585, 860, 585, 860, 556, 930, 602, 860, 648, 860, 619, 700, 619),
          Coat.of(0x45484c).round(5));
      Props.clamp(c, 400, 600, 108, cracked);
      Props.clamp(c, 1200, 600, 108, cracked);
      if (cracked) {
        for (int i = 0; i < 34; i++) {
          double x = 560 + 470 * c.random.nextDouble();
          double y = 500 + 220 * c.random.nextDouble();
          c.paint(
              crack(
                  c.random,
                  x,
                  y,
                  x + 40 * c.random.nextGaussian(),
                  y + 46 * c.random.nextGaussian(),
                  8),
              Coat.of(0x020202));
        }
      }
      c.tilt(0, 0);
    };
  }
}

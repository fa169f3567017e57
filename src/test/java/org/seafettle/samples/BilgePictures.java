package org.seafettle.samples;

import static org.seafettle.samples.Shapes.*;

import java.awt.Shape;
import java.util.function.Consumer;

/** What is photographed of the bilge, the openings in the hull and the drive. */
final class BilgePictures {

  private BilgePictures() {}

  /** Pump and float switch in the bilge: clean and damp, or under oily water and slime. */
  static Consumer<Canvas> bilge(boolean dirty, String pump) {
    return c -> {
      Props.gelcoat(c, dirty ? 0x97907c : 0xcac8bd);
      Shape keel = polygon(-100, 1300, 300, 260, 700, 120, 1000, 120, 1330, 260, 1700, 1300);
      c.paint(keel, Coat.of(dirty ? 0x7d7663 : 0xbab8ac).round(90).rough(4, 20).mottled(0.12));
      c.defocus(3);
      c.put(run(60, 760, 360, 900, 200, 1180, 120, 1700, -40), Coat.rubber(0x2c3034, 20), 26);
      for (int i = 0; i < 22; i++) {
        double x = 800 + i * 22;
        c.paint(
            turned(box(x, 300 - i * 8.5, 6, 74), 60, x, 300 - i * 8.5),
            Coat.of(0x101214).opacity(0.35));
      }
      c.put(oval(620, 700, 220, 150), Coat.plastic(0xd8d9d4, 20), 40);
      for (int i = 0; i < 15; i++) {
        c.paint(
            box(430 + i * 26, 660 - 3 * Math.abs(i - 7), 12, 150 - 6 * Math.abs(i - 7), 5),
            Coat.of(0x2a2d30).opacity(0.8));
      }
      c.put(box(450, 380, 340, 300, 70), Coat.plastic(0x2b5d9b, 50), 30);
      c.put(oval(620, 400, 160, 66), Coat.plastic(0x2f66a8, 22), 8);
      c.paint(Props.BOLD.centred(pump, 50, 620, 560), Coat.of(0xf0f3f5));
      c.put(
          run(14, 600, 380, 560, 240, 380, 160, 200, 100, -40, 90), Coat.plastic(0x6b3a1c, 5), 12);
      c.put(run(14, 640, 380, 610, 220, 420, 130, 240, 60, -40, 40), Coat.plastic(0x17191b, 5), 12);
      c.put(box(980, 720, 330, 70, 18), Coat.plastic(0x22262a, 16), 24);
      c.put(
          turned(box(1000, 590, 320, 130, 50), dirty ? 3 : 8, 1020, 700),
          Coat.plastic(0xd46a1e, 36),
          30);
      c.put(run(14, 1290, 740, 1420, 640, 1520, 420, 1700, 300), Coat.plastic(0x6b3a1c, 5), 12);
      if (dirty) {
        Shape water = run(520, 330, 1050, 620, 1010, 1000, 1010, 1300, 1060);
        c.paint(water, Coat.of(0x2b2a1e).opacity(0.80).soft(12).round(14).gloss(0.5).rough(3, 120));
        for (int i = 0; i < 5; i++) {
          int sheen = new int[] {0x6f5a8a, 0x4f7f8a, 0x9a8a4a, 0x7a4f5a, 0x4a7a5a}[i];
          c.paint(
              oval(500 + 170 * i, 920 + 60 * c.random.nextGaussian(), 150, 46),
              Coat.of(sheen).opacity(0.45).soft(22).ragged(0.7, 90));
        }
        c.paint(
            box(960, 610, 380, 190, 40),
            Coat.of(0x2a2a16)
                .opacity(0.9)
                .soft(20)
                .ragged(0.85, 46)
                .gloss(0.4)
                .round(8)
                .rough(5, 14));
        for (int i = 0; i < 26; i++) {
          double x = 960 + 340 * c.random.nextDouble();
          double y = 680 + 110 * c.random.nextDouble();
          c.paint(
              run(
                  7,
                  x,
                  y,
                  x + 24 * c.random.nextGaussian(),
                  y + 34,
                  x + 30 * c.random.nextGaussian(),
                  y + 74),
              Coat.of(0x1c1d10).opacity(0.85).round(3).gloss(0.4));
        }
      } else {
        c.paint(
            oval(820, 930, 420, 90),
            Coat.of(0x9fb0b2).opacity(0.35).soft(18).ragged(0.5, 90).gloss(0.5).round(8));
      }
    };
  }

  /** A seacock with its hose; green and with one clamp, or sound with two. */
  static Consumer<Canvas> seacock(boolean sound) {
    int bronze = sound ? 0xb5853e : 0x8d7c4a;
    return c -> {
      Props.gelcoat(c, 0xc2beb0);
      c.defocus(5);
      c.put(oval(600, 1330, 330, 110), Coat.of(bronze).round(30).gloss(0.4).metal(0.2), 40);
      c.put(
          box(450, 1050, 300, 290, 30),
          Coat.of(bronze).round(70).gloss(0.4).metal(0.2).rough(1.5, 14),
          36);
      c.put(disc(600, 960, 210), Coat.of(bronze).round(80).gloss(0.4).metal(0.15).rough(2, 14), 44);
      c.put(box(480, 640, 240, 200, 20), Coat.of(bronze).round(56).gloss(0.4).metal(0.2), 30);
      Shape hose = cutRun(290, 600, 720, 590, 480, 640, 240, 820, -60);
      c.put(hose, Coat.rubber(0x1d1f22, 90), 50);
      vClamp(c, 596, 640, !sound);
      if (sound) {
        vClamp(c, 592, 540, false);
      }
      c.put(
          run(70, 600, 960, 820, 900, 1080, 850),
          Coat.of(sound ? 0xa8acb0 : 0x8c8f80).round(24).gloss(0.4).metal(0.3),
          44);
      c.put(run(96, 900, 888, 1080, 850), Coat.plastic(0xb02626, 34), 30);
      Props.bolt(c, 600, 960, 54);
      if (!sound) {
        Shape body = both(disc(600, 960, 208), box(450, 1050, 300, 280, 30));
        c.paint(
            within(body, oval(530, 1060, 170, 190)),
            Coat.of(0x6fae96).opacity(0.85).soft(16).ragged(1, 60).rough(5, 12));
        c.paint(
            within(body, oval(690, 880, 110, 90)),
            Coat.of(0x5f9a86).opacity(0.8).soft(14).ragged(1, 34).rough(5, 10));
        c.paint(box(470, 1150, 200, 150, 60), Coat.stain(0xc4705c, 0.75, 0.9));
        c.paint(box(470, 650, 240, 180, 20), Coat.stain(0x7fb8a4, 0.8, 0.8));
        c.paint(
            run(24, 700, 1180, 720, 1300, 700, 1420),
            Coat.of(0x7fb8a4).opacity(0.7).soft(9).ragged(0.5, 30));
      }
    };
  }

  private static void vClamp(Canvas c, double x, double y, boolean rusty) {
    Shape strip = box(x - 152, y - 24, 304, 48, 6);
    c.put(strip, Coat.steel(14), 10);
    for (int i = 0; i < 9; i++) {
      c.paint(box(x - 130 + i * 30, y - 10, 6, 20), Coat.of(0x3c4145).opacity(0.7));
    }
    c.put(box(x + 20, y - 34, 66, 68, 8), Coat.steel(10), 10);
    if (rusty) {
      c.paint(box(x - 156, y - 34, 312, 68, 8), Coat.stain(0x8a4317, 0.9, 0.75));
    }
  }

  /** The drain plug in the transom, its seal cracked or sound. */
  static Consumer<Canvas> drainPlug(boolean sound, int paint) {
    return c -> {
      Props.gelcoat(c, paint);
      c.paint(box(-100, 860, 1800, 60), Coat.of(0xe6e4dc).round(10));
      c.paint(box(-100, 920, 1800, 500), Coat.of(0x2c333a).rough(4, 16).mottled(0.2));
      c.defocus(3);
      c.tilt(0, 0.02, 1.5);
      c.put(oval(800, 600, 240, 230), Coat.of(0xb88f49).round(18).gloss(0.5).metal(0.3), 34);
      for (int i = 0; i < 3; i++) {
        double a = StrictMath.toRadians(-90 + i * 120);
        Props.bolt(c, 800 + 196 * StrictMath.cos(a), 600 + 186 * StrictMath.sin(a), 20);
      }
      c.put(ring(800, 600, 92, 128), Coat.rubber(0x1a1b1d, 12), 8);
      if (!sound) {
        for (int i = 0; i < 14; i++) {
          double a = StrictMath.toRadians(i * 26);
          c.paint(
              crack(
                  c.random,
                  800 + 92 * StrictMath.cos(a),
                  600 + 92 * StrictMath.sin(a),
                  800 + 132 * StrictMath.cos(a + 0.1),
                  600 + 132 * StrictMath.sin(a + 0.1),
                  9),
              Coat.of(0xb8b4a8).opacity(0.7));
        }
        c.paint(
            run(26, 790, 720, 796, 860, 786, 1010),
            Coat.of(0xb06a30).opacity(0.7).soft(12).ragged(0.5, 40));
      }
      c.put(disc(800, 600, 94), Coat.of(0xc29a50).round(16).gloss(0.6).metal(0.35), 14);
      c.put(box(768, 568, 64, 64, 8), Coat.of(0xb68d45).round(10).gloss(0.6).metal(0.3), 16);
      c.tilt(0, 0);
    };
  }

  /** The bellows of a sterndrive; cracked in the folds where told so. */
  static Consumer<Canvas> bellows(boolean cracked) {
    return c -> {
      c.paint(c.everything(), Coat.of(0x1d2428).rough(14, 120).mottled(0.3));
      c.put(box(-100, -60, 420, 1400, 60), Coat.castIron(0x6f777d, 60), 50);
      c.put(box(1290, -60, 500, 1400, 80), Coat.castIron(0x4a5157, 70), 50);
      c.defocus(6);
      c.put(box(250, 330, 130, 560, 40), Coat.castIron(0x7d858b, 46), 30);
      for (int i = 0; i < 7; i++) {
        double x = 420 + i * 128;
        c.put(oval(x + 8, 610, 66, 306), Coat.rubber(0x26282b, 40).gloss(0.2), 22);
        c.paint(oval(x + 70, 610, 26, 262), Coat.of(0x060707).opacity(0.85).soft(9));
      }
      c.put(box(1236, 350, 110, 520, 40), Coat.castIron(0x565d63, 40), 26);
      c.put(box(352, 312, 46, 596, 10), Coat.steel(14), 14);
      c.put(box(336, 560, 80, 100, 10), Coat.steel(10), 12);
      if (cracked) {
        c.paint(box(330, 540, 90, 380, 10), Coat.stain(0x8a4317, 0.9, 0.75));
        for (int i = 0; i < 3; i++) {
          double x = 612 + i * 128;
          c.paint(
              crack(c.random, x, 400 + 60 * i, x + 10, 800 - 30 * i, 26 - 5 * i),
              Coat.of(0x000000));
          c.paint(
              moved(crack(c.random, x, 420 + 60 * i, x + 10, 780 - 30 * i, 8), 15, 0),
              Coat.of(0x8d9092).opacity(0.6).soft(2));
        }
        for (int i = 0; i < 60; i++) {
          double x = 440 + 128 * c.random.nextInt(6) + 20 * c.random.nextGaussian();
          double y = 610 + 120 * c.random.nextGaussian();
          c.paint(
              crack(c.random, x, y - 20, x + 8 * c.random.nextGaussian(), y + 24, 5),
              Coat.of(0x020202).opacity(0.9));
        }
        c.paint(
            run(24, 760, 880, 752, 960, 764, 1060),
            Coat.of(0x9b9a8a).opacity(0.5).soft(10).ragged(0.5, 30));
      }
      for (int i = 0; i < 26; i++) {
        c.paint(
            disc(
                300 + 1050 * c.random.nextDouble(),
                380 + 560 * c.random.nextDouble(),
                7 + 9 * c.random.nextDouble()),
            Coat.of(0xb9b7a6).opacity(0.55).ragged(0.4, 12).round(5));
      }
    };
  }

  /** The gauge of an extinguisher, {@code needle} from 0 (empty) over 0.5 (charged) to 1. */
  static Consumer<Canvas> extinguisher(double needle) {
    return c -> {
      Props.gelcoat(c, 0xb8b4a6);
      c.defocus(10);
      c.put(box(240, 700, 720, 1000, 200), Coat.plastic(0xb3201f, 150).gloss(0.6), 60);
      c.put(box(430, 520, 340, 240, 40), Coat.of(0xb08d4a).round(50).gloss(0.5).metal(0.3), 30);
      c.put(run(70, 470, 420, 700, 330, 1100, 300), Coat.plastic(0x1c1e20, 20), 30);
      c.put(run(60, 520, 480, 760, 460, 1080, 480), Coat.plastic(0x1c1e20, 20), 30);
      c.put(stroke(14, java.awt.BasicStroke.CAP_ROUND, oval(380, 470, 74, 60)), Coat.steel(6), 14);
      c.put(disc(600, 690, 236), Coat.of(0xc4a45c).round(30).gloss(0.6).metal(0.4), 40);
      c.paint(disc(600, 690, 200), Coat.of(0xf1f0ea).round(8));
      c.paint(
          within(ring(600, 690, 96, 176), sector(600, 690, 200, -160, -115)), Coat.of(0xc23b34));
      c.paint(within(ring(600, 690, 96, 176), sector(600, 690, 200, -115, -65)), Coat.of(0x3f9150));
      c.paint(within(ring(600, 690, 96, 176), sector(600, 690, 200, -65, -20)), Coat.of(0xc23b34));
      c.paint(Props.BOLD.centred("RECHARGE        FULL", 24, 600, 770), Coat.of(0x22272b));
      c.put(
          turned(polygon(592, 700, 600, 530, 608, 700), (needle - 0.5) * 140, 600, 690),
          Coat.of(0x14171a),
          5);
      c.put(disc(600, 690, 24), Coat.of(0x22272b).round(8), 4);
      c.paint(
          polygon(450, 560, 620, 500, 520, 860, 430, 790), Coat.of(0xffffff).opacity(0.14).soft(6));
      c.put(box(330, 1010, 540, 360, 12), Coat.of(0xe9e6da).round(2), 2);
      c.paint(Props.BOLD.centred("DRY POWDER  2 kg", 54, 600, 1092), Coat.of(0x8c1a1a));
      for (int i = 0; i < 4; i++) {
        c.paint(box(380, 1150 + i * 46, 430 - 60 * (i % 2), 12), Coat.of(0x7b7f82).opacity(0.7));
      }
    };
  }

  private static Shape sector(double x, double y, double r, double from, double to) {
    var xy = new double[2 * 12];
    xy[0] = x;
    xy[1] = y;
    for (int i = 0; i < 11; i++) {
      double a = StrictMath.toRadians(from + (to - from) * i / 10);
      xy[2 * i + 2] = x + r * StrictMath.cos(a);
      xy[2 * i + 3] = y + r * StrictMath.sin(a);
    }
    return polygon(xy);
  }

  /** A packed shaft gland with its drips. */
  static Consumer<Canvas> shaftGland(int drips) {
    return c -> {
      Props.gelcoat(c, 0xb4b1a4);
      c.paint(box(-100, 860, 1900, 500), Coat.of(0x8f8c80).round(60).rough(4, 18).mottled(0.15));
      c.defocus(5);
      c.tilt(6, 0);
      c.put(box(-100, 520, 1900, 120), Coat.steel(36).metal(0.5), 40);
      c.put(box(-100, 400, 420, 360, 40), Coat.of(0xb9b6aa).round(110).rough(3, 14), 40);
      c.put(box(300, 410, 420, 340, 30), Coat.rubber(0x1d1f22, 110), 44);
      Props.clamp(c, 380, 580, 346, false);
      Props.clamp(c, 640, 580, 346, false);
      c.put(box(720, 440, 210, 280, 20), Coat.of(0xb5853e).round(90).gloss(0.5).metal(0.2), 40);
      c.put(box(930, 400, 90, 360, 20), Coat.of(0xb5853e).round(60).gloss(0.5).metal(0.2), 36);
      c.put(box(1080, 430, 80, 300, 20), Coat.of(0xb5853e).round(60).gloss(0.5).metal(0.2), 36);
      c.put(box(1012, 440, 80, 40, 6), Coat.steel(14), 14);
      c.put(box(1012, 680, 80, 40, 6), Coat.steel(14), 14);
      Props.bolt(c, 1190, 460, 30);
      Props.bolt(c, 1190, 700, 30);
      for (int i = 0; i < drips; i++) {
        c.paint(
            drop(1166 + 14 * c.random.nextGaussian(), 730 + 92 * i, 13, 34),
            Coat.of(0xdfeaed).opacity(0.9).round(8).gloss(0.9));
      }
      c.paint(
          oval(1170, 1010, 110 + 20 * drips, 30),
          Coat.of(0x5f6a68).opacity(0.6).soft(8).round(6).gloss(0.6));
      c.tilt(0, 0);
    };
  }

  /** The hull identification number on the transom. */
  static Consumer<Canvas> hullNumber(String number, int paint) {
    return c -> {
      Props.gelcoat(c, paint);
      c.put(box(-100, -80, 1800, 250, 20), Coat.of(0xe7e5dc).round(30).gloss(0.4), 24);
      c.paint(box(-100, 940, 1800, 40), Coat.of(0xe7e5dc));
      c.defocus(2);
      c.tilt(-3, 0.05);
      c.put(box(210, 480, 1180, 230, 14), Coat.of(0xcfd3d5).round(8).gloss(0.5).metal(0.15), 12);
      c.paint(Props.BOLD.centred(number, 124, 800, 640), Coat.of(0x1d2327).round(2));
      for (double x : new double[] {236, 1364}) {
        for (double y : new double[] {506, 684}) {
          c.put(disc(x, y, 11), Coat.steel(4), 3);
        }
      }
      c.tilt(0, 0);
    };
  }
}

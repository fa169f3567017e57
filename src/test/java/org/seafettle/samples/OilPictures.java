package org.seafettle.samples;

import static org.seafettle.samples.Shapes.*;

import java.awt.Shape;
import java.util.function.Consumer;

/** What is photographed of engine oil and gear oil. */
final class OilPictures {

  static final int AMBER = 0xb06a18;
  static final int BLACK = 0x1b1613;
  static final int MILKY = 0xc4a987;
  static final int GREEN_GEAR_OIL = 0x3f6d4c;

  private OilPictures() {}

  /**
   * A dipstick on a white cloth; the marks are at 300 and 620, the oil reaches {@code level} of the
   * way.
   */
  static Consumer<Canvas> dipstick(int oil, double level, double degrees) {
    return c -> {
      Props.cloth(c);
      c.tilt(degrees, 0, 1.18);
      double y = c.height * 0.53;
      double wet = level < 0 ? 0 : 300 + level * 320;
      if (wet > 0) {
        c.paint(
            run(96, 150, y + 26, wet * 0.5 + 60, y + 40, wet + 20, y + 22),
            Coat.of(oil).opacity(0.34).soft(26).ragged(0.5, 70));
      }
      Shape blade = both(box(190, y - 27, 960, 54, 14), oval(192, y, 40, 27));
      c.put(blade, Coat.steel(13), 24);
      for (double mark : new double[] {300, 620}) {
        c.paint(box(mark - 5, y - 32, 10, 64), Coat.of(0x33383c));
        c.put(disc(mark, y, 11), Coat.of(0x24282b), 1);
      }
      for (int i = 1; i < 16; i++) {
        c.paint(
            run(3, 300 + i * 20 - 15, y - 22, 300 + i * 20 + 15, y + 22),
            Coat.of(0x4a5056).opacity(0.6));
      }
      if (wet > 0) {
        Shape film = within(blade, box(0, y - 60, wet + 8 * c.random.nextGaussian(), 120));
        c.paint(film, Coat.liquid(oil, oil == AMBER ? 0.72 : 0.93).round(7).mottled(0.15));
        c.paint(drop(176, y + 14, 20, 40), Coat.liquid(oil, 0.9));
      }
      c.put(run(44, 1130, y, 1240, y - 4, 1330, y - 16), Coat.steel(13), 22);
      c.put(
          stroke(32, java.awt.BasicStroke.CAP_ROUND, oval(1430, y - 26, 96, 70)),
          Coat.plastic(0xe2b714, 10),
          26);
      c.tilt(0, 0);
    };
  }

  /** The lower end of a gearcase, its drain screw out, oil running into a tray. */
  static Consumer<Canvas> gearOil(int oil, boolean milky) {
    return c -> {
      Props.gelcoat(c, 0x8d9499);
      c.defocus(12);
      c.shadow(oval(640, 1330, 430, 120), 30, 30, 40, 0.6);
      c.paint(oval(620, 1310, 430, 130), Coat.plastic(0xd9dcd8, 14));
      c.paint(oval(620, 1304, 390, 106), Coat.of(0xb9bdb9).round(10));
      c.paint(oval(620, 1320, 330, 80), Coat.liquid(oil, 0.94).round(8).mottled(milky ? 0.3 : 0.1));
      if (milky) {
        c.paint(oval(560, 1318, 190, 40), Coat.stain(0xe7dcc6, 0.75, 0.8));
      }
      Shape torpedo =
          both(
              both(oval(560, 470, 600, 210), box(-100, 270, 700, 400, 80)),
              polygon(300, -60, 900, -60, 820, 420, 260, 420));
      Shape skeg = polygon(340, 600, 760, 620, 690, 1000, 560, 1030);
      c.put(skeg, Coat.castIron(0x33383d, 22).gloss(0.25), 26);
      c.put(torpedo, Coat.castIron(0x3b4147, 80).gloss(0.3), 34);
      c.put(box(1080, 400, 60, 140, 20), Coat.steel(16), 16);
      for (int i = 0; i < 60; i++) {
        double x = 60 + 900 * c.random.nextDouble();
        double y = 330 + 300 * c.random.nextDouble();
        c.paint(
            run(2, x, y, x + 20 * c.random.nextGaussian(), y + 6 * c.random.nextGaussian()),
            Coat.of(0x9aa2a8).opacity(0.35));
      }
      c.put(ring(610, 640, 26, 44), Coat.steel(8), 8);
      c.paint(disc(610, 640, 27), Coat.of(0x0d0f10));
      c.paint(
          run(20, 612, 646, 616, 800, 612, 1000, 618, 1316),
          Coat.liquid(oil, milky ? 0.97 : 0.86).round(9));
      c.paint(run(34, 606, 640, 612, 672), Coat.liquid(oil, 0.9).round(8));
      c.put(oval(617, 1318, 62, 17), Coat.liquid(oil, 0.9).round(10), 3);
      bolt(c, 800, 330);
    };
  }

  private static void bolt(Canvas c, double x, double y) {
    Props.bolt(c, x, y, 24);
  }

  /** The inside of an oil filler cap, clean or creamy, held over its hole. */
  static Consumer<Canvas> fillerCap(boolean cream) {
    return c -> {
      Props.engineSide(c, 0x59636c);
      c.put(oval(420, 720, 250, 190), Coat.castIron(0x525b63, 30), 30);
      c.paint(oval(420, 716, 180, 132), Coat.steel(20));
      c.paint(oval(420, 722, 150, 106), Coat.of(0x0c0b0a));
      c.paint(oval(440, 760, 90, 40), Coat.of(0x4a3a22).soft(20).opacity(0.8));
      if (cream) {
        c.paint(ring(420, 722, 96, 150), Coat.stain(0xd3bd95, 0.9, 0.9));
      }
      Props.glove(c, 1290, 520);
      c.put(disc(1000, 540, 310), Coat.plastic(0x1d1f21, 24), 44);
      for (int i = 0; i < 12; i++) {
        c.put(turned(box(970, 222, 60, 40, 16), i * 30, 1000, 540), Coat.plastic(0x232629, 10), 4);
      }
      c.put(ring(1000, 540, 196, 238), Coat.plastic(0x2c2f32, 14), 10);
      c.paint(ring(1000, 540, 206, 226), Coat.of(0x141517));
      c.put(ring(1000, 540, 244, 268), Coat.rubber(0x3a2a20, 10), 6);
      c.paint(disc(1000, 540, 196), Coat.of(0x191a1b).round(26).gloss(0.2));
      for (int i = 0; i < 6; i++) {
        c.put(turned(box(992, 360, 16, 180), i * 60, 1000, 540), Coat.plastic(0x25282b, 6), 4);
      }
      c.put(disc(1000, 540, 54), Coat.plastic(0x26292c, 14), 6);
      if (cream) {
        c.paint(
            disc(1006, 552, 205),
            Coat.of(0xd8c39c)
                .opacity(0.97)
                .soft(30)
                .ragged(0.95, 90)
                .round(16)
                .gloss(0.35)
                .rough(3, 20)
                .mottled(0.2));
        c.paint(
            disc(940, 600, 90), Coat.of(0xc3a674).soft(24).ragged(0.9, 40).round(10).gloss(0.4));
      } else {
        c.paint(
            ring(1000, 540, 60, 180), Coat.of(0x8a5a1c).opacity(0.22).soft(14).gloss(0.5).round(6));
      }
    };
  }
}

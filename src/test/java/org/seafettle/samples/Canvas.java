package org.seafettle.samples;

import java.awt.Rectangle;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.util.Random;

/**
 * The picture while it is drawn. Every shape becomes a little relief, lit from the upper left, so
 * that a flat outline looks like a thing.
 */
final class Canvas {

  private static final double[] LIGHT = {-0.45, -0.60, 0.66};
  private static final double[] HALFWAY = {-0.247, -0.329, 0.911};

  final int width;
  final int height;
  final float[][] rgb;
  final Random random;
  private AffineTransform view = new AffineTransform();

  Canvas(int width, int height, long seed) {
    this.width = width;
    this.height = height;
    this.rgb = new float[3][width * height];
    this.random = new Random(seed);
  }

  /** From here on everything is turned about the middle, in degrees, and leans a little. */
  void tilt(double degrees, double lean) {
    tilt(degrees, lean, 1);
  }

  /** The same, seen from so many times nearer. */
  void tilt(double degrees, double lean, double nearer) {
    view = AffineTransform.getTranslateInstance(width / 2.0, height / 2.0);
    view.scale(nearer, nearer);
    view.rotate(StrictMath.toRadians(degrees));
    view.shear(lean, 0);
    view.translate(-width / 2.0, -height / 2.0);
  }

  /** The whole picture, and more than that, so that a tilt shows no corner. */
  Shape everything() {
    return new Rectangle(-width, -height, 3 * width, 3 * height);
  }

  void paint(Shape shape, Coat coat) {
    Shape placed = view.createTransformedShape(shape);
    double reach = 3 * Math.max(coat.edge().soft(), coat.surface().round()) + 4;
    Rectangle area = placed.getBounds();
    area.grow((int) reach, (int) reach);
    area = area.intersection(new Rectangle(width, height));
    if (area.isEmpty()) {
      return;
    }
    Field cover = edged(Field.covered(placed, area), coat.edge());
    mix(cover, relief(cover, coat.surface()), coat);
  }

  /** What the thing keeps from the light, to be drawn before the thing. */
  void shadow(Shape shape, double across, double down, double soft, double strength) {
    Shape moved = AffineTransform.getTranslateInstance(across, down).createTransformedShape(shape);
    paint(moved, Coat.of(0x05070a).opacity(strength).soft(soft));
  }

  /** The thing with its shadow. */
  void put(Shape shape, Coat coat, double lift) {
    shadow(shape, lift * 0.6, lift * 0.8, lift * 0.8, 0.55);
    paint(shape, coat);
  }

  /** Everything drawn so far falls out of focus. */
  void defocus(double radius) {
    var all = new Rectangle(width, height);
    for (int c = 0; c < 3; c++) {
      rgb[c] = new Field(all, rgb[c]).softened(radius).values();
    }
  }

  private Field edged(Field cover, Coat.Edge edge) {
    Field soft = edge.soft() > 0 ? cover.softened(edge.soft()) : cover;
    if (edge.ragged() == 0) {
      return soft;
    }
    Rectangle area = cover.area();
    float[] noise = new Noise(random.nextInt(), edge.scale()).over(area).values();
    var values = soft.values().clone();
    for (int i = 0; i < values.length; i++) {
      if (values[i] > 0.002f) {
        double broken =
            values[i] + (noise[i] - 0.5) * 2 * edge.ragged() * (1.35 - values[i]) - 0.12;
        values[i] = (float) Math.min(1, Math.max(0, (broken - 0.26) / 0.42));
      }
    }
    return new Field(area, values);
  }

  private Field relief(Field cover, Coat.Surface surface) {
    Rectangle area = cover.area();
    float[] heights = cover.softened(surface.round()).values().clone();
    var noise = new Noise(random.nextInt(), surface.scale());
    float[] rough = surface.bump() > 0 ? noise.over(area).values() : new float[heights.length];
    for (int i = 0; i < heights.length; i++) {
      heights[i] = (float) (heights[i] * surface.round() * 2.6 + surface.bump() * rough[i]);
    }
    return new Field(area, heights);
  }

  private void mix(Field cover, Field relief, Coat coat) {
    Rectangle area = cover.area();
    double uneven = coat.surface().mottle() * 1.6;
    var noise = new Noise(random.nextInt(), coat.surface().scale() * 2.3);
    float[] mottle = uneven > 0 ? noise.over(area).values() : new float[0];
    double[] colour = {
      (coat.rgb() >> 16 & 255) / 255.0, (coat.rgb() >> 8 & 255) / 255.0, (coat.rgb() & 255) / 255.0
    };
    var lit = new double[2];
    for (int y = 0; y < area.height; y++) {
      for (int x = 0; x < area.width; x++) {
        double a = cover.at(x, y) * coat.opacity();
        if (a > 0.002) {
          light(relief, x, y, coat.surface(), lit);
          if (uneven > 0) {
            lit[0] *= 1 + uneven * (mottle[y * area.width + x] - 0.5);
          }
          blend((area.y + y) * width + area.x + x, a, colour, lit);
        }
      }
    }
  }

  private void blend(int at, double a, double[] colour, double[] lit) {
    for (int c = 0; c < 3; c++) {
      double value = colour[c] * lit[0] + lit[1];
      rgb[c][at] = (float) (rgb[c][at] * (1 - a) + value * a);
    }
  }

  private static void light(Field h, int x, int y, Coat.Surface surface, double[] lit) {
    if (surface.round() == 0 && surface.bump() == 0) {
      lit[0] = 1;
      lit[1] = 0;
      return;
    }
    double across = (h.at(x - 1, y) - h.at(x + 1, y)) / 2;
    double down = (h.at(x, y - 1) - h.at(x, y + 1)) / 2;
    double length = Math.sqrt(across * across + down * down + 1);
    double facing =
        Math.max(0, (across * LIGHT[0] + down * LIGHT[1] + LIGHT[2]) / length) / LIGHT[2];
    double mirror = Math.max(0, (across * HALFWAY[0] + down * HALFWAY[1] + HALFWAY[2]) / length);
    lit[0] = 0.30 + 0.70 * Math.min(facing, 1.55);
    if (surface.metal() > 0) {
      double swing = StrictMath.cos(1.1 + 5.2 * down / length + 3.1 * across / length);
      lit[0] *= 1 - surface.metal() * 0.5 + surface.metal() * 0.55 * (1 + swing) / 2 * 1.6;
    }
    double glint = mirror * mirror;
    glint = glint * glint;
    glint = glint * glint;
    glint = glint * glint;
    lit[1] = surface.gloss() * (glint * glint * glint);
  }
}

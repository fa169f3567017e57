package org.seafettle.samples;

import java.awt.Rectangle;

/** Smooth noise of three octaves, between 0 and 1, the same for the same seed everywhere. */
final class Noise {

  private static final float[] WEIGHTS = {0.57f, 0.29f, 0.14f};

  private final int seed;
  private final double scale;

  /**
   * @param scale size of the coarsest blotches, in pixels
   */
  Noise(int seed, double scale) {
    this.seed = seed;
    this.scale = scale;
  }

  Field over(Rectangle area) {
    var values = new float[area.width * area.height];
    for (int octave = 0; octave < WEIGHTS.length; octave++) {
      add(octave, scale / StrictMath.pow(2.03, octave), area, values);
    }
    return new Field(area, values);
  }

  private void add(int octave, double size, Rectangle area, float[] values) {
    int first = (int) Math.floor(area.x / size);
    var columns = new int[area.width];
    var shares = new float[area.width];
    for (int x = 0; x < area.width; x++) {
      double u = (area.x + x) / size - first;
      columns[x] = (int) u;
      shares[x] = eased(u - columns[x]);
    }
    int j = Integer.MIN_VALUE;
    var upper = new float[columns[area.width - 1] + 2];
    var lower = new float[upper.length];
    for (int y = 0; y < area.height; y++) {
      double v = (area.y + y) / size;
      if ((int) Math.floor(v) != j) {
        j = (int) Math.floor(v);
        fill(upper, first, j, octave);
        fill(lower, first, j + 1, octave);
      }
      float t = eased(v - j);
      for (int x = 0; x < area.width; x++) {
        int i = columns[x];
        float above = upper[i] + (upper[i + 1] - upper[i]) * shares[x];
        float below = lower[i] + (lower[i + 1] - lower[i]) * shares[x];
        values[y * area.width + x] += WEIGHTS[octave] * (above + (below - above) * t);
      }
    }
  }

  private void fill(float[] row, int first, int j, int octave) {
    for (int k = 0; k < row.length; k++) {
      row[k] = lattice(first + k, j, octave);
    }
  }

  private static float eased(double t) {
    return (float) (t * t * (3 - 2 * t));
  }

  private float lattice(int i, int j, int octave) {
    int h = seed ^ i * 0x27d4eb2d ^ j * 0x165667b1 ^ octave * 0x9e3779b1;
    h = (h ^ h >>> 15) * 0x85ebca6b;
    h = (h ^ h >>> 13) * 0xc2b2ae35;
    return ((h ^ h >>> 16) & 0xffff) / 65535f;
  }
}

package org.seafettle.samples;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.image.BufferedImage;

/** A number for each pixel of a rectangle: how much of it a shape covers, or how high it stands. */
record Field(Rectangle area, float[] values) {

  /** How much of each pixel the shape covers, 0 to 1. */
  static Field covered(Shape shape, Rectangle area) {
    var image = new BufferedImage(area.width, area.height, BufferedImage.TYPE_INT_ARGB);
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    g.translate(-area.x, -area.y);
    g.setColor(Color.WHITE);
    g.fill(shape);
    g.dispose();
    int[] argb = image.getRGB(0, 0, area.width, area.height, null, 0, area.width);
    var values = new float[argb.length];
    for (int i = 0; i < argb.length; i++) {
      values[i] = (argb[i] >>> 24) / 255f;
    }
    return new Field(area, values);
  }

  /** The value at a pixel of the area, counted from its corner; the border goes on outside. */
  float at(int x, int y) {
    int i = Math.min(Math.max(x, 0), area.width - 1);
    int j = Math.min(Math.max(y, 0), area.height - 1);
    return values[j * area.width + i];
  }

  /** Softened by three boxes in a row, which comes close to a bell curve. */
  Field softened(double radius) {
    int r = (int) Math.round(radius / 1.7);
    if (r < 1) {
      return this;
    }
    float[] a = values;
    for (int pass = 0; pass < 3; pass++) {
      a = down(across(a, r), r);
    }
    return new Field(area, a);
  }

  private float[] across(float[] in, int r) {
    var out = new float[in.length];
    float share = 1f / (2 * r + 1);
    int w = area.width;
    for (int start = 0; start < in.length; start += w) {
      double sum = in[start] * (r + 1.0);
      for (int k = 1; k <= r; k++) {
        sum += in[start + Math.min(k, w - 1)];
      }
      for (int k = 0; k < w; k++) {
        out[start + k] = (float) (sum * share);
        sum += in[start + Math.min(k + r + 1, w - 1)] - in[start + Math.max(k - r, 0)];
      }
    }
    return out;
  }

  /** Row by row with a sum for each column, since memory is read in rows. */
  private float[] down(float[] in, int r) {
    var out = new float[in.length];
    float share = 1f / (2 * r + 1);
    int w = area.width;
    int last = area.height - 1;
    var sums = new double[w];
    for (int k = -r; k <= r; k++) {
      addRow(in, Math.min(Math.max(k, 0), last), 1, sums);
    }
    for (int y = 0; y <= last; y++) {
      for (int x = 0; x < w; x++) {
        out[y * w + x] = (float) (sums[x] * share);
      }
      addRow(in, Math.min(y + r + 1, last), 1, sums);
      addRow(in, Math.max(y - r, 0), -1, sums);
    }
    return out;
  }

  private void addRow(float[] in, int y, int sign, double[] sums) {
    for (int x = 0; x < area.width; x++) {
      sums[x] += sign * in[y * area.width + x];
    }
  }
}

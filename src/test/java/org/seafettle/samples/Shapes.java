package org.seafettle.samples;

import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.Random;

/** Outlines, in pixels of the picture. */
final class Shapes {

  private Shapes() {}

  static Shape box(double x, double y, double w, double h) {
    return new Rectangle2D.Double(x, y, w, h);
  }

  static Shape box(double x, double y, double w, double h, double corner) {
    return new RoundRectangle2D.Double(x, y, w, h, 2 * corner, 2 * corner);
  }

  static Shape disc(double x, double y, double r) {
    return oval(x, y, r, r);
  }

  static Shape oval(double x, double y, double rx, double ry) {
    return new Ellipse2D.Double(x - rx, y - ry, 2 * rx, 2 * ry);
  }

  static Shape ring(double x, double y, double inner, double outer) {
    return without(disc(x, y, outer), disc(x, y, inner));
  }

  static Shape polygon(double... xy) {
    var path = new Path2D.Double();
    path.moveTo(xy[0], xy[1]);
    for (int i = 2; i < xy.length; i += 2) {
      path.lineTo(xy[i], xy[i + 1]);
    }
    path.closePath();
    return path;
  }

  static Shape hexagon(double x, double y, double r) {
    var xy = new double[12];
    for (int i = 0; i < 6; i++) {
      xy[2 * i] = x + r * StrictMath.cos(i * Math.PI / 3 + 0.2);
      xy[2 * i + 1] = y + r * StrictMath.sin(i * Math.PI / 3 + 0.2);
    }
    return polygon(xy);
  }

  /** A hose, cable, belt or line: a smooth curve through the points, with this width. */
  static Shape run(double width, double... xy) {
    return stroke(width, BasicStroke.CAP_ROUND, curve(xy));
  }

  /** The same with ends cut straight. */
  static Shape cutRun(double width, double... xy) {
    return stroke(width, BasicStroke.CAP_BUTT, curve(xy));
  }

  static Shape stroke(double width, int cap, Shape path) {
    return new BasicStroke((float) width, cap, BasicStroke.JOIN_ROUND).createStrokedShape(path);
  }

  private static Path2D curve(double... xy) {
    var path = new Path2D.Double();
    path.moveTo(xy[0], xy[1]);
    int last = xy.length - 2;
    for (int i = 0; i < last; i += 2) {
      int before = Math.max(0, i - 2);
      int after = Math.min(last, i + 4);
      path.curveTo(
          xy[i] + (xy[i + 2] - xy[before]) / 6,
          xy[i + 1] + (xy[i + 3] - xy[before + 1]) / 6,
          xy[i + 2] - (xy[after] - xy[i]) / 6,
          xy[i + 3] - (xy[after + 1] - xy[i + 1]) / 6,
          xy[i + 2],
          xy[i + 3]);
    }
    return path;
  }

  /** A crack from here to there, thin at both ends. */
  static Shape crack(Random random, double x1, double y1, double x2, double y2, double width) {
    int steps = 9;
    double across = -(y2 - y1);
    double along = x2 - x1;
    var there = new Path2D.Double();
    there.moveTo(x1, y1);
    var backX = new double[steps];
    var backY = new double[steps];
    double length = Math.max(1, Math.sqrt(across * across + along * along));
    for (int i = 1; i < steps; i++) {
      double t = i / (double) steps;
      double jag = (random.nextDouble() - 0.5) * 0.09 * length;
      double half = width * 2 * t * (1 - t) * (0.6 + random.nextDouble());
      double x = x1 + t * (x2 - x1) + jag * across / length;
      double y = y1 + t * (y2 - y1) + jag * along / length;
      there.lineTo(x + half * across / length, y + half * along / length);
      backX[i] = x - half * across / length;
      backY[i] = y - half * along / length;
    }
    there.lineTo(x2, y2);
    for (int i = steps - 1; i > 0; i--) {
      there.lineTo(backX[i], backY[i]);
    }
    there.closePath();
    return there;
  }

  /** A drop that hangs at its upper end. */
  static Shape drop(double x, double y, double r, double length) {
    var path = new Path2D.Double();
    path.moveTo(x, y);
    path.curveTo(x + 0.2 * r, y + 0.6 * length, x + r, y + length - r, x + r, y + length);
    path.curveTo(x + r, y + length + 1.3 * r, x - r, y + length + 1.3 * r, x - r, y + length);
    path.curveTo(x - r, y + length - r, x - 0.2 * r, y + 0.6 * length, x, y);
    return path;
  }

  static Shape without(Shape whole, Shape part) {
    var area = new Area(whole);
    area.subtract(new Area(part));
    return area;
  }

  static Shape within(Shape a, Shape b) {
    var area = new Area(a);
    area.intersect(new Area(b));
    return area;
  }

  static Shape both(Shape a, Shape b) {
    var area = new Area(a);
    area.add(new Area(b));
    return area;
  }

  static Shape moved(Shape shape, double x, double y) {
    return AffineTransform.getTranslateInstance(x, y).createTransformedShape(shape);
  }

  static Shape turned(Shape shape, double degrees, double x, double y) {
    return AffineTransform.getRotateInstance(StrictMath.toRadians(degrees), x, y)
        .createTransformedShape(shape);
  }
}

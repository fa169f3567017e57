package org.seafettle.photo;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.io.IOException;
import java.io.UncheckedIOException;

/**
 * A mark on a picture of a size: magenta within a white casing, so that it shows on any ground. The
 * number is drawn from its outline in our own type, so that no font of the machine has a part in
 * it.
 */
final class MarkDrawing {

  private static final Color MAGENTA = new Color(0xA3005C);

  private static final String TYPE = "/com/formdev/flatlaf/fonts/roboto/Roboto-Bold.ttf";
  private static final Font BOLD = bold();
  private static final FontRenderContext UNHINTED = new FontRenderContext(null, true, true);

  private final Mark mark;
  private final Size size;
  private final double radius;
  private final double line;

  MarkDrawing(Mark mark, Size size) {
    this.mark = mark;
    this.size = size;
    this.radius = Math.max(6, size.longestEdge() * 0.03);
    this.line = Math.max(1.5, radius / 6);
  }

  void draw(Graphics2D pen) {
    pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    var shape =
        switch (mark.shape()) {
          case RING -> ring();
          case ARROW -> arrow();
        };
    shape.add(new Area(number()));
    pen.setColor(Color.WHITE);
    pen.fill(shape);
    pen.fill(round(2.2 * line).createStrokedShape(shape));
    pen.setColor(MAGENTA);
    pen.fill(shape);
  }

  private static BasicStroke round(double width) {
    return new BasicStroke((float) width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
  }

  private double x() {
    return mark.x() * size.width();
  }

  private double y() {
    return mark.y() * size.height();
  }

  private Area ring() {
    var circle = new Ellipse2D.Double(x() - radius, y() - radius, 2 * radius, 2 * radius);
    return new Area(round(line).createStrokedShape(circle));
  }

  /** Lies towards the middle of the picture, so that all of it is on the picture. */
  private Area arrow() {
    var arrow = new Area(round(line).createStrokedShape(shaft()));
    var head = new Path2D.Double();
    head.moveTo(0, 0);
    head.lineTo(radius, radius * 0.45);
    head.lineTo(radius, -radius * 0.45);
    head.closePath();
    arrow.add(new Area(head));
    var place = AffineTransform.getTranslateInstance(x(), y());
    place.rotate(towardsMiddle());
    return arrow.createTransformedArea(place);
  }

  private Shape shaft() {
    return new Line2D.Double(radius * 0.9, 0, radius * 2.5, 0);
  }

  private double towardsMiddle() {
    double across = size.width() / 2.0 - x();
    double down = size.height() / 2.0 - y();
    return across == 0 && down == 0 ? Math.PI / 4 : Math.atan2(down, across);
  }

  /** Beside the ring or behind the arrow, pushed inwards where the picture ends. */
  private Shape number() {
    var outline =
        BOLD.deriveFont((float) (radius * 1.5))
            .createGlyphVector(UNHINTED, Integer.toString(mark.number()))
            .getOutline();
    var bounds = outline.getBounds2D();
    boolean ring = mark.shape() == Mark.Shape.RING;
    double half = Math.hypot(bounds.getWidth(), bounds.getHeight()) / 2;
    double away = (ring ? radius : radius * 2.5) + 1.5 * line + half;
    double angle = ring ? (x() > size.width() * 0.5 ? Math.PI : 0) : towardsMiddle();
    double left = x() + away * Math.cos(angle) - bounds.getWidth() / 2;
    double top = y() + away * Math.sin(angle) - bounds.getHeight() / 2;
    var place =
        AffineTransform.getTranslateInstance(
            within(left, size.width() - bounds.getWidth()) - bounds.getX(),
            within(top, size.height() - bounds.getHeight()) - bounds.getY());
    return place.createTransformedShape(outline);
  }

  private double within(double from, double to) {
    return Math.max(line, Math.min(to - line, from));
  }

  private static Font bold() {
    try (var in = MarkDrawing.class.getResourceAsStream(TYPE)) {
      if (in == null) {
        throw new IllegalStateException("the type for marks is missing: " + TYPE);
      }
      return Font.createFont(Font.TRUETYPE_FONT, in);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    } catch (FontFormatException unusable) {
      throw new IllegalStateException(unusable);
    }
  }
}

package org.seafettle.samples;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** Writing as outlines, from a font file that comes with the build, never from the machine's. */
final class Lettering {

  private static final String FONTS = "/com/formdev/flatlaf/fonts/roboto/";

  private final TrueTypeFont font;

  private Lettering(TrueTypeFont font) {
    this.font = font;
  }

  static Lettering of(String file) {
    try (var in = Lettering.class.getResourceAsStream(FONTS + file)) {
      if (in == null) {
        throw new IllegalStateException("no font " + file + " on the class path");
      }
      return new Lettering(new TTFParser().parse(new RandomAccessReadBuffer(in.readAllBytes())));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The text with the left end of its base line at the point, and its width. */
  Shape outline(String text, double size, double x, double y) {
    try {
      var cmap = font.getUnicodeCmapLookup();
      double scale = size / font.getUnitsPerEm();
      var all = new Path2D.Double();
      double pen = x;
      for (int point : text.codePoints().toArray()) {
        int glyph = cmap.getGlyphId(point);
        if (glyph == 0) {
          throw new IllegalArgumentException(
              "the font has no sign for " + Character.toString(point));
        }
        var place = new AffineTransform(scale, 0, 0, -scale, pen, y);
        var drawn = font.getGlyph().getGlyph(glyph);
        if (drawn != null) {
          all.append(drawn.getPath().getPathIterator(place), false);
        }
        pen += font.getAdvanceWidth(glyph) * scale;
      }
      return all;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  Shape centred(String text, double size, double x, double y) {
    Shape at = outline(text, size, 0, y);
    return Shapes.moved(at, x - at.getBounds2D().getCenterX(), 0);
  }
}

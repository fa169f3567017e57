package org.seafettle.house;

import java.util.List;
import org.seafettle.photo.Format;
import org.seafettle.photo.Original;
import org.seafettle.photo.Print;
import org.seafettle.photo.PrintOrder;
import org.seafettle.problem.Place;
import org.seafettle.problem.Refused;

/**
 * The mark of a house, taken apart so far that nothing but shapes or pixels is left of its file.
 */
public sealed interface Logo {

  /** The largest file that is read, in bytes. */
  int MOST_BYTES = 2_000_000;

  /** Of a picture, in pixels; more are never seen at the size of a logo. */
  long MOST_PIXELS = 16_000_000;

  /** Width by height: beyond it a logo is a line. */
  private static void checkShape(double ratio) {
    if (ratio > 8 || ratio < 0.25) {
      throw Refused.because(
          "The logo is too long for its height, or too high for its width.",
          "Use one that is at most eight times as wide as high, and at most four times as high.");
    }
  }

  /**
   * Reads a logo; its content tells whether it is a PNG or an SVG.
   *
   * @throws Refused where it is neither, too large, damaged, or draws with what no logo needs
   */
  static Logo read(byte[] bytes, Place place) {
    try {
      var logo =
          Format.announcedBy(bytes).isPresent()
              ? Picture.of(bytes, place)
              : new DrawingReader().read(bytes);
      checkShape(logo.ratio());
      return logo;
    } catch (Refused refused) {
      throw new Refused(refused.problems().stream().map(p -> p.at(place)).toList());
    }
  }

  /** Width by height. */
  double ratio();

  /**
   * Pixels.
   *
   * @param print made ready for the page, on white
   */
  record Picture(Print print) implements Logo {

    /** A logo is shown at most 150 points wide: about 300 dots an inch. */
    private static final int LONGEST_EDGE = 640;

    private static Picture of(byte[] bytes, Place place) {
      var original = Original.read(bytes, place, place.file());
      if (original.format() != Format.PNG) {
        throw Refused.because(
            "The logo is a " + original.format().title() + " picture.", "Save it as PNG or SVG.");
      }
      if (original.size().pixels() > MOST_PIXELS) {
        throw Refused.because(
            "The logo has " + original.size() + " pixels.", "Save it at most 2000 pixels wide.");
      }
      return new Picture(Print.of(original, new PrintOrder(LONGEST_EDGE, List.of(), false)));
    }

    @Override
    public double ratio() {
      return (double) print.size().width() / print.size().height();
    }
  }

  /**
   * Shapes.
   *
   * @param box the part of the plane that is shown: left, top, width, height
   * @param shapes in the order in which they are drawn
   */
  record Drawing(List<Double> box, List<Shape> shapes) implements Logo {

    public Drawing {
      box = List.copyOf(box);
      shapes = List.copyOf(shapes);
    }

    @Override
    public double ratio() {
      return box.get(2) / box.get(3);
    }
  }

  /**
   * A shape, or a piece of text.
   *
   * @param element its name in SVG; empty for text
   * @param attributes those that are known to be harmless
   * @param parts what it holds
   * @param text empty unless it is text
   */
  record Shape(String element, List<Attribute> attributes, List<Shape> parts, String text) {

    public Shape {
      attributes = List.copyOf(attributes);
      parts = List.copyOf(parts);
    }
  }

  /** One attribute. */
  record Attribute(String name, String value) {}
}

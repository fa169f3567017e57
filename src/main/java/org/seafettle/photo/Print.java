package org.seafettle.photo;

import java.awt.image.BufferedImage;
import java.io.IOException;
import org.seafettle.problem.Refused;

/**
 * A picture made ready for the page: upright, no larger than asked for, in sRGB, with its marks,
 * and without anything the camera wrote down unless that was asked for.
 *
 * <p>Prints are JPEG. Only a PNG of few colours, which is a drawing or a screen and no photograph,
 * is printed as PNG: JPEG would blur its edges and make it larger. A JPEG that needs nothing done
 * is not decoded at all: its coded pixels are passed on as they are, and damage that only decoding
 * would find shows on the page as it does in the file.
 */
public final class Print {

  /** As many as a palette holds: more are a photograph. */
  private static final int FEW_COLOURS = 256;

  private final Format format;
  private final Size size;
  private final byte[] bytes;

  private Print(Format format, Size size, byte[] bytes) {
    this.format = format;
    this.size = size;
    this.bytes = bytes;
  }

  /**
   * Prints a picture; the same picture and order give the same bytes. Needs about 200 MB of memory
   * for a picture of 12 megapixels.
   *
   * @throws Refused where its pixels cannot be decoded in full or do not fit into the memory
   */
  public static Print of(Original original, PrintOrder order) {
    if (isReady(original, order)) {
      var print = passedOn(original);
      return order.keepMetadata() ? print.with(original) : print;
    }
    try (var decoder = Decoder.of(original.container())) {
      var print = made(original, order, decoder.decoded(order.longestEdge()));
      return order.keepMetadata() ? print.with(original) : print;
    } catch (IOException | RuntimeException damaged) {
      throw Original.at(original.place(), Container.damaged(original.format()));
    }
  }

  /** Whether nothing is to be done, so that printing costs next to nothing. */
  public static boolean isReady(Original original, PrintOrder order) {
    return original.container() instanceof JpegFile jpeg
        && jpeg.isPlain()
        && original.metadata().orientation() == Orientation.UPRIGHT
        && order.marks().isEmpty()
        && original.stored().longestEdge() <= order.longestEdge();
  }

  private static Print passedOn(Original original) {
    var jpeg = (JpegFile) original.container();
    return new Print(Format.JPEG, original.size(), jpeg.stripped());
  }

  private static Print made(Original original, PrintOrder order, BufferedImage decoded)
      throws IOException {
    boolean drawing =
        original.format() == Format.PNG && Darkroom.hasFewColours(decoded, FEW_COLOURS);
    var scaled = original.stored().fitting(order.longestEdge());
    var picture = Darkroom.upright(decoded, scaled, original.metadata().orientation());
    Darkroom.mark(picture, order.marks());
    var size = new Size(picture.getWidth(), picture.getHeight());
    return drawing
        ? new Print(Format.PNG, size, Encoder.png(picture))
        : new Print(Format.JPEG, size, Encoder.jpeg(picture));
  }

  private Print with(Original original) {
    return format == Format.JPEG
        ? new Print(format, size, KeptMetadata.in(bytes, original.container()))
        : this;
  }

  /** JPEG or PNG. */
  public Format format() {
    return format;
  }

  public Size size() {
    return size;
  }

  /** The file, a copy of its own. */
  public byte[] bytes() {
    return bytes.clone();
  }

  /** Of the print's bytes; the original has its own. */
  public Fingerprint fingerprint() {
    return Fingerprint.of(bytes);
  }
}

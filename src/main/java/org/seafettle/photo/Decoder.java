package org.seafettle.photo;

import com.twelvemonkeys.imageio.plugins.jpeg.JPEGImageReaderSpi;
import com.twelvemonkeys.imageio.plugins.webp.WebPImageReaderSpi;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.concurrent.atomic.AtomicBoolean;
import javax.imageio.IIOException;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.spi.IIORegistry;
import javax.imageio.spi.ImageReaderSpi;

/** Decodes one picture. */
final class Decoder implements AutoCloseable {

  /**
   * Eight bytes for each of twelve megapixels: what is decoded at once, whatever the picture's
   * size.
   */
  private static final long MOST_BYTES = 96_000_000;

  static {
    // pictures are in memory already; a cache on the disk costs time and leaves traces
    ImageIO.setUseCache(false);
  }

  private final Container container;
  private final ImageReader reader;
  private final AtomicBoolean incomplete = new AtomicBoolean();

  private Decoder(Container container, ImageReader reader) {
    this.container = container;
    this.reader = reader;
  }

  static Decoder of(Container container) throws IOException {
    var decoder = new Decoder(container, reader(container.format()));
    decoder.reader.setInput(new Pixels(container.picture()), true, false);
    decoder.reader.addIIOReadWarningListener((source, warning) -> decoder.note(warning));
    return decoder;
  }

  /** Named one by one: which reader stands first in the registry depends on the machine. */
  private static ImageReader reader(Format format) throws IOException {
    return switch (format) {
      case JPEG -> registered(JPEGImageReaderSpi.class);
      case WEBP -> registered(WebPImageReaderSpi.class);
      case PNG, TIFF -> ImageIO.getImageReadersByFormatName(format.title()).next();
    };
  }

  private static ImageReader registered(Class<? extends ImageReaderSpi> kind) throws IOException {
    return IIORegistry.getDefaultInstance().getServiceProviderByClass(kind).createReaderInstance();
  }

  /**
   * The JPEG library fills what it cannot decode with grey and only warns. Its other warnings, such
   * as those about extra bytes between segments, leave the pixels whole.
   */
  private void note(String warning) {
    if (warning.startsWith("Premature end")
        || warning.startsWith("Corrupt JPEG data") && !warning.contains("extraneous")) {
      incomplete.set(true);
    }
  }

  Size size() throws IOException {
    return new Size(reader.getWidth(0), reader.getHeight(0));
  }

  /**
   * The picture as stored, in sRGB without transparency. Of pictures too large for the memory some
   * pixels are left out, but never so many that the longest edge were shorter than wanted.
   *
   * @param edge the longest edge wanted, in pixels
   */
  BufferedImage decoded(int edge) throws IOException {
    var how = reader.getDefaultReadParam();
    int step = step(edge);
    how.setSourceSubsampling(step, step, 0, 0);
    var image = isInk() ? Inks.srgb(reader.readRaster(0, how), transform()) : read(how);
    if (incomplete.get()) {
      throw new IIOException("not all pixels could be decoded");
    }
    return image;
  }

  private BufferedImage read(ImageReadParam how) throws IOException {
    var image = reader.read(0, how);
    // the JPEG reader has applied the profile already, the PNG reader knows of none
    return container instanceof PngFile png && image.getColorModel().getNumColorComponents() == 3
        ? Colours.srgb(image, png.profile())
        : Colours.srgb(image);
  }

  private int step(int edge) throws IOException {
    var size = size();
    int step = 1;
    while (size.pixels() / step / step * bytesPerPixel() > MOST_BYTES
        && size.longestEdge() / (step + 1) >= edge) {
      step++;
    }
    return step;
  }

  private int bytesPerPixel() throws IOException {
    var type = reader.getRawImageType(0);
    return type == null ? 4 : Math.max(1, type.getColorModel().getPixelSize() / 8);
  }

  /** Inks without a profile: left to itself the reader would take a profile of the machine. */
  private boolean isInk() {
    return container instanceof JpegFile jpeg && jpeg.components() == 4 && jpeg.profile().isEmpty();
  }

  private int transform() {
    return container instanceof JpegFile jpeg ? jpeg.adobeTransform() : -1;
  }

  @Override
  public void close() {
    reader.dispose();
  }
}

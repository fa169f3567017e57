package org.seafettle.photo;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBuffer;
import java.awt.image.Raster;
import java.awt.image.RenderedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Iterator;
import java.util.function.Consumer;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import org.apache.commons.imaging.formats.jpeg.exif.ExifRewriter;
import org.apache.commons.imaging.formats.tiff.constants.ExifTagConstants;
import org.apache.commons.imaging.formats.tiff.constants.TiffDirectoryType;
import org.apache.commons.imaging.formats.tiff.constants.TiffTagConstants;
import org.apache.commons.imaging.formats.tiff.fieldtypes.AbstractFieldType;
import org.apache.commons.imaging.formats.tiff.taginfos.TagInfoAscii;
import org.apache.commons.imaging.formats.tiff.write.TiffOutputField;
import org.apache.commons.imaging.formats.tiff.write.TiffOutputSet;
import org.seafettle.problem.Place;

/** Pictures drawn for the tests, and the ways to look at what became of them. */
final class Pictures {

  static final Place PLACE = Place.field("survey.json", "photos[0].file");

  static final Color RED = new Color(200, 30, 30);
  static final Color GREEN = new Color(30, 160, 40);
  static final Color BLUE = new Color(40, 50, 190);
  static final Color BLACK = new Color(20, 20, 20);

  private Pictures() {}

  static Original read(byte[] bytes) {
    return Original.read(bytes, PLACE, "p1");
  }

  /** Four quarters: red and green above, blue and black below. */
  static BufferedImage quarters(int width, int height) {
    var image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    draw(image, width, height);
    return image;
  }

  static void draw(BufferedImage image, int width, int height) {
    Graphics2D pen = image.createGraphics();
    var colours = new Color[] {RED, GREEN, BLUE, BLACK};
    for (int i = 0; i < 4; i++) {
      pen.setColor(colours[i]);
      pen.fillRect(i % 2 * width / 2, i / 2 * height / 2, (width + 1) / 2, (height + 1) / 2);
    }
    pen.dispose();
  }

  /** More than 256 colours, all smooth. */
  static BufferedImage sunset(int width, int height) {
    var image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        image.setRGB(x, y, x * 255 / width << 16 | y * 255 / height << 8 | (x + y) % 64);
      }
    }
    return image;
  }

  static BufferedImage plain(int grey, int type) {
    var image = new BufferedImage(64, 48, type);
    for (int y = 0; y < 48; y++) {
      for (int x = 0; x < 64; x++) {
        for (int band = 0; band < image.getRaster().getNumBands(); band++) {
          image.getRaster().setSample(x, y, band, grey);
        }
      }
    }
    return image;
  }

  static byte[] written(RenderedImage image, String format) {
    try {
      var out = new ByteArrayOutputStream();
      if (!ImageIO.write(image, format, out)) {
        throw new IllegalArgumentException("no writer for " + format);
      }
      return out.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static byte[] jpeg(RenderedImage image) {
    return jpeg(new IIOImage(image, null, null), how -> {});
  }

  static byte[] progressive(RenderedImage image) {
    return jpeg(
        new IIOImage(image, null, null),
        how -> how.setProgressiveMode(ImageWriteParam.MODE_DEFAULT));
  }

  /** Four printing inks as stored, 255 being no ink, with Adobe's segment before them. */
  static byte[] inks(int[] stored, int transform) {
    var raster = Raster.createInterleavedRaster(DataBuffer.TYPE_BYTE, 64, 48, 4, null);
    for (int y = 0; y < 48; y++) {
      for (int x = 0; x < 64; x++) {
        raster.setPixel(x, y, stored);
      }
    }
    var adobe = segment(0xee, latin("Adobe\0\144\0\0\0\0" + (char) transform));
    return afterStart(jpeg(new IIOImage(raster, null, null), how -> {}), adobe);
  }

  private static byte[] jpeg(IIOImage image, Consumer<ImageWriteParam> setting) {
    var bytes = new ByteArrayOutputStream();
    var writer = platformsWriter();
    try (var out = new MemoryCacheImageOutputStream(bytes)) {
      var how = writer.getDefaultWriteParam();
      setting.accept(how);
      writer.setOutput(out);
      writer.write(null, image, how);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }

  private static ImageWriter platformsWriter() {
    Iterator<ImageWriter> writers = ImageIO.getImageWritersByFormatName("jpeg");
    Iterable<ImageWriter> all = () -> writers;
    return StreamSupport.stream(all.spliterator(), false)
        .filter(writer -> writer.getClass().getName().startsWith("com.sun"))
        .findFirst()
        .orElseThrow();
  }

  /** Puts segments right behind the start of a JPEG. */
  static byte[] afterStart(byte[] jpeg, byte[]... segments) {
    var out = new ByteArrayOutputStream();
    out.write(jpeg, 0, 2);
    Stream.of(segments).forEach(out::writeBytes);
    out.write(jpeg, 2, jpeg.length - 2);
    return out.toByteArray();
  }

  static byte[] segment(int marker, byte[] payload) {
    int length = payload.length + 2;
    var out = new ByteArrayOutputStream();
    out.writeBytes(new byte[] {(byte) 0xff, (byte) marker, (byte) (length >> 8), (byte) length});
    out.writeBytes(payload);
    return out.toByteArray();
  }

  static byte[] latin(String characters) {
    return characters.getBytes(StandardCharsets.ISO_8859_1);
  }

  static byte[] joined(byte[]... parts) {
    var out = new ByteArrayOutputStream();
    Stream.of(parts).forEach(out::writeBytes);
    return out.toByteArray();
  }

  /** What a camera would write down. */
  static byte[] noted(byte[] jpeg, Consumer<Notes> notes) {
    try {
      var set = new TiffOutputSet();
      notes.accept(new Notes(set));
      var out = new ByteArrayOutputStream();
      new ExifRewriter().updateExifMetadataLossless(jpeg, out, set);
      return out.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  record Notes(TiffOutputSet set) {

    Notes orientation(int tag) {
      return quietly(
          () ->
              set.getOrCreateRootDirectory()
                  .add(TiffTagConstants.TIFF_TAG_ORIENTATION, (short) tag));
    }

    Notes maker(String text) {
      return quietly(
          () -> set.getOrCreateRootDirectory().add(TiffTagConstants.TIFF_TAG_MAKE, text));
    }

    Notes original(String text) {
      return exif(ExifTagConstants.EXIF_TAG_DATE_TIME_ORIGINAL, text);
    }

    Notes digitized(String text) {
      return exif(ExifTagConstants.EXIF_TAG_DATE_TIME_DIGITIZED, text);
    }

    Notes zone(String text) {
      return exif(
          new TagInfoAscii(
              "OffsetTimeOriginal", 0x9011, -1, TiffDirectoryType.EXIF_DIRECTORY_EXIF_IFD),
          text);
    }

    Notes position(double north, double east) {
      return quietly(() -> set.setGpsInDegrees(east, north));
    }

    private Notes exif(TagInfoAscii tag, String text) {
      byte[] bytes = latin(text + "\0");
      return quietly(
          () ->
              set.getOrCreateExifDirectory()
                  .add(new TiffOutputField(tag, AbstractFieldType.ASCII, bytes.length, bytes)));
    }

    private Notes quietly(Writing writing) {
      try {
        writing.write();
        return this;
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }

    private interface Writing {
      void write() throws IOException;
    }
  }

  static byte[] resource(String name) {
    try (var in = Pictures.class.getResourceAsStream(name)) {
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static BufferedImage seen(Print print) {
    return seen(print.bytes());
  }

  static BufferedImage seen(byte[] bytes) {
    try {
      return ImageIO.read(new ByteArrayInputStream(bytes));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The colour in the middle of a quarter: 0 and 1 above, 2 and 3 below. */
  static Color quarter(BufferedImage image, int quarter) {
    int x = image.getWidth() * (1 + 2 * (quarter % 2)) / 4;
    int y = image.getHeight() * (1 + 2 * (quarter / 2)) / 4;
    return new Color(image.getRGB(x, y));
  }

  static boolean near(Color one, Color other) {
    return Math.abs(one.getRed() - other.getRed()) <= 12
        && Math.abs(one.getGreen() - other.getGreen()) <= 12
        && Math.abs(one.getBlue() - other.getBlue()) <= 12;
  }

  static boolean holds(byte[] bytes, String characters) {
    byte[] wanted = latin(characters);
    for (int at = 0; at + wanted.length <= bytes.length; at++) {
      if (Arrays.equals(bytes, at, at + wanted.length, wanted, 0, wanted.length)) {
        return true;
      }
    }
    return false;
  }
}

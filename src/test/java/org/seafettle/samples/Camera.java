package org.seafettle.samples;

import static org.apache.commons.imaging.formats.tiff.constants.ExifTagConstants.EXIF_TAG_DATE_TIME_ORIGINAL;
import static org.apache.commons.imaging.formats.tiff.constants.TiffTagConstants.TIFF_TAG_IMAGE_DESCRIPTION;
import static org.apache.commons.imaging.formats.tiff.constants.TiffTagConstants.TIFF_TAG_ORIENTATION;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import org.apache.commons.imaging.common.RationalNumber;
import org.apache.commons.imaging.formats.jpeg.exif.ExifRewriter;
import org.apache.commons.imaging.formats.tiff.constants.GpsTagConstants;
import org.apache.commons.imaging.formats.tiff.constants.TiffDirectoryType;
import org.apache.commons.imaging.formats.tiff.taginfos.TagInfoAscii;
import org.apache.commons.imaging.formats.tiff.write.TiffOutputSet;

/** Turns a drawing into the file that a camera would have written. */
final class Camera {

  private static final float JPEG_QUALITY = 0.56f;
  private static final int TIFF_WIDTH = 400;

  private static final TagInfoAscii OFFSET_TIME_ORIGINAL =
      new TagInfoAscii("OffsetTimeOriginal", 0x9011, 7, TiffDirectoryType.EXIF_DIRECTORY_EXIF_IFD);

  private Camera() {}

  static byte[] file(Shot shot) {
    try {
      BufferedImage upright = Darkroom.developed(shot.drawn());
      return switch (shot.kind()) {
        case "jpg" -> jpeg(upright, shot.taken());
        case "png" -> written("png", halved(upright), null);
        case "tif" -> written("tiff", small(upright), "LZW");
        default -> throw new IllegalArgumentException("no camera for " + shot.file());
      };
    } catch (IOException e) {
      throw new IllegalStateException(shot.file(), e);
    }
  }

  private static byte[] jpeg(BufferedImage upright, Taken taken) throws IOException {
    byte[] plain = written("jpeg", asStored(upright, taken.orientation()), "JPEG");
    var out = new ByteArrayOutputStream();
    new ExifRewriter().updateExifMetadataLossy(plain, out, exif(taken));
    return out.toByteArray();
  }

  private static TiffOutputSet exif(Taken taken) throws IOException {
    var set = new TiffOutputSet();
    var root = set.getOrCreateRootDirectory();
    root.add(TIFF_TAG_IMAGE_DESCRIPTION, Darkroom.BAND.replace('–', '-'));
    root.add(TIFF_TAG_ORIENTATION, (short) taken.orientation());
    var exif = set.getOrCreateExifDirectory();
    if (taken.at().isPresent()) {
      exif.add(EXIF_TAG_DATE_TIME_ORIGINAL, taken.at().get());
    }
    if (taken.offset().isPresent()) {
      exif.add(OFFSET_TIME_ORIGINAL, taken.offset().get());
    }
    if (taken.located()) {
      locate(set, Taken.SPOT[0], Taken.SPOT[1]);
    }
    return set;
  }

  private static void locate(TiffOutputSet set, double north, double east) throws IOException {
    var gps = set.getOrCreateGpsDirectory();
    gps.add(GpsTagConstants.GPS_TAG_GPS_LATITUDE_REF, north < 0 ? "S" : "N");
    gps.add(GpsTagConstants.GPS_TAG_GPS_LATITUDE, degrees(Math.abs(north)));
    gps.add(GpsTagConstants.GPS_TAG_GPS_LONGITUDE_REF, east < 0 ? "W" : "E");
    gps.add(GpsTagConstants.GPS_TAG_GPS_LONGITUDE, degrees(Math.abs(east)));
  }

  private static RationalNumber[] degrees(double value) {
    int whole = (int) value;
    return new RationalNumber[] {
      new RationalNumber(whole, 1),
      new RationalNumber((int) Math.round((value - whole) * 60), 1),
      new RationalNumber(0, 1)
    };
  }

  /** Turned so that a viewer who obeys the tag sees it upright. */
  private static BufferedImage asStored(BufferedImage upright, int orientation) {
    int w = upright.getWidth();
    int h = upright.getHeight();
    boolean lying = orientation == 6 || orientation == 8;
    var stored = new BufferedImage(lying ? h : w, lying ? w : h, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < h; y++) {
      for (int x = 0; x < w; x++) {
        int rgb = upright.getRGB(x, y);
        switch (orientation) {
          case 1 -> stored.setRGB(x, y, rgb);
          case 3 -> stored.setRGB(w - 1 - x, h - 1 - y, rgb);
          case 6 -> stored.setRGB(y, w - 1 - x, rgb);
          case 8 -> stored.setRGB(h - 1 - y, x, rgb);
          default -> throw new IllegalArgumentException("orientation " + orientation);
        }
      }
    }
    return stored;
  }

  /** Half as wide and in fewer shades, since a PNG keeps every speck. */
  private static BufferedImage halved(BufferedImage upright) {
    int w = upright.getWidth() / 2;
    int h = upright.getHeight() / 2;
    var half = new BufferedImage(w, h, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < h; y++) {
      for (int x = 0; x < w; x++) {
        half.setRGB(x, y, upright.getRGB(2 * x, 2 * y) & 0xf8f8f8);
      }
    }
    return half;
  }

  /** A grey picture of a quarter of the width, since a TIFF does not compress well. */
  private static BufferedImage small(BufferedImage upright) {
    int step = upright.getWidth() / TIFF_WIDTH;
    int high = upright.getHeight() / step;
    var grey = new BufferedImage(TIFF_WIDTH, high, BufferedImage.TYPE_BYTE_GRAY);
    for (int y = 0; y < high; y++) {
      for (int x = 0; x < TIFF_WIDTH; x++) {
        int sum = 0;
        for (int i = 0; i < step * step; i++) {
          int rgb = upright.getRGB(x * step + i % step, y * step + i / step);
          sum += (rgb >> 16 & 255) * 3 + (rgb >> 8 & 255) * 6 + (rgb & 255);
        }
        grey.getRaster().setSample(x, y, 0, sum / (10 * step * step));
      }
    }
    return grey;
  }

  private static byte[] written(String format, BufferedImage image, String compression)
      throws IOException {
    ImageWriter writer = fromThePlatform(format);
    var bytes = new ByteArrayOutputStream();
    try (var out = ImageIO.createImageOutputStream(bytes)) {
      writer.setOutput(out);
      ImageWriteParam param = writer.getDefaultWriteParam();
      if (compression != null) {
        param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
        param.setCompressionType(compression);
        if (format.equals("jpeg")) {
          param.setCompressionQuality(JPEG_QUALITY);
        }
      }
      writer.write(null, new IIOImage(image, null, null), param);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }

  /** Java's own writer: other libraries on the class path offer theirs under the same name. */
  private static ImageWriter fromThePlatform(String format) {
    var writers = ImageIO.getImageWritersByFormatName(format);
    while (writers.hasNext()) {
      ImageWriter writer = writers.next();
      if (writer.getClass().getModule().getName() != null) {
        return writer;
      }
    }
    throw new IllegalStateException("Java brings no writer of " + format);
  }
}

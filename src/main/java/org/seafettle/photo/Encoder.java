package org.seafettle.photo;

import com.twelvemonkeys.imageio.plugins.jpeg.JPEGImageWriterSpi;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.spi.IIORegistry;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** Writes pixels down, without metadata and the same on every run. */
final class Encoder {

  /** Where the eye finds no fault at arm's length (program default). */
  private static final float QUALITY = 0.85f;

  private Encoder() {}

  static byte[] jpeg(BufferedImage picture) throws IOException {
    var writer =
        IIORegistry.getDefaultInstance()
            .getServiceProviderByClass(JPEGImageWriterSpi.class)
            .createWriterInstance();
    var how = writer.getDefaultWriteParam();
    how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
    how.setCompressionQuality(QUALITY);
    return written(picture, writer, how);
  }

  static byte[] png(BufferedImage picture) throws IOException {
    var writer = ImageIO.getImageWritersByFormatName("png").next();
    return written(picture, writer, writer.getDefaultWriteParam());
  }

  private static byte[] written(BufferedImage picture, ImageWriter writer, ImageWriteParam how)
      throws IOException {
    var bytes = new ByteArrayOutputStream();
    try (var out = new MemoryCacheImageOutputStream(bytes)) {
      writer.setOutput(out);
      writer.write(null, new IIOImage(picture, null, null), how);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }
}

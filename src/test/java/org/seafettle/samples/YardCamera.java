package org.seafettle.samples;

import java.awt.Color;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;

/**
 * Takes the photographs of the samples anew for one boat after the other, with her name on a board
 * beside the thing, so that no two files are alike.
 */
final class YardCamera {

  private static final float QUALITY = 0.8f;
  private static final Path SAMPLE = Path.of("sample-surveys/diesel-inboard/photos");
  private static final Lettering LETTERS = Lettering.of("Roboto-Regular.ttf");

  private final List<BufferedImage> scenes = new ArrayList<>();

  /**
   * @param width in pixels
   * @param things what is taken, by the names of the samples' photographs
   */
  YardCamera(int width, List<String> things) throws IOException {
    for (var scene : things) {
      var drawn = ImageIO.read(Files.newInputStream(SAMPLE.resolve(scene + ".jpg")));
      scenes.add(scaled(drawn, width, drawn.getHeight() * width / drawn.getWidth()));
    }
  }

  private static BufferedImage scaled(BufferedImage picture, int width, int height) {
    var scaled = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    var g = scaled.createGraphics();
    g.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    g.drawImage(picture, 0, 0, width, height, null);
    g.dispose();
    return scaled;
  }

  byte[] picture(int scene, String board) throws IOException {
    var plain = scenes.get(scene);
    int width = plain.getWidth();
    var picture = new BufferedImage(width, plain.getHeight(), BufferedImage.TYPE_INT_RGB);
    var g = picture.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.drawImage(plain, 0, 0, null);
    g.setColor(new Color(0xf1ead6));
    g.fillRect(width / 40, width / 40, width / 2, width / 16);
    g.setColor(new Color(0x12202e));
    g.fill(LETTERS.outline(board, width / 40, width / 30, width / 14));
    g.dispose();
    return jpeg(picture);
  }

  private static byte[] jpeg(BufferedImage picture) throws IOException {
    var writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    var bytes = new ByteArrayOutputStream();
    try (var out = ImageIO.createImageOutputStream(bytes)) {
      writer.setOutput(out);
      var param = writer.getDefaultWriteParam();
      param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      param.setCompressionQuality(QUALITY);
      writer.write(null, new IIOImage(picture, null, null), param);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }
}

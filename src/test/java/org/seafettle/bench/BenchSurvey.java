package org.seafettle.bench;

import java.awt.Color;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.stream.FileImageOutputStream;

/**
 * The survey that is measured: the sample of a diesel inboard, with twelve photographs of 1600 ×
 * 1200 pixels and about 450 kB as a telephone sends them, upright and without marks.
 */
final class BenchSurvey {

  private BenchSurvey() {}

  static Path in(Path folder) throws IOException {
    var sample = Path.of("sample-surveys/diesel-inboard");
    Files.createDirectories(folder.resolve("photos"));
    var json =
        Files.readString(sample.resolve("survey.json"))
            .replaceAll(",\\s*\"marks\":\\s*\\[(?s:.*?)\\}\\s*\\]", "");
    Files.writeString(folder.resolve("survey.json"), json);
    try (var photos = Files.list(sample.resolve("photos"))) {
      int n = 0;
      for (var photo : photos.sorted().toList()) {
        write(scene(n++), folder.resolve("photos").resolve(photo.getFileName().toString()));
      }
    }
    return folder;
  }

  /** Coarse shapes with fine grain, which JPEG finds about as hard as a photograph. */
  private static BufferedImage scene(int seed) {
    var random = new Random(seed);
    var picture = new BufferedImage(1600, 1200, BufferedImage.TYPE_INT_RGB);
    var g = picture.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    for (int i = 0; i < 60; i++) {
      g.setColor(new Color(random.nextInt(0x1000000)));
      g.fillOval(random.nextInt(1500), random.nextInt(1100), 60 + random.nextInt(500), 300);
    }
    g.dispose();
    for (int y = 0; y < 1200; y++) {
      for (int x = 0; x < 1600; x++) {
        int grain = random.nextInt(15) - 7;
        int rgb = picture.getRGB(x, y);
        picture.setRGB(x, y, grained(rgb, grain));
      }
    }
    return picture;
  }

  private static int grained(int rgb, int grain) {
    int r = clamp((rgb >> 16 & 255) + grain);
    int g = clamp((rgb >> 8 & 255) + grain);
    int b = clamp((rgb & 255) + grain);
    return r << 16 | g << 8 | b;
  }

  private static int clamp(int value) {
    return Math.max(0, Math.min(255, value));
  }

  private static void write(BufferedImage picture, Path file) {
    var writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    var parameters = writer.getDefaultWriteParam();
    parameters.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
    parameters.setCompressionQuality(0.82f);
    try (var out = new FileImageOutputStream(file.toFile())) {
      writer.setOutput(out);
      writer.write(null, new IIOImage(picture, null, null), parameters);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      writer.dispose();
    }
  }
}

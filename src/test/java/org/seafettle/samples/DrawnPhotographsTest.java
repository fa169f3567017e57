package org.seafettle.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

class DrawnPhotographsTest {

  private static final Path SAMPLES = Path.of("sample-surveys");
  private static final String AGAIN =
      "The code draws another picture than the one that is kept. If that is meant, run:"
          + " mvn -q test -Dtest=DrawnPhotographsTest -Dseafettle.rebaseline=true";

  @Test
  void the_photographs_that_are_kept_are_those_that_the_code_draws() {
    List<String> other =
        DrawnPhotographs.all().parallelStream().filter(s -> !asKept(s)).map(Shot::file).toList();
    assertThat(other).as(AGAIN).isEmpty();
  }

  @Test
  void every_photograph_in_the_samples_is_drawn_by_our_code() throws IOException {
    List<String> drawn = DrawnPhotographs.all().stream().map(Shot::file).toList();
    try (var files = Files.walk(SAMPLES)) {
      List<String> kept =
          files
              .filter(f -> Files.isRegularFile(f) && f.getParent().endsWith("photos"))
              .map(f -> SAMPLES.relativize(f).toString().replace('\\', '/'))
              // made once by hand from our drawing: Java writes no WebP
              .filter(f -> !f.endsWith(".webp"))
              .toList();
      assertThat(kept).containsExactlyInAnyOrderElementsOf(drawn);
    }
  }

  @Test
  void no_photograph_takes_more_than_a_slow_connection_likes() throws IOException {
    for (Shot shot : DrawnPhotographs.all()) {
      if (shot.kind().equals("jpg")) {
        assertThat(Files.size(SAMPLES.resolve(shot.file()))).as(shot.file()).isLessThan(120_000);
      }
    }
  }

  private static boolean asKept(Shot shot) {
    try {
      byte[] drawn = Camera.file(shot);
      Path file = SAMPLES.resolve(shot.file());
      if (Boolean.getBoolean("seafettle.rebaseline")) {
        Files.createDirectories(file.getParent());
        Files.write(file, drawn);
        return true;
      }
      return Files.exists(file) && same(shot, drawn, Files.readAllBytes(file));
    } catch (IOException e) {
      throw new IllegalStateException(shot.file(), e);
    }
  }

  private static boolean same(Shot shot, byte[] drawn, byte[] kept) throws IOException {
    if (!shot.kind().equals("png")) {
      return Arrays.equals(drawn, kept);
    }
    // how a PNG is deflated is the machine's affair: the pixels count
    var a = ImageIO.read(new ByteArrayInputStream(drawn));
    var b = ImageIO.read(new ByteArrayInputStream(kept));
    return a.getWidth() == b.getWidth()
        && a.getHeight() == b.getHeight()
        && Arrays.equals(pixels(a), pixels(b));
  }

  private static int[] pixels(BufferedImage image) {
    return image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
  }
}

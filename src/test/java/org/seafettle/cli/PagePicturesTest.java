package org.seafettle.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import javax.imageio.ImageIO;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.seafettle.pdf.Printed;

/**
 * The pages as the eye sees them, small and grey. Where one changed its new picture and the
 * difference are left in {@code target/page-pictures}.
 */
class PagePicturesTest {

  private static final Path KEPT = Path.of("src/test/resources/org/seafettle/cli/pages");
  private static final Path LEFT = Path.of("target/page-pictures");

  /** Dots an inch: enough to see a line move, too few to see how a letter is smoothed. */
  private static final float FINE = 36;

  /** Grey levels, of 255, that smoothing differs by between machines. */
  private static final int SMOOTHING = 48;

  /** Of all dots of a page that may differ by more. */
  private static final double FEW = 0.002;

  @TempDir private Path folder;

  @ParameterizedTest
  @CsvSource({
    "neglected, 2026-10-17-marsh-heron-pre-purchase, 5",
    "diesel-inboard, 2026-10-29-patient-griet-season-end, 3",
    "sound-pair/2026, 2026-09-26-tern-s-errand-yearly-record, 4"
  })
  void the_first_pages_of_each_report_look_as_they_did(String sample, String report, int pages)
      throws IOException {
    var run = Run.of("report", "sample-surveys/" + sample, "--out", folder.toString());
    assertThat(run.code()).as(run.err()).isZero();
    var changed = new ArrayList<String>();
    try (var printed = new Printed(Files.readAllBytes(folder.resolve(report + ".pdf")))) {
      var renderer = new PDFRenderer(printed.document());
      for (int page = 1; page <= pages; page++) {
        var name = report + "-" + page + ".png";
        var now = renderer.renderImageWithDPI(page - 1, FINE, ImageType.GRAY);
        if (Boolean.getBoolean("seafettle.rebaseline")) {
          Files.createDirectories(KEPT);
          ImageIO.write(now, "png", KEPT.resolve(name).toFile());
        }
        if (!alike(ImageIO.read(KEPT.resolve(name).toFile()), now, name)) {
          changed.add(name);
        }
      }
    }
    assertThat(changed)
        .as("look at " + LEFT + "; if it may change: -Dseafettle.rebaseline=true")
        .isEmpty();
  }

  private static boolean alike(BufferedImage then, BufferedImage now, String name)
      throws IOException {
    boolean size = then.getWidth() == now.getWidth() && then.getHeight() == now.getHeight();
    int differ = 0;
    var difference =
        new BufferedImage(now.getWidth(), now.getHeight(), BufferedImage.TYPE_BYTE_GRAY);
    for (int y = 0; size && y < now.getHeight(); y++) {
      for (int x = 0; x < now.getWidth(); x++) {
        int apart = Math.abs(grey(then, x, y) - grey(now, x, y));
        difference.getRaster().setSample(x, y, 0, 255 - apart);
        differ += apart > SMOOTHING ? 1 : 0;
      }
    }
    boolean alike = size && differ <= FEW * now.getWidth() * now.getHeight();
    if (!alike) {
      Files.createDirectories(LEFT);
      ImageIO.write(now, "png", LEFT.resolve(name).toFile());
      ImageIO.write(difference, "png", LEFT.resolve("difference-" + name).toFile());
    }
    return alike;
  }

  private static int grey(BufferedImage image, int x, int y) {
    return image.getRaster().getSample(x, y, 0);
  }
}

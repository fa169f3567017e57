package org.seafettle.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;

class DrawingsTest {

  private final PdfPrinter printer = new PdfPrinter(new Typefaces());

  @Test
  void a_heavier_weight_in_a_drawing_puts_more_ink_on_paper() {
    var ink =
        Stream.of("300", "400", "500", "700")
            .map(weight -> ink("Oil 84", "font-weight='" + weight + "'"))
            .toList();
    assertThat(ink).isSorted().doesNotHaveDuplicates();
  }

  @Test
  void an_italic_in_a_drawing_is_not_the_upright() {
    assertThat(seen(page("Oil", "font-style='italic'"))).isNotEqualTo(seen(page("Oil", "")));
  }

  @Test
  void a_sign_that_the_family_lacks_is_drawn_by_the_other() {
    assertThat(seen(page("✓ ▲", "font-family='Roboto'")))
        .isEqualTo(seen(page("✓ ▲", "font-family='Roboto, DejaVu Sans'")))
        .isNotEqualTo(seen(page(" ", "")));
  }

  @Test
  void a_rule_of_the_page_that_reaches_into_a_drawing_does_not_bring_in_other_fonts() {
    assertThat(seen(page("* { font-family: Roboto }", "✓▲", "")))
        .isEqualTo(seen(page("✓▲", "font-family='DejaVu Sans'")));
  }

  @Test
  void a_drawing_that_names_no_family_is_set_in_roboto() {
    assertThat(seen(page("Oil 84", ""))).isEqualTo(seen(page("Oil 84", "font-family='Roboto'")));
  }

  @Test
  void a_drawing_stays_a_drawing() {
    try (var printed = new Printed(page("Oil", ""))) {
      assertThat(printed.pictures()).isZero();
    }
  }

  private long ink(String text, String attributes) {
    return IntStream.of(pixels(page(text, attributes))).mapToLong(rgb -> 255 - (rgb & 0xff)).sum();
  }

  private byte[] page(String text, String attributes) {
    return page("", text, attributes);
  }

  private byte[] page(String css, String text, String attributes) {
    var body =
        "<svg xmlns='http://www.w3.org/2000/svg' width='200' height='40' alt='a'><text x='2' y='30'"
            + " font-size='24' "
            + attributes
            + ">"
            + text
            + "</text></svg>";
    return printer.print(Sample.page(css, body), Map.of(), List.of(), Sample.METADATA);
  }

  /** The page as it looks, short enough to be read when it is not as expected. */
  private static String seen(byte[] pdf) {
    var pixels = pixels(pdf);
    return Arrays.hashCode(pixels)
        + ", ink in "
        + IntStream.of(pixels).filter(rgb -> rgb != -1).count();
  }

  private static int[] pixels(byte[] pdf) {
    try (var printed = new Printed(pdf)) {
      BufferedImage image = new PDFRenderer(printed.document()).renderImage(0, 2);
      return image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}

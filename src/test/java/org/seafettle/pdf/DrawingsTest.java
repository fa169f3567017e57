package org.seafettle.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.ref.WeakReference;
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

  @Test
  void a_drawing_looks_and_is_the_same_however_many_reports_showed_it_before() {
    var first = page("Oil 84", "");
    page("Oil 12", "");
    assertThat(page("Oil 84", "")).isEqualTo(first);
    assertThat(
            new PdfPrinter(new Typefaces())
                .print(Sample.page(drawing("Oil 84", "")), Map.of(), List.of(), Sample.METADATA))
        .isEqualTo(first);
  }

  @Test
  void
      drawings_that_differ_in_one_sign_in_size_or_in_the_styles_of_their_page_are_not_taken_for_each_other() {
    var smaller =
        drawing("Oil 84", "")
            .replace("width='200' height='40'", "width='150' height='30' viewBox='0 0 200 40'");
    assertThat(
            Stream.of(
                    page("Oil 84", ""),
                    page("Oil 85", ""),
                    page("Oil 84", "fill='#5B6670'"),
                    page("svg text { font-size: 20px }", "Oil 84", ""),
                    printer.print(Sample.page(smaller), Map.of(), List.of(), Sample.METADATA))
                .map(DrawingsTest::seen))
        .doesNotHaveDuplicates();
  }

  @Test
  void a_drawing_that_is_kept_keeps_nothing_of_the_report_that_it_was_built_for() {
    var photograph = printedBesideADrawing();
    for (int i = 0; i < 20 && photograph.get() != null; i++) {
      System.gc();
    }
    assertThat(photograph.get()).isNull();
    assertThat(page("Oil 84", "")).isNotEmpty();
  }

  private WeakReference<byte[]> printedBesideADrawing() {
    byte[] picture = Sample.pictures().values().iterator().next().clone();
    var body = drawing("Oil 84", "") + "<p><img src='photo:p1' alt='a dipstick'/></p>";
    printer.print(Sample.page(body), Map.of("p1", picture), List.of(), Sample.METADATA);
    return new WeakReference<>(picture);
  }

  private long ink(String text, String attributes) {
    return IntStream.of(pixels(page(text, attributes))).mapToLong(rgb -> 255 - (rgb & 0xff)).sum();
  }

  private byte[] page(String text, String attributes) {
    return page("", text, attributes);
  }

  private byte[] page(String css, String text, String attributes) {
    return printer.print(
        Sample.page(css, drawing(text, attributes)), Map.of(), List.of(), Sample.METADATA);
  }

  private static String drawing(String text, String attributes) {
    return "<svg xmlns='http://www.w3.org/2000/svg' width='200' height='40' alt='a'><text x='2' y='30'"
        + " font-size='24' "
        + attributes
        + ">"
        + text
        + "</text></svg>";
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

package org.seafettle.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The rules on page breaks that templates rely on, tried with the break at every line. */
class PageBreaksTest {

  private static final String SHEET =
      "@page { size: 100mm 80mm; margin: 8mm } body, h1, h2, p { margin: 0; font-size: 10pt;"
          + " line-height: 12pt } ";

  private final PdfPrinter printer = new PdfPrinter(new Typefaces());

  @Test
  void a_heading_is_not_left_alone_at_the_foot_of_a_page() {
    everywhere(
        "h2 { page-break-after: avoid }",
        "<h2>Heading</h2><p>First line</p>",
        printed -> together(printed, "Heading", "First line"));
  }

  @Test
  void a_block_that_asks_for_it_stays_on_one_page() {
    everywhere(
        ".finding { page-break-inside: avoid }",
        "<div class='finding'><p>Observed</p><p>Limit</p><p>Caution</p></div>",
        printed -> together(printed, "Observed", "Caution"));
  }

  @Test
  void a_table_row_that_asks_for_it_is_not_split() {
    everywhere(
        "tr { page-break-inside: avoid }",
        "<table><tr><td><p>One</p><p>Two</p><p>Three</p></td></tr></table>",
        printed -> together(printed, "One", "Three"));
  }

  @Test
  void a_paragraph_leaves_no_single_line_behind_or_ahead() {
    everywhere(
        "p.long { orphans: 2; widows: 2 }",
        "<p class='long'>Word1<br/>Word2<br/>Word3<br/>Word4</p>",
        printed -> {
          together(printed, "Word1", "Word2");
          together(printed, "Word3", "Word4");
        });
  }

  @Test
  void a_table_repeats_its_head_wherever_it_breaks() {
    var rows =
        IntStream.range(0, 40)
            .mapToObj(n -> "<tr><td>row " + n + "</td></tr>")
            .collect(Collectors.joining());
    everywhere(
        "table { -fs-table-paginate: paginate } tr { page-break-inside: avoid }",
        "<table><thead><tr><th scope='col'>Head</th></tr></thead><tbody>"
            + rows
            + "</tbody></table>",
        printed -> {
          for (int page = 1; page <= printed.pages(); page++) {
            assertThat(printed.text(page).contains("row "))
                .isEqualTo(printed.text(page).contains("Head"));
          }
        });
  }

  private void everywhere(String css, String body, Consumer<Printed> check) {
    for (int before = 6; before < 18; before++) {
      var lines = "<p>filler</p>".repeat(before);
      var xhtml = Sample.page(SHEET + css, lines + body);
      try (var printed = new Printed(printer.print(xhtml, Map.of(), List.of(), Sample.METADATA))) {
        check.accept(printed);
      }
    }
  }

  private static void together(Printed printed, String... words) {
    var pages = Arrays.stream(words).map(word -> pageOf(printed, word)).distinct().toList();
    assertThat(pages).as("pages of %s", List.of(words)).hasSize(1);
  }

  private static int pageOf(Printed printed, String word) {
    return IntStream.rangeClosed(1, printed.pages())
        .filter(page -> printed.text(page).contains(word))
        .findFirst()
        .orElseThrow();
  }
}

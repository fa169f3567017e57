package org.seafettle.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What would be lost without a word is refused by name. */
class MisprintTest {

  private static final PdfPrinter PRINTER = new PdfPrinter(new Typefaces());

  private static List<String> faults(String xhtml, Map<String, byte[]> pictures) {
    var misprint =
        catchThrowableOfType(
            Misprint.class, () -> PRINTER.print(xhtml, pictures, List.of(), Sample.METADATA));
    assertThat(misprint).as("printed without a fault").isNotNull();
    return misprint.faults();
  }

  private static List<String> faults(String xhtml) {
    return faults(xhtml, Sample.pictures());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "http://example.org/a.jpg",
        "https://example.org/a.jpg",
        "file:///etc/passwd",
        "data:image/png;base64,iVBORw0KGgo=",
        "classpath:org/seafettle/a.png",
        "photo:../p1",
        "photo:unknown",
        "p1.jpg",
        "p1"
      })
  void a_picture_from_anywhere_but_the_given_ones_is_refused(String address) {
    var body = "<p><img src=\"" + address + "\" alt=\"a picture\"/></p>";
    assertThat(faults(Sample.page(body))).anySatisfy(fault -> assertThat(fault).contains(address));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "<object data='file:///etc/hostname' type='image/png' alt='x'></object> | <object>",
        "<iframe src='http://example.org/frame'></iframe> | <iframe>",
        "<a href='file:///etc/hostname'>a</a> | file:///etc/hostname",
        "<a href='javascript:alert(1)'>a</a> | javascript:alert(1)",
        "<a href='http://example.org/b' download='b'>a</a> | http://example.org/b",
        "<p style='background-image: url(http://example.org/c.png)'>a</p> | http://example.org/c.png",
        "<a href='#nowhere'>a</a> | nowhere",
        "<svg xmlns='http://www.w3.org/2000/svg' xmlns:xlink='http://www.w3.org/1999/xlink' alt='x'"
            + " width='9' height='9'><image width='9' height='9' xlink:href='file:///etc/d.png'/></svg>"
            + " | file:/",
        "<svg xmlns='http://www.w3.org/2000/svg' alt='x' width='9' height='9'><rect width='9'"
            + " height='9' fill-opacity='0.5'/></svg> | fill-opacity",
        "<svg xmlns='http://www.w3.org/2000/svg' alt='x' width='9' height='9'><text y='9'"
            + " font-family='Arial'>a</text></svg> | Arial",
        "<svg xmlns='http://www.w3.org/2000/svg' alt='x' width='9' height='9'><path d='nonsense'/></svg> | SVG",
        "<svg xmlns='http://www.w3.org/2000/svg' alt='x'><text style='font-family: Roboto'>a</text></svg> | attribute font-family",
        "<svg xmlns='http://www.w3.org/2000/svg' alt='x'><style>text { font-family: Roboto }</style></svg> | attribute font-family",
        "<svg xmlns='http://www.w3.org/2000/svg' width='9' height='9'></svg> | alternative text",
        "<p><img src='photo:p1' alt=''/></p> | photo:p1",
        "<p><img src='photo:p1'/></p> | photo:p1",
        "<p style='font-family: Robotto'>a</p> | Robotto",
        "<p style='font: 9pt/11pt \"Comic Sans\"'>a</p> | Comic Sans",
        "<h3>Too deep</h3> | Too deep",
        "<p style='colour: red'>a</p> | colour",
        "<table><tr><td>a</td><td>b</td></tr><tr><td>c</td></tr></table> | [2, 1]",
        "<table><tr><td rowspan='2'>a</td><td>b</td></tr><tr><td>c</td><td>d</td></tr></table> | [2, 3]",
        "<table><tr><th>Oil</th></tr></table> | Oil",
        "<p>mended &#xFFFD;</p> | U+FFFD",
        "<p>汉</p> | U+6C49",
        "<p>&#x6C49;</p> | U+6C49",
        "<p>&#xE001;</p> | U+E001",
        "<p>שלום</p> | U+05D5",
        "<p>a &#x202E; b</p> | U+202E"
      })
  void what_cannot_be_printed_is_named(String body, String named) {
    assertThat(faults(Sample.page(body))).anySatisfy(fault -> assertThat(fault).contains(named));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "@font-face { font-family: Own; src: url('file:///tmp/own.ttf') } | a typeface of its own",
        "p { font-family: 'Times New Roman', serif } | Times New Roman",
        "@page { @top-left { content: 'x'; font: 8pt Nowhere } } | Nowhere",
        "p:before { content: '\\6C49' } | U+6C49",
        "p { background-image: url(photo:p9) } | photo:p9",
        ".scale rect { fill-opacity: 0.5 } | opacity",
        "p{opacity:.5} | opacity",
        "p { page-brake-inside: avoid } | page-brake-inside"
      })
  void a_style_sheet_that_asks_for_what_is_not_there_is_named(String css, String named) {
    assertThat(faults(Sample.page(css, "<p>a</p>")))
        .anySatisfy(fault -> assertThat(fault).contains(named));
  }

  @Test
  void a_style_sheet_from_elsewhere_is_refused() {
    var imported = "<style>@import url('http://example.org/d.css');</style>";
    var linked = "<link rel='stylesheet' type='text/css' href='file:///tmp/e.css'/>";
    assertThat(faults("<html><head>" + imported + linked + "</head><body/></html>"))
        .anySatisfy(fault -> assertThat(fault).contains("http://example.org/d.css"))
        .anySatisfy(fault -> assertThat(fault).contains("file:///tmp/e.css"));
  }

  @Test
  void a_picture_that_is_no_picture_is_named() {
    var nonsense = Map.of("p1", "not a picture".getBytes(StandardCharsets.US_ASCII));
    assertThat(faults(Sample.page("<img src='photo:p1' alt='a'/>"), nonsense))
        .anySatisfy(fault -> assertThat(fault).contains("photo:p1"));
  }

  @Test
  void text_that_is_no_xml_is_refused() {
    assertThat(faults("<html><body><p>a</body></html>")).isNotEmpty();
    assertThat(faults("<html><body><p>a\u0001</p></body></html>")).isNotEmpty();
  }

  @Test
  void an_entity_from_a_file_does_not_reach_the_page() {
    var xhtml =
        "<!DOCTYPE html [<!ENTITY x SYSTEM \"file:///etc/hostname\">]>"
            + Sample.page("<p>before&x;after</p>");
    assertThat(faults(xhtml)).anySatisfy(fault -> assertThat(fault).contains("entity"));
  }

  @Test
  void two_attachments_of_one_name_are_refused() {
    var misprint =
        catchThrowableOfType(
            Misprint.class,
            () ->
                PRINTER.print(
                    Sample.page("<p>a</p>"),
                    Map.of(),
                    List.of(Sample.SURVEY, Sample.SURVEY),
                    Sample.METADATA));
    assertThat(misprint.faults()).containsExactly("two attachments are named survey.json");
  }

  @Test
  void a_table_whose_spans_add_up_is_printed() {
    var table =
        "<table><thead><tr><th scope='col' colspan='2'>a</th><th scope='col'>b</th></tr></thead>"
            + "<tbody><tr><td rowspan='2'>c</td><td>d</td><td>e</td></tr>"
            + "<tr><td>f</td><td>g</td></tr></tbody></table>";
    var pdf = PRINTER.print(Sample.page(table), Map.of(), List.of(), Sample.METADATA);
    assertThat(Validation.faults(pdf)).isEmpty();
  }

  @Test
  void all_faults_are_named_at_once() {
    assertThat(faults(Sample.page("<p>汉</p><h4>deep</h4><p style='font-family: Nowhere'>a</p>")))
        .hasSize(3);
  }
}

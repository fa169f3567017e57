package org.seafettle.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class PdfPrinterTest {

  private static byte[] pdf = {};
  private static Printed printed;

  @BeforeAll
  static void print() {
    pdf = Sample.print(new PdfPrinter(new Typefaces()));
    printed = new Printed(pdf);
  }

  @AfterAll
  static void close() {
    printed.close();
  }

  @Test
  void a_document_conforms_to_the_archive_and_to_the_accessibility_standard() {
    assertThat(Validation.faults(pdf)).isEmpty();
  }

  @Test
  void the_backgrounds_of_all_boxes_share_one_mark() {
    for (var page : printed.document().getPages()) {
      var marks = page.getResources().getCOSObject().getCOSDictionary(COSName.PROPERTIES);
      var kinds =
          marks.keySet().stream()
              .map(name -> marks.getCOSDictionary(name).getNameAsString(COSName.TYPE))
              .toList();
      assertThat(kinds).containsOnlyOnce("Layout").doesNotContain("Background");
      assertThat(kinds).filteredOn("Pagination"::equals).isNotEmpty();
    }
  }

  @Test
  void every_word_and_sign_is_on_the_page() {
    assertThat(printed.text())
        .contains("Heron & Hare", "Report ZZ-1", "Ready for the season: nothing to do before use.")
        .contains("Signs: ✓ ✗ ▲ ▼ ● ○ ■ □ ≤ ≥ → ± Ω € £ ° ½ – — “ ” … ₂ ⌀")
        .contains("Ελλάδα", "Чайка", "Żółw", "İğne", "Șalupă", "Måge Ærø")
        .contains("▲\u00a0marked by the style sheet")
        .contains("A family of its own ✓ still ticks.", "⌀ slanted and bold ☑")
        .doesNotContain("#");
  }

  @Test
  void a_sentence_is_read_aloud_in_its_order_and_a_picture_by_its_alternative_text() {
    assertThat(String.join("|", printed.readAloud()))
        .contains("Ready for the season: |nothing| to do |before use|. ")
        .contains("Oil|dipstick, oil clear|Photograph 1, drawn by a program.|filter, no swarf")
        .contains("Reading 70|17.0 V|below the limit ≥ 12.4 V ± 0.05 V");
  }

  @Test
  void every_page_has_its_head_and_its_number() {
    assertThat(printed.pages()).isGreaterThan(2);
    for (int page = 1; page <= printed.pages(); page++) {
      assertThat(printed.text(page))
          .contains("Report ZZ-1", "page " + page + " of " + printed.pages());
    }
  }

  @Test
  void a_table_repeats_its_head_on_every_page() {
    assertThat(printed.text(printed.pages())).contains("Judgement");
  }

  @Test
  void every_picture_is_stored_once_and_byte_for_byte() {
    assertThat(printed.pictureBytes())
        .usingElementComparator(java.util.Arrays::compare)
        .containsExactlyInAnyOrderElementsOf(Sample.pictures().values());
  }

  @Test
  void every_picture_and_drawing_says_in_words_what_it_shows() {
    assertThat(printed.alternativeTexts())
        .containsExactly(
            "dipstick, oil clear",
            "filter, no swarf",
            "dipstick again",
            "scale from 0 to 100, filled mark at 84");
  }

  @Test
  void the_structure_has_headings_lists_and_table_heads_with_their_scope() {
    assertThat(printed.structure())
        .contains("H1", "H2", "H3", "L", "LI", "Table", "TH", "TD", "Link");
    var heads =
        printed.elements().stream()
            .filter(element -> "TH".equals(element.getStructureType()))
            .map(element -> element.getCOSObject().getDictionaryObject(COSName.A))
            .map(PdfPrinterTest::scope)
            .toList();
    assertThat(heads).contains("Column", "Row").containsOnly("Column", "Row");
  }

  private static String scope(Object attributes) {
    var one = attributes instanceof COSArray array ? array.getObject(0) : attributes;
    return one instanceof COSDictionary dictionary
        ? String.valueOf(dictionary.getNameAsString("Scope"))
        : "none";
  }

  @Test
  void a_word_in_another_language_says_so() {
    assertThat(printed.elements().stream().map(element -> element.getLanguage()))
        .contains("de", "fr");
    assertThat(printed.document().getDocumentCatalog().getLanguage()).isEqualTo("en-GB");
  }

  @Test
  void bookmarks_are_nested_as_given() {
    assertThat(printed.bookmarks()).containsExactly("1 Verdict ✓", "1 Findings", "2 Oil");
  }

  @Test
  void only_the_supplied_typefaces_are_in_the_document() {
    assertThat(printed.fonts())
        .isNotEmpty()
        .allMatch(name -> name.startsWith("Roboto-") || name.startsWith("DejaVuSans"));
  }

  @Test
  void attachments_are_associated_with_the_document_and_unchanged() throws Exception {
    var attachments = printed.attachments();
    assertThat(attachments).containsOnlyKeys("survey.json", "assessment.json");
    for (var given : List.of(Sample.SURVEY, Sample.ASSESSMENT)) {
      var found = attachments.get(given.name());
      assertThat(found.getEmbeddedFile().toByteArray()).isEqualTo(given.content());
      assertThat(found.getEmbeddedFile().getSubtype()).isEqualTo(given.mediaType());
      assertThat(found.getFileDescription()).isEqualTo(given.description());
      assertThat(found.getCOSObject().getNameAsString("AFRelationship"))
          .isEqualTo(given.relationship().pdfName());
    }
    var catalogue = printed.document().getDocumentCatalog().getCOSObject();
    assertThat(catalogue.getCOSArray(COSName.getPDFName("AF")).size()).isEqualTo(2);
  }

  @Test
  void the_document_carries_the_date_of_the_survey_and_its_title() {
    var information = printed.document().getDocumentInformation();
    assertThat(information.getTitle()).isEqualTo(Sample.METADATA.title());
    assertThat(information.getAuthor()).isEqualTo(Sample.METADATA.author());
    assertThat(information.getSubject()).isEqualTo(Sample.METADATA.subject());
    assertThat(information.getKeywords()).isEqualTo("engines, condition");
    assertThat(information.getCOSObject().getString(COSName.CREATION_DATE))
        .isEqualTo("D:20261017104211+02'00'");
    assertThat(information.getMetadataKeys())
        .containsExactlyInAnyOrder(
            "Title",
            "Author",
            "Subject",
            "Keywords",
            "Creator",
            "Producer",
            "CreationDate",
            "ModDate");
    assertThat(printed.document().getDocumentCatalog().getViewerPreferences().displayDocTitle())
        .isTrue();
  }

  @Test
  void the_packet_of_metadata_says_the_same() throws Exception {
    var packet =
        new String(
            printed.document().getDocumentCatalog().getMetadata().toByteArray(),
            StandardCharsets.UTF_8);
    assertThat(packet)
        .contains(
            "Condition of the engines of Heron &amp; Hare", "Invented for a test &lt;only&gt;")
        .contains("2026-10-17T10:42:11+02:00")
        .contains("<pdfaid:part>3</pdfaid:part>", "<pdfuaid:part>1</pdfuaid:part>");
  }

  @Test
  void nothing_of_the_machine_is_in_the_document() throws Exception {
    var open = new java.io.ByteArrayOutputStream();
    printed
        .document()
        .save(open, org.apache.pdfbox.pdfwriter.compress.CompressParameters.NO_COMPRESSION);
    assertThat(open.toString(StandardCharsets.ISO_8859_1))
        .doesNotContain(System.getProperty("user.dir"))
        .doesNotContain(System.getProperty("java.io.tmpdir") + "/")
        .doesNotContain("openhtmltopdf");
  }

  @Test
  void a_document_without_pictures_or_attachments_conforms_too() {
    var plain =
        new PdfPrinter(new Typefaces())
            .print(Sample.page("<p>Nothing more.</p>"), Map.of(), List.of(), Sample.METADATA);
    assertThat(Validation.faults(plain)).isEmpty();
  }
}

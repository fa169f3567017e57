package org.seafettle.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;
import org.junit.jupiter.api.Test;
import org.seafettle.problem.Refused;

/** What lies in a report, and in files that only look like one. */
class EnclosedTest {

  private static final String DAMAGED =
      "old.pdf\n  The file is no PDF that can be read, or damaged.\n"
          + "  Take the report as it was made.";

  private static byte[] saved(PDDocument document) throws IOException {
    var out = new ByteArrayOutputStream();
    document.save(out);
    return out.toByteArray();
  }

  /** One page with one attachment; empty where it is only announced. */
  private static byte[] pdf(Optional<byte[]> content, COSName packing) {
    try (var document = new PDDocument()) {
      document.addPage(new PDPage());
      var file = new PDComplexFileSpecification();
      file.setFile("survey.json");
      if (content.isPresent()) {
        var in = new ByteArrayInputStream(content.get());
        file.setEmbeddedFile(new PDEmbeddedFile(document, in, packing));
      }
      var files = new PDEmbeddedFilesNameTreeNode();
      files.setNames(Map.of("survey.json", file));
      var names = new PDDocumentNameDictionary(document.getDocumentCatalog());
      names.setEmbeddedFiles(files);
      document.getDocumentCatalog().setNames(names);
      return saved(document);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void refused(byte[] pdf, String said) {
    var refused = catchThrowableOfType(Refused.class, () -> Enclosed.in("old.pdf", pdf));
    assertThat(refused.problems()).singleElement().hasToString(said);
  }

  @Test
  void what_was_put_into_a_report_comes_out_byte_for_byte() {
    var files = Enclosed.in("report.pdf", Sample.print(new PdfPrinter(new Typefaces())));
    assertThat(files).containsOnlyKeys("survey.json", "assessment.json");
    assertThat(files.get("survey.json")).isEqualTo(Sample.SURVEY.content());
    assertThat(files.get("assessment.json")).isEqualTo(Sample.ASSESSMENT.content());
  }

  @Test
  void nothing_lies_in_a_letter() throws IOException {
    try (var letter = new PDDocument()) {
      letter.addPage(new PDPage());
      assertThat(Enclosed.in("letter.pdf", saved(letter))).isEmpty();
    }
  }

  @Test
  void a_file_that_is_no_pdf_is_refused() {
    refused("Dear owner".getBytes(StandardCharsets.UTF_8), DAMAGED);
  }

  @Test
  void an_attachment_that_is_only_announced_is_damage() {
    refused(pdf(Optional.empty(), COSName.FLATE_DECODE), DAMAGED);
  }

  @Test
  void an_attachment_that_is_packed_as_no_report_is_is_refused() {
    refused(pdf(Optional.of(new byte[] {1, 2, 3}), COSName.LZW_DECODE), DAMAGED);
  }

  @Test
  void an_attachment_whose_bytes_were_lost_is_damage() {
    var content = new byte[3000];
    new java.util.Random(7).nextBytes(content);
    var pdf = pdf(Optional.of(content), COSName.FLATE_DECODE);
    Arrays.fill(pdf, pdf.length / 3, pdf.length / 2, (byte) 0);
    refused(pdf, DAMAGED);
  }

  @Test
  void an_attachment_that_swells_is_refused() {
    refused(
        pdf(Optional.of(new byte[32_000_001]), COSName.FLATE_DECODE),
        "old.pdf\n  The attached \"survey.json\" is longer than 32 MB.\n"
            + "  Take the report as it was made.");
  }
}

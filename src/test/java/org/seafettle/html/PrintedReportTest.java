package org.seafettle.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.seafettle.assessment.Assessment;
import org.seafettle.pdf.Metadata;
import org.seafettle.pdf.PdfPrinter;
import org.seafettle.pdf.Printed;
import org.seafettle.pdf.Typefaces;
import org.seafettle.pdf.Validation;
import org.seafettle.report.Options;
import org.seafettle.report.Report;
import org.seafettle.report.SedgeWarbler;

class PrintedReportTest {

  private static final Templates TEMPLATES = Templates.supplied();
  private static final PdfPrinter PRINTER = new PdfPrinter(new Typefaces());

  static List<String> purposes() {
    return SedgeWarbler.purposes();
  }

  static byte[] print(Assessment assessment) {
    var survey = assessment.survey();
    var report =
        Report.of(
            assessment, TEMPLATES.words("en"), SedgeWarbler.photoFacts(survey), Options.USUAL);
    var metadata =
        new Metadata(
            report.frame().title(),
            survey.occasion().by().name(),
            report.frame().subject(),
            List.of(),
            Locale.ENGLISH,
            OffsetDateTime.parse("2026-10-17T00:00:00Z"));
    return PRINTER.print(
        new Typesetter(TEMPLATES).set(report), SedgeWarbler.pictures(survey), List.of(), metadata);
  }

  @ParameterizedTest
  @MethodSource("purposes")
  void a_report_for_every_purpose_keeps_both_standards(String purpose) throws Exception {
    var pdf = print(SedgeWarbler.assessment(purpose, 5));
    var folder = Files.createDirectories(Path.of("target", "pages"));
    Files.write(folder.resolve(purpose + ".pdf"), pdf);
    assertThat(Validation.faults(pdf)).isEmpty();
    try (var printed = new Printed(pdf)) {
      assertThat(printed.text(1)).contains("Do not start the port engine: ");
    }
  }
}

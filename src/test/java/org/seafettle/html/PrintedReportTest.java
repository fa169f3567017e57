package org.seafettle.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.seafettle.assessment.Assessment;
import org.seafettle.pdf.Metadata;
import org.seafettle.pdf.PdfPrinter;
import org.seafettle.pdf.Printed;
import org.seafettle.pdf.Typefaces;
import org.seafettle.pdf.Validation;
import org.seafettle.report.Options;
import org.seafettle.report.Paper;
import org.seafettle.report.Report;
import org.seafettle.report.SedgeWarbler;
import org.seafettle.report.Units;

class PrintedReportTest {

  private static final Templates TEMPLATES = Templates.supplied();
  private static final PdfPrinter PRINTER = new PdfPrinter(new Typefaces());

  /** Head and foot of a page alone; a page with no more than that and a line or two is empty. */
  private static final int NEARLY_EMPTY = 330;

  /** The last page holds what is left, such as a row of photographs with their captions. */
  private static final int REMAINDER = 240;

  static List<String> purposes() {
    return SedgeWarbler.purposes();
  }

  private static byte[] print(Assessment assessment, Options options) {
    var survey = assessment.survey();
    var report =
        Report.of(assessment, TEMPLATES.words("en"), SedgeWarbler.photoFacts(survey), options);
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

  /** Kept under target/pages, so that a person can look at them. */
  private static byte[] printed(String purpose) throws Exception {
    var pdf = print(SedgeWarbler.assessment(purpose, 5), Options.USUAL);
    var folder = Files.createDirectories(Path.of("target", "pages"));
    Files.write(folder.resolve(purpose + ".pdf"), pdf);
    return pdf;
  }

  @ParameterizedTest
  @MethodSource("purposes")
  void a_report_for_every_purpose_keeps_both_standards_and_tells_the_verdict_first(String purpose)
      throws Exception {
    var pdf = printed(purpose);
    assertThat(Validation.faults(pdf)).isEmpty();
    try (var printed = new Printed(pdf)) {
      var first = printed.text(1).replace('\u00a0', ' ');
      assertThat(first)
          .contains("Do not start the port engine: water in the engine oil.")
          .contains("ZZQ41207C717")
          .contains("BW115-20417")
          .contains("17 October 2026, Quillhaven, yard, ashore")
          .contains("not seen");
      assertThat(first.indexOf("Do not start")).isLessThan(first.indexOf("Oil"));
    }
  }

  @ParameterizedTest
  @MethodSource("purposes")
  void no_page_is_nearly_empty_and_every_page_has_its_head_and_number(String purpose)
      throws Exception {
    try (var printed = new Printed(printed(purpose))) {
      for (int page = 1; page <= printed.pages(); page++) {
        assertThat(printed.text(page).length())
            .as("page " + page)
            .isGreaterThan(page < printed.pages() ? NEARLY_EMPTY : REMAINDER);
        assertThat(printed.text(page).replace('\u00a0', ' '))
            .contains("Report QH-2026-041 · 17 October 2026")
            .contains("page " + page + " of " + printed.pages());
      }
    }
  }

  @Test
  void a_finding_stands_on_one_page_with_its_photographs() throws Exception {
    var figure = Pattern.compile("Photograph [1-7]");
    try (var printed = new Printed(printed("pre-purchase"))) {
      for (int page = 1; page <= printed.pages(); page++) {
        var text = printed.text(page).replaceAll("[\\s\u00a0]+", " ");
        if (text.contains("Positive lug at the port engine")) {
          assertThat(text).contains("Port engine: a loose terminal").containsPattern(figure);
          assertThat(text).contains("take rings and watches off, and lay no tool on it");
        }
      }
      assertThat(printed.text()).contains("Positive lug at the port engine");
    }
  }

  @Test
  void every_drawing_and_photograph_says_what_it_shows() throws Exception {
    try (var printed = new Printed(printed("pre-purchase"))) {
      assertThat(printed.alternativeTexts())
          .contains("Oil: index 0, Failed")
          .anyMatch(t -> t.startsWith("Photograph 1. Port engine: water in the engine oil."))
          .anyMatch(t -> t.startsWith("state of charge 18.3"))
          .noneMatch(String::isBlank);
      assertThat(printed.structure()).contains("H1", "H2", "H3", "TH", "Figure");
      assertThat(printed.bookmarks())
          .contains("1 What to do", "1 Findings", "2 24 Port engine: water in the engine oil");
    }
  }

  @Test
  void a_draft_says_so_on_every_page_and_is_set_on_letter_paper_where_asked() {
    var pdf =
        print(SedgeWarbler.assessment("season-end", 0), new Options(Units.US, Paper.LETTER, true));
    try (var printed = new Printed(pdf)) {
      for (int page = 1; page <= printed.pages(); page++) {
        assertThat(printed.text(page).replace(" ", "")).contains("DRAFT");
        assertThat(printed.document().getPage(page - 1).getMediaBox().getWidth()).isEqualTo(612);
      }
    }
  }
}

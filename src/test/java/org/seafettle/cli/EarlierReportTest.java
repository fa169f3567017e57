package org.seafettle.cli;

import static java.nio.file.StandardCopyOption.REPLACE_EXISTING;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.seafettle.pdf.Printed;

/** A yearly record whose earlier survey is at hand as last year's report. */
class EarlierReportTest {

  private static final Path SAMPLE = Path.of("sample-surveys/sound-pair");

  @TempDir private Path folder;

  private Path lastYears;

  @BeforeEach
  void last_year_s_report_is_at_hand() throws IOException {
    var out = folder.resolve("reports");
    Run.of("report", SAMPLE.resolve("2025").toString(), "--out", out.toString());
    try (var files = Files.list(out)) {
      lastYears = Files.move(files.findFirst().orElseThrow(), out.resolve("2025.pdf"));
    }
  }

  /** This year's survey, with one earlier one. */
  private static Path survey(Path survey, String earlier) throws IOException {
    Files.createDirectories(survey.resolve("photos"));
    Files.writeString(
        survey.resolve("survey.json"),
        Files.readString(SAMPLE.resolve("2026/survey.json"))
            .replaceFirst("\"earlier\": *\\[[^]]*]", "\"earlier\": [\"" + earlier + "\"]"));
    try (var photos = Files.list(SAMPLE.resolve("2026/photos"))) {
      for (var photo : photos.toList()) {
        Files.copy(photo, survey.resolve("photos").resolve(photo.getFileName()), REPLACE_EXISTING);
      }
    }
    return survey;
  }

  /** The text of this year's record. */
  private String record(String earlier) throws IOException {
    var survey = survey(folder.resolve("now"), earlier);
    var out = folder.resolve("out-" + earlier.hashCode());
    assertThat(Run.of("report", survey.toString(), "--out", out.toString()).code()).isZero();
    try (var files = Files.list(out)) {
      try (var printed = new Printed(Files.readAllBytes(files.findFirst().orElseThrow()))) {
        return String.join(" ", printed.readAloud());
      }
    }
  }

  /** Another catalogue or scale may have printed other numbers; here an index of an engine. */
  private void reprint(String index) throws IOException {
    try (var report = Loader.loadPDF(lastYears.toFile())) {
      var files =
          new PDDocumentNameDictionary(report.getDocumentCatalog()).getEmbeddedFiles().getNames();
      var assessment = files.get("assessment.json");
      var json =
          new String(assessment.getEmbeddedFile().toByteArray(), StandardCharsets.UTF_8)
              .replaceFirst("\"printed\": \\d+", "\"printed\": " + index);
      assessment.setEmbeddedFile(
          new PDEmbeddedFile(
              report, new ByteArrayInputStream(json.getBytes(StandardCharsets.UTF_8))));
      report.save(folder.resolve("reprinted.pdf").toFile());
    }
    Files.move(folder.resolve("reprinted.pdf"), lastYears, REPLACE_EXISTING);
  }

  @Test
  void it_is_judged_anew_like_the_survey_itself() throws IOException {
    Files.createDirectories(folder.resolve("2025"));
    Files.copy(SAMPLE.resolve("2025/survey.json"), folder.resolve("2025/survey.json"));
    var ofReport = record("../reports/2025.pdf");
    var rules =
        "The report of 27 September 2025 was printed by program unreleased with catalogue 1.0.";
    assertThat(plain(ofReport)).contains(plain(rules)).doesNotContain("printedthen");
    assertThat(plain(ofReport).replace(plain(rules), ""))
        .startsWith(plain(record("../2025/survey.json")).substring(0, 2000));
  }

  private static String plain(String text) {
    return text.replaceAll("[\\s\u00A0]+", "");
  }

  @Test
  void what_was_printed_then_stands_beside_it_where_that_was_another() throws IOException {
    reprint("41");
    assertThat(record("../reports/2025.pdf").replace('\u00A0', ' '))
        .contains("; printed then: 41 ");
  }

  @Test
  void the_season_makes_a_report_anew_when_the_earlier_one_has_changed() throws IOException {
    var yard = folder.resolve("yard");
    var boat = yard.resolve("tern");
    survey(boat, "2025.pdf");
    Files.copy(lastYears, boat.resolve("2025.pdf"));
    var out = folder.resolve("season").toString();
    assertThat(Run.of("season", yard.toString(), "--out", out).err()).contains("1 made, 0 unch");
    assertThat(Run.of("season", yard.toString(), "--out", out).err()).contains("0 made, 1 unch");
    reprint("41");
    Files.copy(lastYears, boat.resolve("2025.pdf"), REPLACE_EXISTING);
    assertThat(Run.of("season", yard.toString(), "--out", out).err()).contains("1 made, 0 unch");
  }
}

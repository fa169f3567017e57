package org.seafettle.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.seafettle.assessment.Assessor;
import org.seafettle.json.CatalogueReader;
import org.seafettle.json.SurveyReader;
import org.seafettle.json.SurveySource;
import org.seafettle.pdf.Printed;
import org.seafettle.pdf.Validation;

/** Every sample through the whole pipe, and what is then on paper. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SampleReportsTest {

  @TempDir static Path folder;

  private final Map<String, String> reports =
      Map.of(
          "neglected", "2026-10-17-marsh-heron-pre-purchase",
          "half-inspected", "2026-11-07-small-beer-pre-purchase",
          "diesel-inboard", "2026-10-29-patient-griet-season-end",
          "sound-pair/2026", "2026-09-26-tern-s-errand-yearly-record");

  @BeforeAll
  void print_all_samples() {
    for (var sample : samples()) {
      var run = Run.of("report", path(sample), "--out", folder.toString(), "--json", "--html");
      assertThat(run.code()).as(run.err()).isZero();
    }
  }

  List<String> samples() {
    return reports.keySet().stream().sorted().toList();
  }

  private static String path(String sample) {
    return "sample-surveys/" + sample;
  }

  private byte[] file(String sample, String ending) {
    try {
      return Files.readAllBytes(folder.resolve(reports.get(sample) + ending));
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static SurveySource source(String sample) {
    return new SurveyReader(CatalogueReader.supplied(), c -> true, (name, report) -> Map.of())
        .read(Path.of(path(sample)));
  }

  @ParameterizedTest
  @MethodSource("samples")
  void is_archival_and_accessible_at_once(String sample) {
    assertThat(Validation.faults(file(sample, ".pdf"))).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("samples")
  void carries_the_survey_and_the_assessment_inside(String sample) throws IOException {
    try (var printed = new Printed(file(sample, ".pdf"))) {
      assertThat(printed.attachments()).containsOnlyKeys("survey.json", "assessment.json");
      assertThat(attached(printed, "survey.json")).isEqualTo(source(sample).json());
      assertThat(attached(printed, "assessment.json")).isEqualTo(file(sample, ".assessment.json"));
    }
  }

  private static byte[] attached(Printed printed, String name) throws IOException {
    return printed.attachments().get(name).getEmbeddedFileUnicode().toByteArray();
  }

  @ParameterizedTest
  @MethodSource("samples")
  void tells_every_finding_with_what_was_observed(String sample) throws IOException {
    var survey = source(sample).survey();
    var assessment =
        new Assessor(CatalogueReader.supplied())
            .assess(survey, source(sample).earlier().stream().map(SurveySource::survey).toList());
    try (var printed = new Printed(file(sample, ".pdf"))) {
      var text = plain(String.join(" ", printed.readAloud()));
      assertThat(assessment.findings()).isNotEmpty();
      for (var finding : assessment.findings()) {
        assertThat(text).contains(plain(finding.seen().orElseThrow().outcome().saying().brief()));
      }
      assertThat(text).contains(plain(survey.boat().name()));
    }
  }

  @ParameterizedTest
  @MethodSource("samples")
  void shows_every_photograph_and_says_what_is_on_it(String sample) throws IOException {
    var survey = source(sample).survey();
    try (var printed = new Printed(file(sample, ".pdf"))) {
      assertThat(printed.pictures()).isEqualTo(survey.photos().size());
      for (var photo : survey.photos()) {
        photo
            .caption()
            .ifPresent(
                caption ->
                    assertThat(printed.alternativeTexts())
                        .anyMatch(alt -> plain(alt).contains(plain(caption))));
      }
    }
  }

  @ParameterizedTest
  @MethodSource("samples")
  void says_on_every_page_which_it_is_and_of_which_report(String sample) throws IOException {
    try (var printed = new Printed(file(sample, ".pdf"))) {
      for (int page = 1; page <= printed.pages(); page++) {
        assertThat(plain(printed.text(page)))
            .contains("page " + page + " of " + printed.pages())
            .contains(source(sample).survey().occasion().id());
      }
    }
  }

  @ParameterizedTest
  @MethodSource("samples")
  void has_bookmarks_and_a_title(String sample) throws IOException {
    try (var printed = new Printed(file(sample, ".pdf"))) {
      assertThat(printed.bookmarks()).isNotEmpty();
      assertThat(printed.document().getDocumentInformation().getTitle())
          .contains(source(sample).survey().boat().name());
    }
  }

  @ParameterizedTest
  @MethodSource("samples")
  void tells_nothing_that_the_camera_wrote_down_about_places(String sample) throws IOException {
    try (var printed = new Printed(file(sample, ".pdf"))) {
      for (var picture : printed.pictureBytes()) {
        assertThat(new String(picture, java.nio.charset.StandardCharsets.ISO_8859_1))
            .doesNotContain("Exif")
            .doesNotContain("http://ns.adobe.com");
      }
    }
  }

  /** Without the differences between kinds of blanks and line ends that setting makes. */
  private static String plain(String text) {
    return text.replaceAll("[\\s\\u00a0\\u202f]+", " ");
  }
}

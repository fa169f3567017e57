package org.seafettle.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What lies between two surveys, as the program tells it. */
class CompareCommandTest {

  private static final String THEN = "sample-surveys/sound-pair/2025";
  private static final String NOW = "sample-surveys/sound-pair/2026";

  @TempDir private Path folder;

  @Test
  void two_seasons_of_one_boat_stand_side_by_side() throws IOException {
    var run = Run.of("compare", THEN, NOW);
    assertThat(run.code()).isZero();
    Golden.assertSays("compare", run.out());
  }

  @Test
  void the_survey_of_the_earlier_day_is_the_earlier_one_in_either_order() {
    assertThat(Run.of("compare", NOW, THEN).out()).isEqualTo(Run.of("compare", THEN, NOW).out());
  }

  @Test
  void machines_are_told_in_json() throws IOException {
    var run = Run.of("compare", "--json", THEN, NOW);
    assertThat(run.code()).isZero();
    Golden.assertSays("compare-json", run.out());
  }

  @Test
  void two_boats_are_refused_unless_that_is_meant() {
    var run = Run.of("compare", "sample-surveys/neglected", NOW);
    assertThat(run.code()).isEqualTo(3);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains("two boats", "Tern's Errand", "--different-boats");
    assertThat(Run.of("compare", "--different-boats", "sample-surveys/neglected", NOW).code())
        .isZero();
  }

  @Test
  void a_report_is_compared_by_the_survey_in_it_and_what_it_printed_is_shown() throws IOException {
    Run.of("report", NOW, "--out", folder.toString());
    Path pdf;
    try (var files = Files.list(folder)) {
      pdf = files.findFirst().orElseThrow();
    }
    var run = Run.of("compare", THEN, pdf.toString());
    assertThat(run.code()).isZero();
    assertThat(run.out().lines().filter(l -> !l.startsWith("    as printed")))
        .containsExactlyElementsOf(Run.of("compare", THEN, NOW).out().lines().toList());
    assertThat(run.out()).contains("    as printed");
  }

  @Test
  void a_pdf_that_is_no_report_is_refused() throws IOException {
    var file = Files.writeString(folder.resolve("letter.pdf"), "no report");
    var run = Run.of("compare", file.toString(), NOW);
    assertThat(run.code()).isEqualTo(3);
    assertThat(run.err()).contains("letter.pdf").doesNotContain("\tat ");
  }

  @Test
  void a_calendar_lies_beside_the_report_when_asked_for() throws IOException {
    var run = Run.of("report", "--calendar", NOW, "--out", folder.toString());
    assertThat(run.code()).isZero();
    var name = "2026-09-26-tern-s-errand-yearly-record.ics";
    assertThat(run.out()).contains(name);
    Golden.assertSays("calendar", Files.readString(folder.resolve(name)).replace("\r\n", "\n"));
  }
}

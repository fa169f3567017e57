package org.seafettle.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the program says and how it ends. */
class CommandLineTest {

  @TempDir private Path folder;

  private static List<Path> files(Path folder) throws IOException {
    try (var all = Files.list(folder)) {
      return all.sorted().toList();
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "report", "season", "compare", "validate", "catalogue", "explain"})
  void every_command_explains_itself(String command) throws IOException {
    var run = command.isEmpty() ? Run.of("--help") : Run.of(command, "--help");
    assertThat(run.code()).isZero();
    Golden.assertSays("help" + (command.isEmpty() ? "" : "-" + command), run.out());
  }

  @Test
  void the_version_is_told() {
    var run = Run.of("--version");
    assertThat(run.code()).isZero();
    assertThat(run.out()).startsWith("seafettle ");
  }

  @Test
  void without_a_command_it_says_how_to_find_one() {
    var run = Run.of();
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("No command was given.").contains("seafettle --help");
  }

  @Test
  void a_misspelt_command_is_met_with_the_right_one() {
    var run = Run.of("raport", "x");
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("report");
  }

  @Test
  void the_catalogue_is_listed() throws IOException {
    var run = Run.of("catalogue");
    assertThat(run.code()).isZero();
    Golden.assertSays("catalogue", run.out());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"oil-level", "oil-appearance", "engine-oil-change", "battery-rest-voltage"})
  void a_check_of_each_kind_is_explained(String check) throws IOException {
    var run = Run.of("explain", check);
    assertThat(run.code()).isZero();
    Golden.assertSays("explain-" + check, run.out());
  }

  @Test
  void every_check_can_be_explained() {
    var checks =
        org.seafettle.json.CatalogueReader.supplied().checks().stream().map(c -> c.id()).toList();
    for (var check : checks) {
      var run = Run.of("explain", check);
      assertThat(run.code()).as(check).isZero();
      assertThat(run.out()).as(check).contains("How", "Why", "What it can find", "limit: ");
    }
  }

  @Test
  void an_unknown_check_is_met_with_the_nearest() {
    var run = Run.of("explain", "oil-levle");
    assertThat(run.code()).isEqualTo(3);
    assertThat(run.err()).contains("Did you mean \"oil-level\"?");
  }

  @Test
  void a_sound_survey_is_found_without_faults() {
    var run = Run.of("validate", "sample-surveys/neglected");
    assertThat(run.code()).isZero();
    assertThat(run.out()).contains("no faults");
  }

  @Test
  void a_broken_survey_is_refused_with_all_its_faults_and_nothing_is_written() throws IOException {
    var run = Run.of("report", "sample-surveys/broken", "--out", folder.toString());
    assertThat(run.code()).isEqualTo(3);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).doesNotContain("\tat ");
    assertThat(files(folder)).isEmpty();
    Golden.assertSays("broken", run.err());
  }

  @Test
  void a_report_that_was_there_before_outlives_a_run_that_is_refused() throws IOException {
    var earlier = folder.resolve("2026-10-17-marsh-heron-pre-purchase.pdf");
    Files.writeString(earlier, "an earlier report");
    Run.of("report", "sample-surveys/broken", "--out", folder.toString());
    assertThat(earlier).hasContent("an earlier report");
  }

  @Test
  void a_report_that_says_something_else_is_kept_beside_the_new_one() throws IOException {
    var name = "2026-10-17-marsh-heron-pre-purchase";
    Files.writeString(folder.resolve(name + ".pdf"), "an earlier report");
    var run = Run.of("report", "sample-surveys/neglected", "--out", folder.toString());
    assertThat(run.code()).isZero();
    assertThat(folder.resolve(name + ".earlier-1.pdf")).hasContent("an earlier report");
    assertThat(run.err()).contains(name + ".earlier-1.pdf");
    assertThat(files(folder)).hasSize(2);
  }

  @Test
  void the_same_report_once_more_changes_nothing() throws IOException {
    Run.of("report", "sample-surveys/neglected", "--out", folder.toString());
    var again = Run.of("report", "sample-surveys/neglected", "--out", folder.toString());
    assertThat(again.code()).isZero();
    assertThat(files(folder)).hasSize(1);
  }

  @Test
  void a_person_is_shown_progress_and_a_pipe_is_not() {
    var watched = Run.onATerminal("report", "sample-surveys/neglected", "--out", folder.toString());
    var piped = Run.of("report", "sample-surveys/neglected", "--out", folder.toString());
    assertThat(watched.err()).contains("reading the survey").contains("printing");
    assertThat(piped.err()).doesNotContain("reading the survey");
    assertThat(piped.out().lines()).hasSize(1);
  }

  @Test
  void a_folder_that_cannot_be_written_to_is_named() throws IOException {
    var file = Files.writeString(folder.resolve("a-file"), "no folder");
    var run = Run.of("report", "sample-surveys/neglected", "--out", file.toString());
    assertThat(run.code()).isEqualTo(4);
    assertThat(run.err()).contains("a-file").doesNotContain("\tat ");
  }

  @Test
  void a_survey_that_is_not_there_is_named() {
    var run = Run.of("report", "sample-surveys/nowhere");
    assertThat(run.code()).isEqualTo(3);
    assertThat(run.err()).contains("nowhere").contains("There is no such file.");
  }

  @Test
  void an_own_template_replaces_the_supplied_one_file_by_file() throws IOException {
    var own = Files.createDirectories(folder.resolve("own"));
    Files.writeString(
        own.resolve("words-en.properties"),
        Files.readString(Path.of("templates/words-en.properties"))
            .replaceAll("(?m)^(subtitle\\.pre-purchase\\..*)=.*$", "$1=Our own heading"));
    var run =
        Run.of(
            "report",
            "sample-surveys/neglected",
            "--out",
            folder.resolve("out").toString(),
            "--templates",
            own.toString(),
            "--html");
    assertThat(run.code()).isZero();
    assertThat(Files.readString(folder.resolve("out/2026-10-17-marsh-heron-pre-purchase.html")))
        .contains("Our own heading");
  }

  @Test
  void a_template_of_an_unknown_name_is_refused_with_the_nearest_right_one() throws IOException {
    Files.writeString(folder.resolve("pre-purchas.ftlh"), "");
    var run = Run.of("report", "sample-surveys/neglected", "--templates", folder.toString());
    assertThat(run.code()).isEqualTo(3);
    assertThat(run.err()).contains("pre-purchase.ftlh");
  }

  @Test
  void a_stack_trace_is_shown_only_when_asked_for() {
    assertThat(Run.of("report", "sample-surveys/nowhere", "--debug").err()).contains("\tat ");
  }
}

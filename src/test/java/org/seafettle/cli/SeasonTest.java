package org.seafettle.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.seafettle.pdf.Printed;
import org.seafettle.pdf.Validation;
import org.seafettle.samples.DrawnYard;

/** A yard of twelve boats, one of them with a broken survey and two of the same name. */
class SeasonTest {

  private static final int BOATS = 12;

  @TempDir static Path folder;
  private static Path yard;
  private static Path whole;
  private static Run run;

  @TempDir Path own;

  @BeforeAll
  static void make_the_season_in_one_run() throws IOException {
    yard = folder.resolve("yard");
    whole = folder.resolve("whole");
    DrawnYard.draw(yard, BOATS - 2, 320);
    copy(yard.resolve("berth-0003"), yard.resolve("berth 3 again"));
    Files.createDirectories(yard.resolve("broken"));
    Files.writeString(yard.resolve("broken/survey.json"), "{ \"format\": \"none\" }");
    Files.createDirectories(yard.resolve("no survey in here"));
    run = season(yard, "--out", whole.toString(), "--jobs", "2");
  }

  private static void copy(Path from, Path to) throws IOException {
    try (var all = Files.walk(from)) {
      for (var file : all.toList()) {
        Files.copy(file, to.resolve(from.relativize(file)));
      }
    }
  }

  private static Run season(Path surveys, String... more) {
    var arguments = new ArrayList<>(List.of("season", surveys.toString()));
    arguments.addAll(List.of(more));
    return Run.of(arguments.toArray(String[]::new));
  }

  /** Everything that a user finds in a folder, by name. */
  private static Map<String, String> contents(Path out) throws IOException {
    var contents = new TreeMap<String, String>();
    try (var files = Files.list(out)) {
      for (var file : files.filter(Files::isRegularFile).toList()) {
        contents.put(file.getFileName().toString(), Sha256.of(file));
      }
    }
    return contents;
  }

  private static List<Path> reports(Path out) throws IOException {
    try (var files = Files.list(out)) {
      return files
          .filter(f -> f.toString().matches(".*-season-end[a-z0-9-]*\\.pdf"))
          .sorted()
          .toList();
    }
  }

  @Test
  void a_broken_survey_stops_nobody_else_and_is_told_with_its_faults() {
    assertThat(run.code()).isEqualTo(3);
    assertThat(run.err()).contains("broken\n").contains("11 made, 0 unchanged, 1 failed, ");
    assertThat(run.out().lines().map(line -> Path.of(line).getFileName().toString()))
        .containsExactly(
            "season-overview.pdf", "season-work.csv", "season-work.json", "season-calendar.ics");
  }

  @Test
  void two_boats_of_the_same_name_both_have_their_report() throws IOException {
    assertThat(reports(whole)).hasSize(BOATS - 1);
    assertThat(reports(whole).stream().map(f -> f.getFileName().toString()))
        .anyMatch(name -> name.endsWith("-season-end-berth-0003.pdf"))
        .anyMatch(name -> name.endsWith("-season-end-berth-3-again.pdf"));
  }

  @Test
  void a_report_is_the_one_that_the_boat_would_get_alone() throws IOException {
    assertThat(
            Run.of("report", yard.resolve("berth-0001").toString(), "--out", own.toString()).code())
        .isZero();
    for (var alone : reports(own)) {
      assertThat(whole.resolve(alone.getFileName())).hasSameBinaryContentAs(alone);
    }
  }

  @Test
  void photographs_are_prepared_once_and_a_damaged_one_again() throws IOException {
    var surveys = own.resolve("surveys");
    DrawnYard.draw(surveys, 1, 2400);
    var out = own.resolve("out");
    assertThat(season(surveys, "--out", out.toString()).code()).isZero();
    var first = contents(out);
    var kept = out.resolve(".seafettle/photographs");
    var prints = contents(kept);
    assertThat(prints).hasSize(6);
    for (var report : reports(out)) {
      Files.delete(report);
    }
    Files.writeString(kept.resolve(prints.keySet().iterator().next()), "cut short");
    var marked = Files.getLastModifiedTime(kept.resolve(List.copyOf(prints.keySet()).get(1)));
    assertThat(season(surveys, "--out", out.toString()).code()).isZero();
    assertThat(contents(out)).isEqualTo(first);
    assertThat(contents(kept)).isEqualTo(prints);
    assertThat(Files.getLastModifiedTime(kept.resolve(List.copyOf(prints.keySet()).get(1))))
        .isEqualTo(marked);
  }

  @Test
  void the_overview_is_archival_and_accessible_and_tells_every_boat() throws IOException {
    var overview = Files.readAllBytes(whole.resolve("season-overview.pdf"));
    assertThat(Validation.faults(overview)).isEmpty();
    try (var printed = new Printed(overview)) {
      var text = String.join(" ", printed.readAloud());
      assertThat(text).contains("Season overview", "What to order", "broken");
      assertThat(printed.alternativeTexts())
          .anyMatch(alt -> alt.startsWith("Boats by their gravest open finding, oil:"));
      assertThat(printed.pictures()).isZero();
    }
  }

  @Test
  void a_run_that_is_killed_goes_on_where_it_was() throws Exception {
    var out = own.resolve("out");
    kill(start(out, "--jobs", "1"), out, 3);
    var unfinished = Files.writeString(out.resolve(".seafettle/unfinished-1-of-1/x.pdf"), "half");
    var before = new TreeMap<Path, Object>();
    for (var report : reports(out)) {
      before.put(report, Files.getLastModifiedTime(report));
    }
    long kept = records(out);
    assertThat(kept).isLessThan(BOATS);
    var again = season(yard, "--out", out.toString(), "--jobs", "3");
    assertThat(again.err()).contains(" unchanged, 1 failed");
    assertThat(unchanged(again)).isBetween(kept - 1, kept);
    assertThat(unfinished).doesNotExist();
    assertThat(contents(out)).isEqualTo(contents(whole));
    assertThat(before.entrySet().stream().filter(e -> !same(e)).count()).isLessThanOrEqualTo(1);
  }

  private static boolean same(Map.Entry<Path, Object> before) {
    try {
      return Files.getLastModifiedTime(before.getKey()).equals(before.getValue());
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static long unchanged(Run run) {
    return Long.parseLong(run.err().replaceAll("(?s).* made, (\\d+) unchanged.*", "$1"));
  }

  private static Process start(Path out, String... more) throws IOException {
    var command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-Djava.awt.headless=true",
                "-Duser.timezone=Pacific/Apia",
                "-Duser.language=tr",
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName(),
                "season",
                yard.toString(),
                "--out",
                out.toString()));
    command.addAll(List.of(more));
    return new ProcessBuilder(command)
        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
        .redirectError(ProcessBuilder.Redirect.DISCARD)
        .start();
  }

  /** Waits for so many records, then takes the program away without a warning. */
  private static void kill(Process process, Path out, int records) throws Exception {
    while (records(out) < records && process.isAlive()) {
      process.waitFor(10, TimeUnit.MILLISECONDS);
    }
    assertThat(process.isAlive()).as("still at work").isTrue();
    process.destroyForcibly().waitFor();
  }

  private static long records(Path out) throws IOException {
    var records = out.resolve(".seafettle/records");
    if (!Files.isDirectory(records)) {
      return 0;
    }
    try (var files = Files.list(records)) {
      return files.count();
    }
  }

  @Test
  void what_changed_is_made_again_and_nothing_else() throws IOException {
    var small = own.resolve("yard");
    var out = own.resolve("out");
    for (var boat : List.of("berth-0001", "berth-0002")) {
      Files.createDirectories(small);
      copy(yard.resolve(boat), small.resolve(boat));
    }
    assertThat(season(small, "--out", out.toString()).err()).startsWith("2 made, 0 unchanged");
    assertThat(season(small, "--out", out.toString()).err()).startsWith("0 made, 2 unchanged");

    var photo = small.resolve("berth-0002/photos/belt.jpg");
    Files.copy(
        small.resolve("berth-0001/photos/belt.jpg"),
        photo,
        java.nio.file.StandardCopyOption.REPLACE_EXISTING);
    assertThat(season(small, "--out", out.toString()).err()).startsWith("1 made, 1 unchanged");

    Files.delete(reports(out).get(0));
    assertThat(season(small, "--out", out.toString()).err()).startsWith("1 made, 1 unchanged");

    copy(small.resolve("berth-0001"), small.resolve("a copy"));
    var run = season(small, "--out", out.toString());
    assertThat(run.err()).startsWith("1 made, 2 unchanged");
    assertThat(reports(out).stream().map(f -> f.getFileName().toString()))
        .anyMatch(name -> name.endsWith("-a-copy.pdf"))
        .anyMatch(name -> name.endsWith("-berth-0001.pdf"));
  }

  @Test
  void parts_made_apart_give_the_overview_of_the_whole() throws IOException {
    var parts = List.of(own.resolve("one"), own.resolve("two"));
    var first = season(yard, "--out", parts.get(0).toString(), "--part", "1/2", "--jobs", "1");
    var merged = own.resolve("merged");
    var early = Run.of("season", "--merge", parts.get(0).toString(), "--out", merged.toString());
    assertThat(early.code()).isEqualTo(3);
    assertThat(early.err()).contains("No part has made its report yet.");
    var second = season(yard, "--out", parts.get(1).toString(), "--part", "2/2");
    assertThat(List.of(first.code(), second.code())).containsExactlyInAnyOrder(0, 3);
    assertThat(reports(parts.get(0)).size() + reports(parts.get(1)).size()).isEqualTo(BOATS - 1);
    var late =
        Run.of(
            "season",
            "--out",
            merged.toString(),
            "--merge",
            parts.get(1).toString(),
            parts.get(0).toString());
    assertThat(late.code()).as(late.err()).isEqualTo(3);
    for (var paper : List.of("season-overview.pdf", "season-work.csv", "season-work.json")) {
      assertThat(merged.resolve(paper)).hasSameBinaryContentAs(whole.resolve(paper));
    }
  }

  @Test
  void one_run_keeps_another_out_of_its_folder() throws IOException {
    var state = new SeasonState(own, Part.WHOLE);
    var running = state.begin();
    try {
      assertThat(season(yard, "--out", own.toString()).err())
          .contains("Another run is writing into this folder.");
    } finally {
      running.close();
    }
  }

  @Test
  void a_folder_without_surveys_is_refused() {
    assertThat(season(own).code()).isEqualTo(3);
    assertThat(season(own.resolve("nowhere")).code()).isEqualTo(3);
  }

  @Test
  void a_command_that_says_too_little_or_too_much_is_not_understood() {
    assertThat(Run.of("season").code()).isEqualTo(2);
    assertThat(season(yard, "--merge", "x").code()).isEqualTo(2);
    assertThat(season(yard, "--jobs", "0").code()).isEqualTo(2);
    assertThat(season(yard, "--part", "3/2").code()).isEqualTo(2);
  }
}

package org.seafettle.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The program as it is handed out, started as its users start it. */
class DistributionIT {

  private static final Path HOME = Path.of("target/seafettle").toAbsolutePath();
  private static final Path SAMPLES = Path.of("sample-surveys").toAbsolutePath();
  private static final String REPORT = "2026-10-17-marsh-heron-pre-purchase.pdf";

  @TempDir private Path folder;

  @BeforeAll
  static void only_where_there_is_a_shell() {
    assumeTrue(Files.isExecutable(Path.of("/bin/sh")), "the launcher for Unix needs a shell");
  }

  private record Ended(int code, String out, String err) {}

  private static Ended start(Path home, Path from, Map<String, String> more, String... arguments)
      throws IOException, InterruptedException {
    var command = new ArrayList<>(List.of(home.resolve("bin/seafettle").toString()));
    command.addAll(List.of(arguments));
    var builder = new ProcessBuilder(command).directory(from.toFile());
    builder.environment().putAll(more);
    var out = Files.createTempFile("out", null);
    var err = Files.createTempFile("err", null);
    try {
      var process = builder.redirectOutput(out.toFile()).redirectError(err.toFile()).start();
      int code = process.waitFor();
      return new Ended(
          code,
          Files.readString(out, StandardCharsets.UTF_8),
          Files.readString(err, StandardCharsets.UTF_8));
    } finally {
      Files.deleteIfExists(out);
      Files.deleteIfExists(err);
    }
  }

  private Ended start(String... arguments) throws IOException, InterruptedException {
    return start(HOME, folder, Map.of(), arguments);
  }

  @Test
  void it_tells_its_version() throws Exception {
    assertThat(start("--version").out()).startsWith("seafettle 1.");
  }

  @ParameterizedTest
  @CsvSource({
    "neglected, " + REPORT,
    "diesel-inboard, 2026-10-29-patient-griet-season-end.pdf",
    "sound-pair/2026, 2026-09-26-tern-s-errand-yearly-record.pdf"
  })
  void the_reports_that_the_project_shows_are_made_byte_for_byte(String sample, String report)
      throws Exception {
    var run = start("report", SAMPLES.resolve(sample).toString(), "--out", "made");
    assertThat(run.code()).as(run.err()).isZero();
    assertThat(run.err()).isEmpty();
    if (Boolean.getBoolean("seafettle.rebaseline")) {
      Files.copy(
          folder.resolve("made").resolve(report),
          Path.of("output", report),
          StandardCopyOption.REPLACE_EXISTING);
    }
    assertThat(folder.resolve("made").resolve(report))
        .as("if it may change: mvn verify -Dseafettle.rebaseline=true")
        .hasSameBinaryContentAs(Path.of("output", report));
  }

  @Test
  void another_zone_language_and_folder_change_no_byte() throws Exception {
    var here = start("report", SAMPLES.resolve("sound-pair/2026").toString(), "--out", "here");
    var elsewhere = Files.createDirectories(folder.resolve("some where/else"));
    var there =
        start(
            HOME,
            elsewhere,
            Map.of(
                "SEAFETTLE_OPTS",
                "-Duser.timezone=Pacific/Apia -Duser.language=tr -Duser.country=TR",
                "TZ",
                "Asia/Kathmandu",
                "LC_ALL",
                "C"),
            "report",
            SAMPLES.resolve("sound-pair/2026").toString(),
            "--out",
            folder.resolve("there").toString());
    assertThat(List.of(here.code(), there.code())).containsOnly(0);
    var name = "2026-09-26-tern-s-errand-yearly-record.pdf";
    assertThat(folder.resolve("here").resolve(name))
        .hasSameBinaryContentAs(folder.resolve("there").resolve(name));
  }

  @Test
  void the_shell_is_told_how_it_ended() throws Exception {
    assertThat(start("report", SAMPLES.resolve("broken").toString()).code()).isEqualTo(3);
    assertThat(start("no-such-command").code()).isEqualTo(2);
    assertThat(folder.resolve("output")).doesNotExist();
  }

  @Test
  void the_zip_unpacked_elsewhere_makes_the_same_report_also_when_started_through_a_link()
      throws Exception {
    unzip(Path.of("target/seafettle-1.0.0.zip"), folder);
    var home = folder.resolve("seafettle-1.0.0");
    assertThat(home.resolve("bin/seafettle").toFile().setExecutable(true)).isTrue();
    var link = Files.createDirectories(folder.resolve("links/bin"));
    Files.createSymbolicLink(link.resolve("seafettle"), home.resolve("bin/seafettle"));
    for (int time = 1; time <= 2; time++) {
      var run =
          start(
              folder.resolve("links"),
              folder,
              Map.of(),
              "report",
              SAMPLES.resolve("neglected").toString(),
              "--out",
              "made-" + time);
      assertThat(run.code()).as(run.err()).isZero();
      assertThat(folder.resolve("made-" + time).resolve(REPORT))
          .hasSameBinaryContentAs(Path.of("output", REPORT));
    }
    try (var lib = Files.list(home.resolve("lib"))) {
      assertThat(lib.filter(file -> file.toString().endsWith(".jsa"))).hasSize(1);
    }
  }

  private static void unzip(Path zip, Path to) throws IOException {
    try (var file = new ZipFile(zip.toFile())) {
      for (var entry : file.stream().toList()) {
        var target = to.resolve(entry.getName());
        if (entry.isDirectory()) {
          Files.createDirectories(target);
        } else {
          Files.createDirectories(target.getParent());
          try (var in = file.getInputStream(entry)) {
            Files.copy(in, target);
          }
        }
      }
    }
  }
}

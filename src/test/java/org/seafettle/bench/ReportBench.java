package org.seafettle.bench;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * How long one report takes, cold and warm, and how long a browser takes to print the same pages.
 * Prints a table. Times are wall clock on this machine in this one run; compare nothing else.
 */
public final class ReportBench {

  private static final int RUNS = 9;
  private static final Path FOLDER = Path.of("target/bench").toAbsolutePath();
  private static final Path LAUNCHER = Path.of("target/seafettle/bin/seafettle").toAbsolutePath();

  private ReportBench() {}

  private record Measured(double seconds, double megabytes) {}

  public static void main(String[] arguments) throws Exception {
    var survey = BenchSurvey.in(FOLDER.resolve("survey"));
    var command =
        List.of(LAUNCHER.toString(), "report", survey.toString(), "--out", out(), "--html");
    run(command); // makes the class-data archive
    var cold = median(command);
    System.out.println("| what | seconds | MB at most |");
    System.out.println("|---|---|---|");
    row("one report, cold", cold);
    browser().ifPresent(program -> rowOfBrowser(program, survey));
    rowOfWarm("one report after another, warm, on one thread", warm(survey, List.of()));
    rowOfWarm(
        "the same with the compiler and the collector on the same core",
        warm(survey, List.of("taskset", "-c", "0")));
  }

  private static void rowOfWarm(String what, double seconds) {
    System.out.println(
        String.format(Locale.ROOT, "| %s | %.2f (%.1f a second) | |", what, seconds, 1 / seconds));
  }

  private static String out() {
    return FOLDER.resolve("out").toString();
  }

  private static void row(String what, Measured measured) {
    System.out.println(
        String.format(
            Locale.ROOT, "| %s | %.2f | %.0f |", what, measured.seconds(), measured.megabytes()));
  }

  private static void rowOfBrowser(String program, Path survey) {
    try {
      var page = page(survey);
      row(
          "the same pages printed by headless Chromium",
          median(
              List.of(
                  program,
                  "--headless",
                  "--no-sandbox",
                  "--disable-gpu",
                  "--disable-quic",
                  "--no-first-run",
                  "--disable-background-networking",
                  "--disable-component-update",
                  "--disable-sync",
                  "--user-data-dir=" + FOLDER.resolve("browser"),
                  "--print-to-pdf=" + FOLDER.resolve("browser.pdf"),
                  page.toUri().toString())));
    } catch (IOException | InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  /** The pages that were printed, with the pictures where a browser finds them. */
  private static Path page(Path survey) throws IOException {
    var xhtml = FOLDER.resolve("page.xhtml");
    try (var made = Files.list(Path.of(out()))) {
      var html = made.filter(f -> f.toString().endsWith(".html")).findFirst().orElseThrow();
      var text = Files.readString(html);
      var photos = new ArrayList<Path>();
      try (var files = Files.list(survey.resolve("photos"))) {
        files.sorted().forEach(photos::add);
      }
      for (int i = 0; text.contains("\"photo:"); i = (i + 1) % photos.size()) {
        text = text.replaceFirst("\"photo:[^\"]*\"", "\"" + photos.get(i).toUri() + "\"");
      }
      return Files.writeString(xhtml, text);
    }
  }

  private static Optional<String> browser() {
    return Arrays.stream(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
        .flatMap(dir -> List.of(dir + "/chromium", dir + "/chromium-browser").stream())
        .filter(program -> Files.isExecutable(Path.of(program)))
        .findFirst();
  }

  private static double warm(Path survey, List<String> before)
      throws IOException, InterruptedException {
    var log = FOLDER.resolve("warm.txt");
    var command = new ArrayList<>(before);
    command.addAll(
        List.of(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:+UseSerialGC",
            "-Xmx512m",
            "-cp",
            Path.of("target/test-classes").toAbsolutePath()
                + File.pathSeparator
                + LAUNCHER.getParent().resolveSibling("lib").resolve("*"),
            WarmLoop.class.getName(),
            survey.toString()));
    var process =
        new ProcessBuilder(command).redirectOutput(log.toFile()).redirectErrorStream(true).start();
    if (process.waitFor() != 0) {
      throw new IllegalStateException(Files.readString(log));
    }
    return Double.parseDouble(Files.readString(log).strip()) / 1000;
  }

  private static Measured median(List<String> command) throws IOException, InterruptedException {
    var seconds = new double[RUNS];
    var megabytes = new double[RUNS];
    for (int i = 0; i < RUNS; i++) {
      var measured = run(command);
      seconds[i] = measured.seconds();
      megabytes[i] = measured.megabytes();
    }
    Arrays.sort(seconds);
    Arrays.sort(megabytes);
    return new Measured(seconds[RUNS / 2], megabytes[RUNS - 1]);
  }

  private static Measured run(List<String> command) throws IOException, InterruptedException {
    var log = FOLDER.resolve("run.txt");
    long start = System.nanoTime();
    var process =
        new ProcessBuilder(command).redirectOutput(log.toFile()).redirectErrorStream(true).start();
    double megabytes = 0;
    while (process.isAlive()) {
      megabytes = Math.max(megabytes, peak(process.pid()));
      Thread.sleep(5);
    }
    double seconds = (System.nanoTime() - start) / 1e9;
    if (process.exitValue() != 0) {
      throw new IllegalStateException(Files.readString(log));
    }
    return new Measured(seconds, megabytes);
  }

  /** The most memory that a process has held so far, in MB, where the system tells. */
  private static double peak(long pid) {
    try (var lines = Files.lines(Path.of("/proc/" + pid + "/status"))) {
      return lines
          .filter(line -> line.startsWith("VmHWM"))
          .mapToDouble(line -> Double.parseDouble(line.replaceAll("\\D", "")) / 1024)
          .max()
          .orElse(0);
    } catch (IOException | java.io.UncheckedIOException ended) {
      return 0;
    }
  }
}

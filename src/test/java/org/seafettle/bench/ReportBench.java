package org.seafettle.bench;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * How long one report takes, cold and warm, and how long others take to print the same pages.
 * Prints a table. Times are wall clock on this machine in this one run; compare nothing else.
 */
public final class ReportBench {

  private static final int RUNS = 9;
  private static final Path FOLDER = Path.of("target/bench").toAbsolutePath();
  private static final Path LAUNCHER = Path.of("target/seafettle/bin/seafettle").toAbsolutePath();

  private ReportBench() {}

  public static void main(String[] arguments) throws Exception {
    var survey = BenchSurvey.in(FOLDER.resolve("survey"));
    var command =
        List.of(LAUNCHER.toString(), "report", survey.toString(), "--out", FOLDER + "/out");
    Measured.of(command); // makes the class-data archive
    var cold = median(command);
    System.out.println("| what | seconds | MB at most |");
    System.out.println("|---|---|---|");
    row("one report, cold", cold);
    var page = OtherPrinter.page(survey, FOLDER.resolve("page.xhtml"));
    for (var other : OtherPrinter.values()) {
      other
          .command(page, FOLDER.resolve("other.pdf"))
          .ifPresent(c -> row("the same pages printed by " + other.title(), median(c)));
    }
    rowOfWarm("one report after another, warm, on one thread", warm(survey, List.of()));
    rowOfWarm(
        "the same with the compiler and the collector on the same core",
        warm(survey, List.of("taskset", "-c", "0")));
  }

  private static void rowOfWarm(String what, double seconds) {
    System.out.println(
        String.format(Locale.ROOT, "| %s | %.2f (%.1f a second) | |", what, seconds, 1 / seconds));
  }

  private static void row(String what, Measured measured) {
    System.out.println(
        String.format(
            Locale.ROOT, "| %s | %.2f | %.0f |", what, measured.seconds(), measured.megabytes()));
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

  private static Measured median(List<String> command) {
    var runs = Stream.generate(() -> Measured.of(command)).limit(RUNS).toList();
    return new Measured(
        runs.stream().mapToDouble(Measured::seconds).sorted().skip(RUNS / 2).findFirst().orElse(0),
        runs.stream().mapToDouble(Measured::megabytes).max().orElse(0));
  }
}

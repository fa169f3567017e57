package org.seafettle.bench;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.seafettle.cli.Pipe;
import org.seafettle.html.Templates;
import org.seafettle.html.Typesetter;
import org.seafettle.report.Options;
import org.seafettle.samples.DrawnYard;

/**
 * How long a season takes, and how long others take to print the same pages one after the other.
 * Started with the number of boats and how many of them the others print. Prints a table. Times are
 * wall clock on this machine in this one run; compare nothing else.
 */
public final class SeasonBench {

  private static final Path FOLDER = Path.of("target/bench/season").toAbsolutePath();
  private static final Path LAUNCHER = Path.of("target/seafettle/bin/seafettle").toAbsolutePath();

  private SeasonBench() {}

  private record Measured(double seconds, double megabytes) {}

  public static void main(String[] arguments) throws Exception {
    int boats = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 200;
    int others = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 20;
    var yard = FOLDER.resolve("yard-" + boats);
    DrawnYard.draw(yard, boats, 1600);
    var out = FOLDER.resolve("out");
    clear(out);
    System.out.println("| what | boats | seconds | boats a second | MB at most |");
    System.out.println("|---|---|---|---|---|");
    var season = List.of(LAUNCHER.toString(), "season", yard.toString(), "--out", out.toString());
    row("a season from nothing", boats, run(season));
    row("the same again, nothing changed", boats, run(season));
    var pages = pages(yard, Math.min(boats, others));
    program("chromium").ifPresent(chromium -> row("headless Chromium", each(chromium, pages)));
    program("weasyprint").ifPresent(weasyprint -> row("WeasyPrint", each(weasyprint, pages)));
  }

  private static void row(String what, List<Measured> each) {
    var seconds = each.stream().mapToDouble(Measured::seconds).sum();
    var megabytes = each.stream().mapToDouble(Measured::megabytes).max().orElse(0);
    row(what + ", the same pages one by one", each.size(), new Measured(seconds, megabytes));
  }

  private static void row(String what, int boats, Measured measured) {
    System.out.println(
        String.format(
            Locale.ROOT,
            "| %s | %d | %.1f | %.2f | %.0f |",
            what,
            boats,
            measured.seconds(),
            boats / measured.seconds(),
            measured.megabytes()));
  }

  private static void clear(Path folder) throws IOException {
    if (Files.exists(folder)) {
      try (var all = Files.walk(folder)) {
        for (var file : all.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(file);
        }
      }
    }
  }

  /** What was printed for the first boats, with the photographs where others find them. */
  private static List<Path> pages(Path yard, int boats) throws IOException {
    var pipe = new Pipe(Templates.supplied(), "en", Options.USUAL, false);
    var typesetter = new Typesetter(Templates.supplied());
    var pages = new ArrayList<Path>();
    try (var surveys = Files.list(yard)) {
      for (var survey : surveys.sorted().limit(boats).toList()) {
        var made = pipe.make(survey, step -> {});
        var photos = made.judged().survey().photos();
        var text = typesetter.set(made.written());
        for (int i = photos.size(); i > 0; i--) {
          var file = survey.resolve(photos.get(i - 1).file()).toUri().toString();
          text = text.replace("\"photo:photo-" + i + "\"", "\"" + file + "\"");
        }
        pages.add(Files.writeString(FOLDER.resolve(survey.getFileName() + ".xhtml"), text));
      }
    }
    return pages;
  }

  private static Optional<String> program(String name) {
    return Arrays.stream(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
        .map(folder -> folder + "/" + name)
        .filter(program -> Files.isExecutable(Path.of(program)))
        .findFirst();
  }

  private static List<Measured> each(String program, List<Path> pages) {
    var each = new ArrayList<Measured>();
    try {
      for (var page : pages) {
        each.add(run(command(program, page)));
      }
    } catch (IOException | InterruptedException e) {
      throw new IllegalStateException(e);
    }
    return each;
  }

  private static List<String> command(String program, Path page) {
    var printed = FOLDER.resolve("other.pdf");
    return program.endsWith("weasyprint")
        ? List.of(program, page.toString(), printed.toString())
        : List.of(
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
            "--print-to-pdf=" + printed,
            page.toUri().toString());
  }

  private static Measured run(List<String> command) throws IOException, InterruptedException {
    var log = FOLDER.resolve("run.txt");
    long start = System.nanoTime();
    var process =
        new ProcessBuilder(command).redirectOutput(log.toFile()).redirectErrorStream(true).start();
    double megabytes = 0;
    while (process.isAlive()) {
      megabytes = Math.max(megabytes, peak(process.pid()));
      Thread.sleep(10);
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

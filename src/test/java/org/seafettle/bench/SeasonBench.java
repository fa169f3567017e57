package org.seafettle.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.seafettle.samples.DrawnYard;

/**
 * How long a season takes, and how long others take to print the same pages one after the other.
 * Started with the number of boats, of those that the others print, and the width of the
 * photographs. Prints a table. Times are wall clock on this machine in this one run; compare
 * nothing else.
 */
public final class SeasonBench {

  private static final Path FOLDER = Path.of("target/bench/season").toAbsolutePath();
  private static final Path LAUNCHER = Path.of("target/seafettle/bin/seafettle").toAbsolutePath();

  private SeasonBench() {}

  public static void main(String[] arguments) throws IOException {
    int boats = number(arguments, 0, 200);
    int others = Math.min(boats, number(arguments, 1, 20));
    int width = number(arguments, 2, 1600);
    var yard = FOLDER.resolve("yard-" + width + "-" + boats);
    DrawnYard.draw(yard, boats, width);
    var out = FOLDER.resolve("out");
    clear(out);
    var season = List.of(LAUNCHER.toString(), "season", yard.toString(), "--out", out.toString());
    System.out.println("| what | boats | seconds | seconds a boat | MB at most |");
    System.out.println("|---|---|---|---|---|");
    row("a season from nothing", boats, Measured.of(season));
    try (var reports = Files.newDirectoryStream(out, "*-season-end*.pdf")) {
      for (var report : reports) {
        Files.delete(report);
      }
    }
    row("all reports anew, photographs as they were prepared", boats, Measured.of(season));
    row("the same again, nothing changed", boats, Measured.of(season));
    var pages = pages(yard, others);
    for (var other : OtherPrinter.values()) {
      others(other, pages);
    }
  }

  private static int number(String[] arguments, int at, int otherwise) {
    return arguments.length > at ? Integer.parseInt(arguments[at]) : otherwise;
  }

  private static List<Path> pages(Path yard, int boats) throws IOException {
    var pages = new ArrayList<Path>();
    try (var surveys = Files.list(yard)) {
      for (var survey : surveys.sorted().limit(boats).toList()) {
        pages.add(OtherPrinter.page(survey, FOLDER.resolve(survey.getFileName() + ".xhtml")));
      }
    }
    return pages;
  }

  private static void others(OtherPrinter other, List<Path> pages) {
    var each =
        pages.stream()
            .flatMap(page -> other.command(page, FOLDER.resolve("other.pdf")).stream())
            .map(Measured::of)
            .toList();
    if (!each.isEmpty()) {
      row(
          "the same pages one by one by " + other.title(),
          each.size(),
          new Measured(
              each.stream().mapToDouble(Measured::seconds).sum(),
              each.stream().mapToDouble(Measured::megabytes).max().orElse(0)));
    }
  }

  private static void row(String what, int boats, Measured measured) {
    System.out.println(
        String.format(
            Locale.ROOT,
            "| %s | %d | %.1f | %.3f | %.0f |",
            what,
            boats,
            measured.seconds(),
            measured.seconds() / boats,
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
}

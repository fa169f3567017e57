package org.seafettle.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Chromium without a window, driven by its command line.
 *
 * @param program where it is
 * @param folder where it may write
 */
record Browser(Path program, Path folder) {

  private static final List<String> NAMES =
      List.of("chromium", "chromium-browser", "google-chrome", "google-chrome-stable");

  /** The one on the search path, if there is any. */
  static Optional<Browser> onThisMachine(Path folder) {
    var path = Optional.ofNullable(System.getenv("PATH")).orElse("");
    return Pattern.compile(Pattern.quote(java.io.File.pathSeparator))
        .splitAsStream(path)
        .filter(place -> !place.isBlank())
        .flatMap(place -> NAMES.stream().map(Path.of(place)::resolve))
        .filter(Files::isExecutable)
        .findFirst()
        .map(program -> new Browser(program, folder));
  }

  /**
   * What it said while it did something.
   *
   * @param out on the standard output
   * @param console what pages wrote to the console, errors among it
   */
  record Said(String out, List<String> console) {}

  /** Opens a page and does with it what the options ask for. */
  Said open(Path page, String... options) {
    try {
      var out = Files.createTempFile(folder, "out", ".txt");
      var err = Files.createTempFile(folder, "err", ".txt");
      var process =
          new ProcessBuilder(command(page, options))
              .redirectOutput(out.toFile())
              .redirectError(err.toFile())
              .start();
      if (!process.waitFor(2, TimeUnit.MINUTES)) {
        process.destroyForcibly();
        throw new AssertionError("the browser did not end: " + Files.readString(err));
      }
      var console = Files.readAllLines(err).stream().filter(l -> l.contains(":CONSOLE")).toList();
      return new Said(Files.readString(out), console);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  private List<String> command(Path page, String... options) {
    var command = new ArrayList<String>();
    command.add(program.toString());
    // a container has no sandbox of its own; the file access lets one page measure another
    Stream.of(
            "--headless",
            "--no-sandbox",
            "--disable-gpu",
            "--hide-scrollbars",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-dev-shm-usage",
            "--allow-file-access-from-files",
            "--enable-logging=stderr",
            "--virtual-time-budget=10000",
            "--user-data-dir=" + folder.resolve("profile"))
        .forEach(command::add);
    command.addAll(List.of(options));
    command.add(page.toUri().toString());
    return command;
  }
}

package org.seafettle.bench;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.seafettle.cli.Pipe;
import org.seafettle.html.Templates;
import org.seafettle.html.Typesetter;
import org.seafettle.report.Options;

/** Programs that print XHTML too, where they are installed. */
enum OtherPrinter {
  CHROMIUM("headless Chromium", "chromium"),
  WEASYPRINT("WeasyPrint", "weasyprint");

  private final String title;
  private final String program;

  OtherPrinter(String title, String program) {
    this.title = title;
    this.program = program;
  }

  String title() {
    return title;
  }

  /** How it prints a page; empty where it is not installed. */
  Optional<List<String>> command(Path page, Path pdf) {
    return Arrays.stream(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
        .map(folder -> folder + "/" + program)
        .filter(file -> Files.isExecutable(Path.of(file)))
        .findFirst()
        .map(file -> command(file, page, pdf));
  }

  private List<String> command(String file, Path page, Path pdf) {
    return switch (this) {
      case WEASYPRINT -> List.of(file, page.toString(), pdf.toString());
      case CHROMIUM ->
          List.of(
              file,
              "--headless",
              "--no-sandbox",
              "--disable-gpu",
              "--disable-quic",
              "--no-first-run",
              "--disable-background-networking",
              "--disable-component-update",
              "--disable-sync",
              "--user-data-dir=" + pdf.resolveSibling("browser"),
              "--print-to-pdf=" + pdf,
              page.toUri().toString());
    };
  }

  /** The very pages that a survey's report is printed from, with the camera's photographs. */
  static Path page(Path survey, Path xhtml) throws IOException {
    var made = new Pipe(Templates.supplied(), "en", Options.USUAL, false).make(survey, step -> {});
    var photos = made.judged().survey().photos();
    var text = new Typesetter(Templates.supplied()).set(made.written());
    for (int i = photos.size(); i > 0; i--) {
      var file = survey.resolve(photos.get(i - 1).file()).toUri().toString();
      text = text.replace("\"photo:photo-" + i + "\"", "\"" + file + "\"");
    }
    Files.createDirectories(xhtml.getParent());
    return Files.writeString(xhtml, text);
  }
}

package org.seafettle.cli;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.seafettle.catalogue.Catalogue;
import org.seafettle.catalogue.Retelling;
import org.seafettle.catalogue.Subsystem;
import org.seafettle.html.Templates;
import org.seafettle.json.CatalogueReader;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Lists the catalogue. */
@Command(
    name = "catalogue",
    description = {
      "Lists everything that can be looked for, by subsystem: the check's word for a survey file,"
          + " its title, the gravest class that it can reveal, and the surveys that have to cover"
          + " it."
    },
    mixinStandardHelpOptions = true)
final class CatalogueCommand implements Callable<Integer> {

  /** How the catalogue is laid out. */
  enum Format {
    TEXT,
    MARKDOWN,
    PROPERTIES;

    /** As it is written on the command line. */
    @Override
    public String toString() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  private final Console console;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      description =
          "${COMPLETION-CANDIDATES}: a list for the terminal, a page of reference with every check,"
              + " pattern and source, or every text by its key for a translator (default:"
              + " ${DEFAULT-VALUE}).")
  private Format format = Format.TEXT;

  @Option(
      names = "--lang",
      paramLabel = "LANG",
      description = "With --format properties: only the texts that this language lacks.")
  private String language = "";

  @Option(
      names = "--templates",
      paramLabel = "DIR",
      description = "The folder with catalogue-LANG.properties.")
  private Optional<Path> templates = Optional.empty();

  CatalogueCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    var catalogue = CatalogueReader.supplied();
    switch (format) {
      case TEXT -> list(catalogue);
      case PROPERTIES -> texts(catalogue).forEach(this::property);
      case MARKDOWN -> new ReferencePage(catalogue).lines().forEach(console::say);
    }
    return ExitCode.DONE.code();
  }

  private Map<String, String> texts(Catalogue catalogue) {
    var folder = templates.map(Templates::with).orElseGet(Templates::supplied);
    return language.isEmpty()
        ? Retelling.texts(catalogue)
        : new Translation(catalogue, folder, language).missing();
  }

  private void property(String key, String text) {
    console.say(key + "=" + text.replace("\\", "\\\\"));
  }

  private void list(Catalogue catalogue) {
    for (var subsystem : Subsystem.values()) {
      list(catalogue, subsystem);
    }
    console.say(
        catalogue.checks().size()
            + " checks, "
            + catalogue.patterns().size()
            + " patterns; catalogue "
            + catalogue.version()
            + ", "
            + catalogue.digest().substring(0, 12)
            + ". Try: seafettle explain "
            + catalogue.checks().get(0).id());
  }

  private void list(Catalogue catalogue, Subsystem subsystem) {
    var checks = catalogue.checks().stream().filter(c -> c.subsystem() == subsystem).toList();
    int widest = checks.stream().mapToInt(c -> c.id().length()).max().orElse(0);
    int title = checks.stream().mapToInt(c -> c.guidance().title().length()).max().orElse(0);
    console.say(subsystem.word());
    for (var check : checks) {
      var words = new CheckInWords(check);
      console.say(
          Layout.line(
              "  " + Layout.pad(check.id(), widest),
              Layout.pad(check.guidance().title(), title),
              Layout.pad(words.gravest(), 10),
              words.expected()));
    }
    console.say("");
  }
}

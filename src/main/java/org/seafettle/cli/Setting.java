package org.seafettle.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.TreeMap;
import org.seafettle.html.Templates;
import org.seafettle.report.Options;
import org.seafettle.report.Paper;
import org.seafettle.report.Units;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** How reports are set, as the command line says it. */
final class Setting {

  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec;

  @Option(
      names = "--templates",
      paramLabel = "DIR",
      description = "A folder of own templates; each file there replaces the supplied one.")
  private Optional<Path> templates = Optional.empty();

  @Option(
      names = "--house",
      paramLabel = "FILE",
      description = "A house.json, or its folder: name, address, logo and colour of the writer.")
  private Optional<Path> house = Optional.empty();

  @Option(
      names = "--lang",
      paramLabel = "LANG",
      description =
          "The report's language, of which the templates have a words file (default:"
              + " ${DEFAULT-VALUE}).")
  private String language = "en";

  @Option(
      names = "--paper",
      paramLabel = "PAPER",
      completionCandidates = Choices.Papers.class,
      converter = Choices.Papers.class,
      description = "${COMPLETION-CANDIDATES} (default: a4).")
  private Paper paper = Paper.A4;

  @Option(
      names = "--units",
      paramLabel = "UNITS",
      completionCandidates = Choices.OfUnits.class,
      converter = Choices.OfUnits.class,
      description =
          "${COMPLETION-CANDIDATES} (default: as-recorded). A reading that is converted keeps what"
              + " was recorded beside it.")
  private Units units = Units.AS_RECORDED;

  @Option(names = "--draft", description = "Say DRAFT on every page.")
  private boolean draft;

  @Option(
      names = "--keep-metadata",
      description =
          "Leave what the camera wrote down (time, place, device) in the printed photographs.")
  private boolean keepMetadata;

  /**
   * What makes such reports.
   *
   * @throws ParameterException where there are no words of the language
   */
  Pipe pipe() {
    var used = used();
    return new Pipe(used, known(used), options(), keepMetadata, house);
  }

  /** Of all that changes a report beside its survey, the program and the catalogue. */
  String digest() throws IOException {
    return String.join(
        " ", used().digest(), language, options().toString(), keepMetadata + "", faceDigest());
  }

  /** The house's file and every logo beside it. */
  private String faceDigest() throws IOException {
    if (house.isEmpty()) {
      return "";
    }
    var file = Files.isDirectory(house.get()) ? house.get().resolve("house.json") : house.get();
    var digests = new TreeMap<String, String>();
    digests.put("", Sha256.of(file));
    try (var beside = Files.list(file.toAbsolutePath().getParent())) {
      for (var logo : beside.filter(f -> f.toString().matches("(?i).*\\.(svg|png)")).toList()) {
        digests.put(logo.getFileName().toString(), Sha256.of(logo));
      }
    }
    return digests.toString();
  }

  private Options options() {
    return new Options(units, paper, draft);
  }

  private Templates used() {
    return templates.map(Templates::with).orElseGet(Templates::supplied);
  }

  private String known(Templates templates) {
    if (templates.languages().contains(language)) {
      return language;
    }
    throw new ParameterException(
        spec.commandLine(),
        "There are no words for --lang "
            + language
            + "; there are "
            + String.join(", ", templates.languages())
            + ". For another, put words-"
            + language
            + ".properties into a folder and name it with --templates.");
  }
}

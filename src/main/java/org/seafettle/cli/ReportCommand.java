package org.seafettle.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.seafettle.calendar.CalendarFile;
import org.seafettle.html.Templates;
import org.seafettle.report.Options;
import org.seafettle.report.Paper;
import org.seafettle.report.Units;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Makes a report. */
@Command(
    name = "report",
    description = "Grades a survey and writes its condition report.",
    mixinStandardHelpOptions = true)
final class ReportCommand implements Callable<Integer> {

  private final Console console;

  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "SURVEY",
      description = "A survey.json, the folder that holds one, or a .zip of that folder.")
  private Path path = Path.of("");

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Where the report goes (default: ${DEFAULT-VALUE}).")
  private Path out = Path.of("output");

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
          "The report's language, of which the templates have a words file (default: ${DEFAULT-VALUE}).")
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

  @Option(names = "--json", description = "Also write assessment.json beside the report.")
  private boolean json;

  @Option(names = "--html", description = "Also write the report as one HTML file.")
  private boolean html;

  @Option(
      names = "--calendar",
      description = "Also write what falls due as an iCalendar file (.ics) beside the report.")
  private boolean calendar;

  @Option(names = "--draft", description = "Say DRAFT on every page.")
  private boolean draft;

  @Option(
      names = "--keep-metadata",
      description =
          "Leave what the camera wrote down (time, place, device) in the printed photographs.")
  private boolean keepMetadata;

  ReportCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() throws IOException {
    var supplied = templates.map(Templates::with).orElseGet(Templates::supplied);
    var options = new Options(units, paper, draft);
    var pipe = new Pipe(supplied, known(supplied), options, keepMetadata, house);
    var made = pipe.make(path, console::progress);
    put(made);
    made.remarks().forEach(problem -> console.remark(problem.toString()));
    return ExitCode.DONE.code();
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

  private void put(Pipe.Made made) throws IOException {
    var files = new LinkedHashMap<String, byte[]>();
    files.put(made.name() + ".pdf", made.pdf());
    if (json) {
      files.put(made.name() + ".assessment.json", made.assessment());
    }
    if (html) {
      files.put(made.name() + ".html", made.html().get().getBytes(StandardCharsets.UTF_8));
    }
    if (calendar) {
      CalendarFile.write(List.of(made.reminders()))
          .ifPresentOrElse(
              ics -> files.put(made.name() + ".ics", ics),
              () -> console.remark("Nothing falls due on a known day: no calendar was written."));
    }
    var placed = new Destination(out).put(files);
    console.progressEnds();
    for (var file : placed) {
      console.say(file.path().toString());
      file.kept().ifPresent(kept -> console.remark("The earlier one was kept as " + kept));
    }
  }
}

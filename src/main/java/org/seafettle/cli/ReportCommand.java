package org.seafettle.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.concurrent.Callable;
import org.seafettle.calendar.CalendarFile;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Makes a report. */
@Command(
    name = "report",
    description = "Grades a survey and writes its condition report.",
    mixinStandardHelpOptions = true)
final class ReportCommand implements Callable<Integer> {

  private final Console console;

  @Parameters(
      paramLabel = "SURVEY",
      description = "A survey.json, the folder that holds one, or a .zip of that folder.")
  private Path path = Path.of("");

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Where the report goes (default: ${DEFAULT-VALUE}).")
  private Path out = Path.of("output");

  @Mixin private Setting setting = new Setting();

  @Option(names = "--json", description = "Also write assessment.json beside the report.")
  private boolean json;

  @Option(names = "--html", description = "Also write the report as one HTML file.")
  private boolean html;

  @Option(
      names = "--calendar",
      description = "Also write what falls due as an iCalendar file (.ics) beside the report.")
  private boolean calendar;

  ReportCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() throws IOException {
    var made = setting.pipe().make(path, console::progress);
    put(made);
    made.remarks().forEach(problem -> console.remark(problem.toString()));
    return ExitCode.DONE.code();
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
      CalendarFile.write(List.of(made.reminders().get()))
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

package org.seafettle.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.seafettle.yard.Faulty;
import org.seafettle.yard.Fleet;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Makes the reports of all boats of a season, and what is written about them together. */
@Command(
    name = "season",
    description = {
      "Grades all surveys in a folder and writes each boat's report, one overview and a work list.",
      "It can be stopped at any time: the next run goes on where this one was."
    },
    mixinStandardHelpOptions = true)
final class SeasonCommand implements Callable<Integer> {

  private final Console console;

  @Spec private CommandSpec spec;

  @Parameters(
      arity = "0..1",
      paramLabel = "DIR",
      description =
          "A folder in which each survey is a folder with a survey.json, or a .zip of one.")
  private Optional<Path> surveys = Optional.empty();

  @Option(
      names = "--merge",
      paramLabel = "OUT",
      arity = "1..*",
      description =
          "Instead of surveys: the --out folders of all parts, whose overview is to be written.")
  private List<Path> merge = List.of();

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Where everything goes (default: ${DEFAULT-VALUE}).")
  private Path out = Path.of("output");

  @Option(
      names = "--jobs",
      paramLabel = "N",
      description = "How many reports are made at once (default: the number of processors).")
  private Optional<Integer> jobs = Optional.empty();

  @Option(
      names = "--part",
      paramLabel = "I/N",
      converter = Part.Reader.class,
      description = "Make only part I of N, and no overview; --merge writes it from all parts.")
  private Part part = Part.WHOLE;

  @Mixin private Setting setting = new Setting();

  SeasonCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() throws IOException {
    if (surveys.isPresent() != merge.isEmpty()) {
      throw misunderstood(
          "Name either the folder of the surveys or --merge with the folders of all parts.");
    }
    if (jobs.filter(n -> n < 1).isPresent()) {
      throw misunderstood("--jobs takes a number from 1 on.");
    }
    var pipe = setting.pipe();
    return surveys.isPresent() ? run(surveys.get(), pipe) : merged(pipe);
  }

  private ParameterException misunderstood(String why) {
    return new ParameterException(spec.commandLine(), why);
  }

  private int run(Path folder, Pipe pipe) throws IOException {
    var state = new SeasonState(out, part);
    var found = YardFolder.surveys(folder);
    var running = state.begin();
    try {
      state.expect(List.copyOf(found.keySet()));
      int mine = (int) found.keySet().stream().filter(part::holds).count();
      var progress = new ProgressLine(console, mine, System::nanoTime);
      var settings = String.join(" ", Version.text(), pipe.digest(), setting.digest());
      var boats = new BoatRun(pipe, out, state, settings);
      var ended = new SeasonRun(boats, part, atOnce()).run(found, progress);
      console.progressEnds();
      if (part.of() == 1) {
        papers(pipe, List.of(state), state);
      } else {
        tell(state, found.keySet());
      }
      summary(ended, progress.seconds());
      return code(ended).code();
    } finally {
      running.close();
    }
  }

  private int atOnce() {
    return jobs.orElseGet(Runtime.getRuntime()::availableProcessors);
  }

  private int merged(Pipe pipe) throws IOException {
    var state = new SeasonState(out, Part.WHOLE);
    var running = state.begin();
    try {
      var parts = merge.stream().map(folder -> new SeasonState(folder, Part.WHOLE)).toList();
      return papers(pipe, parts, state).faulty().isEmpty()
          ? ExitCode.DONE.code()
          : ExitCode.REFUSED.code();
    } finally {
      running.close();
    }
  }

  private Fleet papers(Pipe pipe, List<SeasonState> states, SeasonState state) throws IOException {
    var fleet = SeasonPapers.fleet(states);
    var written = new SeasonPapers(pipe, out).write(fleet, state);
    fleet.faulty().forEach(this::tell);
    written.forEach(path -> console.say(path.toString()));
    return fleet;
  }

  private void tell(SeasonState state, Iterable<String> sources) throws IOException {
    for (var source : sources) {
      if (part.holds(source) && state.kept(source).orElseThrow().entry() instanceof Faulty faulty) {
        tell(faulty);
      }
    }
  }

  private void tell(Faulty faulty) {
    console.remark(faulty.source());
    for (var fault : faulty.faults()) {
      console.remark("  " + fault.place());
      console.remark("    " + fault.fault());
      console.remark("    " + fault.remedy());
    }
  }

  private void summary(Map<BoatRun.Ended, Integer> ended, double seconds) {
    console.remark(
        String.format(
            Locale.ROOT,
            "%d made, %d unchanged, %d failed, %.1f s.",
            ended.getOrDefault(BoatRun.Ended.MADE, 0),
            ended.getOrDefault(BoatRun.Ended.UNCHANGED, 0),
            ended.getOrDefault(BoatRun.Ended.REFUSED, 0)
                + ended.getOrDefault(BoatRun.Ended.FAULT, 0),
            seconds));
  }

  private static ExitCode code(Map<BoatRun.Ended, Integer> ended) {
    if (ended.containsKey(BoatRun.Ended.FAULT)) {
      return ExitCode.FAULT;
    }
    return ended.containsKey(BoatRun.Ended.REFUSED) ? ExitCode.REFUSED : ExitCode.DONE;
  }
}

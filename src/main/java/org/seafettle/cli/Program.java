package org.seafettle.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import org.seafettle.problem.Refused;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.ScopeType;

/** The command line. */
@Command(
    name = "seafettle",
    description = "Grades the survey of a boat's engines and writes it down as a condition report.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    synopsisSubcommandLabel = "COMMAND",
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:All that was asked for was done.",
      "1:The program itself is at fault.",
      "2:The command line was not understood.",
      "3:The survey, a photograph or a template was refused; nothing was written.",
      "4:Something could not be read or written."
    })
public final class Program implements Runnable {

  @Option(
      names = "--debug",
      scope = ScopeType.INHERIT,
      description = "When the program itself is at fault, show where.")
  private boolean debug;

  private final Console console;
  private final CommandLine commands;

  public Program(Console console) {
    this.console = console;
    this.commands =
        new CommandLine(this)
            .addSubcommand(new ReportCommand(console))
            .addSubcommand(new SeasonCommand(console))
            .addSubcommand(new ValidateCommand(console))
            .addSubcommand(new CompareCommand(console))
            .addSubcommand(new CatalogueCommand(console))
            .addSubcommand(new ExplainCommand(console))
            .setOut(console.out())
            .setErr(console.err())
            .setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF))
            .setUsageHelpAutoWidth(true)
            .setCaseInsensitiveEnumValuesAllowed(true)
            .setExecutionExceptionHandler(this::failed)
            .setParameterExceptionHandler(this::misunderstood);
  }

  /** Runs one command and gives its exit code. */
  public int run(String... arguments) {
    return commands.execute(arguments);
  }

  /** Without a command there is nothing to do but to say what there is. */
  @Override
  public void run() {
    throw new ParameterException(commands, "No command was given.");
  }

  private int misunderstood(ParameterException e, String[] arguments) {
    var command = e.getCommandLine();
    console.remark(e.getMessage());
    CommandLine.UnmatchedArgumentException.printSuggestions(e, console.err());
    console.remark("Try: " + command.getCommandSpec().qualifiedName() + " --help");
    return ExitCode.USAGE.code();
  }

  private int failed(Exception e, CommandLine command, ParseResult parsed) {
    console.progressEnds();
    if (debug) {
      e.printStackTrace(console.err());
    }
    if (e instanceof Refused refused) {
      console.refuse(refused.problems());
      return ExitCode.REFUSED.code();
    }
    if (e instanceof IOException io) {
      return storage(io);
    }
    if (e instanceof UncheckedIOException unchecked) {
      return storage(unchecked.getCause());
    }
    console.remark("The program itself is at fault: " + e);
    console.remark("Nothing was written. Run it again with --debug and report what it prints.");
    return ExitCode.FAULT.code();
  }

  private int storage(IOException e) {
    var what = e instanceof FileSystemException file ? file.getFile() : e.getMessage();
    var why =
        e instanceof AccessDeniedException
            ? "it may not be read or written; change its permissions, or choose another with --out"
            : e instanceof FileSystemException file && file.getReason() != null
                ? file.getReason()
                : e.getClass().getSimpleName();
    console.remark(what + ": " + why + ".");
    return ExitCode.STORAGE.code();
  }
}

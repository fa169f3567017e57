package org.seafettle.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.seafettle.assessment.Assessor;
import org.seafettle.difference.Difference;
import org.seafettle.difference.Match;
import org.seafettle.json.CatalogueReader;
import org.seafettle.json.DifferenceWriter;
import org.seafettle.json.SurveyReader;
import org.seafettle.pdf.Enclosed;
import org.seafettle.pdf.Typefaces;
import org.seafettle.problem.Refused;
import org.seafettle.survey.Boat;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Holds two surveys against each other. */
@Command(
    name = "compare",
    description = "Says what lies between two surveys of one boat, or two reports; writes nothing.",
    mixinStandardHelpOptions = true)
final class CompareCommand implements Callable<Integer> {

  private final Console console;

  @Parameters(
      arity = "2",
      paramLabel = "SURVEY",
      description =
          "A survey.json, the folder that holds one, a .zip of that folder, or the .pdf of a"
              + " report. The one of the earlier day is held to be the earlier, in either order.")
  private List<Path> paths = List.of();

  @Option(names = "--json", description = "Say it for machines.")
  private boolean json;

  @Option(
      names = "--different-boats",
      description = "Compare two boats; engines are then matched by their names alone.")
  private boolean differentBoats;

  CompareCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    var catalogue = CatalogueReader.supplied();
    var typefaces = new Typefaces();
    var reader = new SurveyReader(catalogue, typefaces::covers, Enclosed::in);
    var one = reader.readAlsoReport(paths.get(0));
    var other = reader.readAlsoReport(paths.get(1));
    boolean swapped = other.day().isBefore(one.day());
    var then = swapped ? other : one;
    var now = swapped ? one : other;
    boolean isOneBoat = isOneBoat(then.survey().boat(), now.survey().boat());
    if (!isOneBoat && !differentBoats) {
      throw twoBoats(then.survey().boat(), now.survey().boat());
    }
    var assessor = new Assessor(catalogue);
    var difference =
        Difference.between(
            assessor.assess(then.survey(), List.of()),
            assessor.assess(now.survey(), List.of()),
            isOneBoat ? Match.ONE_BOAT : Match.TWO_BOATS);
    if (json) {
      console.say(DifferenceWriter.write(difference, then.printed(), now.printed()));
    } else {
      new DifferenceInWords(difference, then, now).lines().forEach(console::say);
    }
    return ExitCode.DONE.code();
  }

  /** By the hull number; where one of them has none, by the name. */
  private static boolean isOneBoat(Boat then, Boat now) {
    return then.hin().isPresent() && now.hin().isPresent()
        ? then.plainHin().equals(now.plainHin())
        : plain(then.name()).equals(plain(now.name()));
  }

  private static String plain(String text) {
    return text.replaceAll("[^\\p{L}\\p{N}]", "").toUpperCase(Locale.ROOT);
  }

  private static Refused twoBoats(Boat then, Boat now) {
    return Refused.because(
        "The surveys are of two boats: " + told(then) + " and " + told(now) + ".",
        "Name two surveys of one boat, or compare the two boats with --different-boats.");
  }

  private static String told(Boat boat) {
    return boat.name() + boat.hin().map(hin -> " (" + hin + ")").orElse(" (no hull number)");
  }
}

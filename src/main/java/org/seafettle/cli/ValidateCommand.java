package org.seafettle.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.seafettle.json.CatalogueReader;
import org.seafettle.json.SurveyReader;
import org.seafettle.pdf.Enclosed;
import org.seafettle.pdf.Typefaces;
import org.seafettle.problem.Problem;
import org.seafettle.problem.Refused;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Checks surveys without writing anything. */
@Command(
    name = "validate",
    description = "Checks surveys and their photographs, and writes nothing.",
    mixinStandardHelpOptions = true)
final class ValidateCommand implements Callable<Integer> {

  private final Console console;

  @Parameters(
      arity = "1..*",
      paramLabel = "SURVEY",
      description = "A survey.json, the folder that holds one, or a .zip of that folder.")
  private List<Path> paths = List.of();

  ValidateCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    var typefaces = new Typefaces();
    var reader = new SurveyReader(CatalogueReader.supplied(), typefaces::covers, Enclosed::in);
    var problems = new ArrayList<Problem>();
    for (var path : paths) {
      try {
        var pictures = new Pictures();
        var source = reader.read(path, pictures);
        pictures.prints(source.survey(), false, Prints.MADE);
        source.remarks().forEach(remark -> console.remark(remark.toString()));
        console.say(path + ": no faults");
      } catch (Refused refused) {
        problems.addAll(refused.problems());
      }
    }
    Refused.ifAny(problems);
    return ExitCode.DONE.code();
  }
}

package org.seafettle.cli;

import java.util.concurrent.Callable;
import org.seafettle.catalogue.Catalogue;
import org.seafettle.json.CatalogueReader;
import org.seafettle.problem.Problem;
import org.seafettle.problem.Refused;
import org.seafettle.problem.Spelling;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Explains one check. */
@Command(
    name = "explain",
    description = "Says how a check is done, its limits, why it matters and where they come from.",
    mixinStandardHelpOptions = true)
final class ExplainCommand implements Callable<Integer> {

  private final Console console;

  @Parameters(
      paramLabel = "CHECK",
      description = "The check's word, as 'seafettle catalogue' lists it.")
  private String id = "";

  ExplainCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    var catalogue = CatalogueReader.supplied();
    var check = catalogue.check(id).orElseThrow(() -> unknown(catalogue));
    new Explanation(catalogue, check).lines().forEach(console::say);
    return ExitCode.DONE.code();
  }

  private Refused unknown(Catalogue catalogue) {
    return new Refused(
        Problem.of(
            "The catalogue has no check called \"" + id + "\".",
            Spelling.nearest(id, catalogue.byId().keySet())
                .map(near -> "Did you mean \"" + near + "\"?")
                .orElse("'seafettle catalogue' lists all there are.")));
  }
}

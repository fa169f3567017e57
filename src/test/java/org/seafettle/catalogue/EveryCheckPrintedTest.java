package org.seafettle.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.seafettle.assessment.Assessment;
import org.seafettle.assessment.Result;
import org.seafettle.cli.Pipe;
import org.seafettle.html.Templates;
import org.seafettle.json.CatalogueReader;
import org.seafettle.pdf.Printed;
import org.seafettle.pdf.Validation;
import org.seafettle.report.Options;
import org.seafettle.survey.Survey;

/** Every check with the gravest that its cases find, on every kind of engine, down to the paper. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class EveryCheckPrintedTest {

  private static final Catalogue CATALOGUE = CatalogueReader.supplied();

  private final Pipe pipe = new Pipe(Templates.supplied(), "en", Options.USUAL, false);
  private final List<GraveBoat> fleet = GraveBoat.fleet(CATALOGUE);

  @TempDir private Path folder;

  List<GraveBoat> everyBoat() {
    return fleet;
  }

  @Test
  void no_check_is_left_out_and_no_boat_has_nothing_wrong() {
    assertThat(fleet.stream().flatMap(boat -> boat.checks().stream()))
        .containsExactlyInAnyOrderElementsOf(CATALOGUE.byId().keySet());
    assertThat(fleet).noneMatch(boat -> boat.checks().isEmpty());
  }

  @ParameterizedTest
  @MethodSource("everyBoat")
  void a_report_tells_all_that_is_wrong_and_stays_archival_and_accessible(GraveBoat boat)
      throws IOException {
    var file = Files.writeString(folder.resolve("survey.json"), boat.document());
    var pdf = pipe.make(file, step -> {}).pdf();
    keep(boat, pdf);
    try (var printed = new Printed(pdf)) {
      var text = plain(String.join(" ", printed.readAloud()));
      assertThat(text).contains(told(boat.judged()).toList());
    }
    assertThat(Validation.faults(pdf)).isEmpty();
  }

  /** What has to be on paper of a finding, all of it as the catalogue says it. */
  private static Stream<String> told(Assessment judged) {
    return judged.findings().stream().flatMap(finding -> told(judged.survey(), finding));
  }

  private static Stream<String> told(Survey survey, Result finding) {
    var outcome = finding.seen().orElseThrow().outcome();
    var action = outcome.advice().orElseThrow().action().on(survey, finding.component());
    return Stream.concat(
            Stream.of(outcome.saying().observed(), outcome.saying().brief(), action.does()),
            action.cautions().stream().map(Caution::text))
        .map(EveryCheckPrintedTest::plain);
  }

  /** Under target/pages, so that a person can look at it. */
  private static void keep(GraveBoat boat, byte[] pdf) throws IOException {
    var pages = Files.createDirectories(Path.of("target", "pages"));
    Files.write(pages.resolve(boat.toString().replaceAll("[^a-z0-9]+", "-") + ".pdf"), pdf);
  }

  /** Whatever kinds of blanks and line ends the setting makes, and how a sentence begins. */
  private static String plain(String text) {
    return text.replaceAll("[\\s\\u00a0\\u202f]+", " ").toLowerCase(Locale.ROOT);
  }
}

package org.seafettle.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.seafettle.catalogue.Catalogue;
import org.seafettle.catalogue.Check;
import org.seafettle.catalogue.Criterion;
import org.seafettle.catalogue.FindingClass;
import org.seafettle.catalogue.Outcome;
import org.seafettle.json.CatalogueReader;
import org.seafettle.json.SurveyReader;
import org.seafettle.pdf.Printed;
import org.seafettle.pdf.Validation;
import org.seafettle.survey.Component;
import org.seafettle.survey.Survey;

/** A report with more of everything than anybody should write. */
class StressReportTest {

  private static final Catalogue CATALOGUE = CatalogueReader.supplied();
  private static final int FINDINGS = 200;
  private static final int PHOTOGRAPHS = 100;

  /** Of the scripts that the typefaces cover, one a note in turn. */
  private static final List<String> NOTES =
      List.of(
          "Ærøskøbing, Łódź, Şırnak, Győr, Kėdainiai: the owner says it has been so since spring.",
          "Ο ιδιοκτήτης λέει ότι ήταν πάντα έτσι, από την άνοιξη μέχρι σήμερα.",
          "Владелец говорит, что так было всегда, с весны до сегодняшнего дня.",
          "Տերն ասում է, որ միշտ այդպես է եղել, գարունից մինչև այսօր։",
          "Donaudampfschifffahrtselektrizitätenhauptbetriebswerkbauunterbeamtengesellschaft",
          "A note that goes on and on. ".repeat(24).strip());

  @TempDir private Path folder;

  @Test
  void two_hundred_findings_and_a_hundred_photographs_stay_readable_and_lose_no_word()
      throws IOException {
    var survey = survey();
    Files.writeString(folder.resolve("survey.json"), survey.toString());
    var run = Run.of("report", folder.toString(), "--out", folder.resolve("out").toString());
    assertThat(run.code()).as(run.err()).isZero();
    byte[] pdf;
    try (var made = Files.list(folder.resolve("out"))) {
      pdf = Files.readAllBytes(made.findFirst().orElseThrow());
    }
    try (var printed = new Printed(pdf)) {
      var text = plain(String.join(" ", printed.readAloud()));
      survey.get("findings").forEach(f -> assertThat(text).contains(plain(f.get("note").asText())));
      survey
          .get("photos")
          .forEach(p -> assertThat(text).contains(plain(p.get("caption").asText())));
      assertThat(text).contains(plain(survey.at("/boat/name").asText()));
      assertThat(printed.bookmarks().stream().filter(b -> b.startsWith("2 "))).hasSize(FINDINGS);
      for (int page = 1; page <= printed.pages(); page++) {
        assertThat(printed.outsideMargins(page, 20)).as("page " + page).isEmpty();
        assertThat(printed.overprinted(page)).as("page " + page).isEmpty();
      }
    }
    assertThat(Validation.faults(pdf)).isEmpty();
  }

  private ObjectNode survey() throws IOException {
    var survey =
        (ObjectNode)
            new ObjectMapper()
                .readTree(
                    """
                    { "format": "seafettle-survey/1",
                      "survey": { "id": "STRESS-1", "purpose": "pre-purchase", "date": "2026-10-17",
                        "place": "a yard whose name nobody has ever managed to say in one breath",
                        "by": { "name": "Maximiliane Wolfeschlegelsteinhausenbergerdorff-Oyelaran" } },
                      "boat": { "name": "The Unbearably Long Name of a Boat That Nobody Would Paint on Any Transom",
                        "water": "salt", "fuel": { "kind": "E10" } },
                      "engines": [], "findings": [], "photos": [] }
                    """);
    var photo = Path.of("sample-surveys/neglected/photos/dipstick.jpg");
    Files.createDirectory(folder.resolve("photos"));
    for (int i = 1; i <= PHOTOGRAPHS; i++) {
      Files.copy(photo, folder.resolve("photos/p" + i + ".jpg"));
      survey
          .withArray("photos")
          .addObject()
          .put("id", "p" + i)
          .put("file", "photos/p" + i + ".jpg")
          .put("caption", "Caption number " + i + " of a picture that was drawn");
    }
    for (int i = 1; i <= 8; i++) {
      survey
          .withArray("engines")
          .addObject()
          .put("id", "engine-" + i)
          .put("type", "outboard-4-stroke");
    }
    var bare = SurveyReader.bind(survey.toString(), CATALOGUE);
    int number = 0;
    for (var engine : bare.engines()) {
      for (var check : CATALOGUE.checks()) {
        var worst = worst(check, bare, engine);
        if (worst.isPresent() && number < FINDINGS) {
          number++;
          var finding = survey.withArray("findings").addObject();
          finding.put("check", check.id()).put("on", engine.id()).put("is", worst.get().name());
          finding.put("note", "Note " + number + ": " + NOTES.get(number % NOTES.size()));
          if (number <= PHOTOGRAPHS) {
            finding.withArray("photos").add("p" + number);
          }
        }
      }
    }
    assertThat(number).isEqualTo(FINDINGS);
    return survey;
  }

  private static Optional<Outcome> worst(Check check, Survey survey, Component engine) {
    return check.on() == engine.kind()
            && check.criterion() instanceof Criterion.Choice
            && check.scope().covers(survey, engine)
        ? Optional.of(check.worst(survey, engine))
            .filter(o -> o.findingClass() != FindingClass.OK)
            .or(() -> check.outcomes().stream().max(Comparator.comparing(Outcome::findingClass)))
        : Optional.empty();
  }

  /** Without the blanks and breaks that setting makes. */
  private static String plain(String text) {
    return text.replaceAll("[\\s\\u00a0\\u202f\\u00ad]+", "");
  }
}

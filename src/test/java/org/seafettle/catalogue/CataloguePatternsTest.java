package org.seafettle.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.seafettle.assessment.Assessment;
import org.seafettle.assessment.Assessor;
import org.seafettle.assessment.Cause;
import org.seafettle.assessment.Sighting;
import org.seafettle.json.CatalogueReader;
import org.seafettle.json.SurveyReader;

/** Every pattern is tried by a case in {@code pattern-cases}. */
class CataloguePatternsTest {

  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Catalogue CATALOGUE = CatalogueReader.supplied();

  @Test
  void every_pattern_has_a_case() throws IOException {
    var named = new TreeSet<String>();
    cases().forEach(c -> named.add(c.path("pattern").asText()));
    assertThat(CATALOGUE.patterns())
        .as("add to pattern-cases/<subsystem>.yaml what makes the pattern")
        .extracting(Pattern::id)
        .containsExactlyInAnyOrderElementsOf(named);
  }

  @TestFactory
  Stream<DynamicTest> every_pattern_is_made_by_its_findings() throws IOException {
    return cases().stream()
        .map(c -> DynamicTest.dynamicTest(c.path("pattern").asText(), () -> made(c)));
  }

  @TestFactory
  Stream<DynamicTest> without_one_of_its_findings_a_pattern_is_not_settled() throws IOException {
    return cases().stream()
        .map(c -> DynamicTest.dynamicTest(c.path("pattern").asText(), () -> notMadeWithout(c)));
  }

  private static void made(JsonNode given) throws IOException {
    var assessment = assess(given, findings(given));
    var cause = settled(assessment, given);
    assertThat(cause).isPresent();
    if (given.has("raises")) {
      var raise = cause.get().pattern().raise().orElseThrow();
      assertThat(assessment.results())
          .filteredOn(r -> r.check().id().equals(raise.check()))
          .flatExtracting(r -> r.seen().stream().map(Sighting.Seen::found).toList())
          .extracting(FindingClass::word)
          .contains(given.path("raises").asText());
    }
  }

  private static void notMadeWithout(JsonNode given) throws IOException {
    for (var left : findings(given)) {
      var others = new ArrayList<>(findings(given));
      others.remove(left);
      assertThat(settled(assess(given, others), given)).as("without " + left).isEmpty();
    }
  }

  private static Optional<Cause> settled(Assessment assessment, JsonNode given) {
    return assessment.causes().stream()
        .filter(c -> c.pattern().id().equals(given.path("pattern").asText()))
        .filter(Cause::settled)
        .findFirst();
  }

  private static Assessment assess(JsonNode given, List<JsonNode> findings) throws IOException {
    var survey = CatalogueCase.survey(given);
    var list = survey.withArray("findings");
    findings.forEach(f -> list.add(((ObjectNode) f.deepCopy()).put("on", on(f))));
    return new Assessor(CATALOGUE)
        .assess(SurveyReader.bind(JSON.writeValueAsString(survey), CATALOGUE), List.of());
  }

  private static String on(JsonNode finding) {
    var kind = CATALOGUE.check(finding.path("check").asText()).orElseThrow().on();
    return finding.path("on").asText(CatalogueCase.usual(kind));
  }

  private static List<JsonNode> findings(JsonNode given) {
    var findings = new ArrayList<JsonNode>();
    given.path("findings").forEach(findings::add);
    return findings;
  }

  private static List<JsonNode> cases() throws IOException {
    var cases = new ArrayList<JsonNode>();
    for (var subsystem : Subsystem.values()) {
      try (var in =
          CatalogueCase.class.getResourceAsStream("pattern-cases/" + subsystem.word() + ".yaml")) {
        if (in != null) {
          new ObjectMapper(new YAMLFactory()).readTree(in).forEach(cases::add);
        }
      }
    }
    return cases;
  }
}

package org.seafettle.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.seafettle.assessment.Assessment;
import org.seafettle.assessment.Assessor;
import org.seafettle.assessment.Cause;
import org.seafettle.assessment.EngineGrade;
import org.seafettle.assessment.EngineGrade.SubsystemGrade;
import org.seafettle.catalogue.Catalogue;
import org.seafettle.catalogue.Check;
import org.seafettle.catalogue.Pattern;
import org.seafettle.catalogue.Subsystem;
import org.seafettle.survey.Survey;

/** The powerhead is graded where it was opened, and nowhere else leaves a trace. */
class PowerheadTest {

  private static final Catalogue WHOLE = CatalogueReader.supplied();
  private static final Catalogue WITHOUT = without();

  private static final String TWO_ENGINES =
      """
      {
        "format": "seafettle-survey/1",
        "survey": {"id": "P-1", "purpose": "%s", "date": "2026-10-17", "place": "yard", "by": {"name": "Ida Holm"}},
        "boat": {"name": "Sedge", "water": "salt"},
        "engines": [
          {"id": "port", "type": "outboard-4-stroke", "year": 2012, "hours": "600 h"},
          {"id": "starboard", "type": "outboard-4-stroke", "year": 2012, "hours": "600 h"}
        ],
        "findings": [%s]
      }
      """;

  private static final String EVEN = compression("[\"180 psi\", \"178 psi\"]");
  private static final String OVERHEATED = finding("overheating-before", "once-unexplained");

  /** The catalogue as it would be if nobody had written the powerhead into it. */
  private static Catalogue without() {
    var checks = WHOLE.checks().stream().filter(c -> c.subsystem() != Subsystem.POWERHEAD).toList();
    var known = checks.stream().map(Check::id).toList();
    var patterns = new ArrayList<Pattern>();
    for (var p : WHOLE.patterns()) {
      var needs =
          p.needs().stream()
              .map(n -> n.only(s -> known.contains(s.check())))
              .filter(n -> !n.anyOf().isEmpty() || !n.onlyIfSeen())
              .toList();
      if (needs.stream().noneMatch(n -> n.anyOf().isEmpty())) {
        patterns.add(
            new Pattern(
                p.id(),
                p.scope(),
                needs,
                p.cause(),
                p.reasoning(),
                p.confirms(),
                p.rulesOut(),
                p.explains(),
                p.onlySettled(),
                p.raise()));
      }
    }
    return new Catalogue(WHOLE.version(), WHOLE.digest(), checks, patterns, WHOLE.sources());
  }

  private static String finding(String check, String word) {
    return "{\"check\": \"" + check + "\", \"on\": \"port\", \"is\": \"" + word + "\"}";
  }

  private static String compression(String values) {
    return "{\"check\": \"compression-spread\", \"on\": \"port\", \"readings\": {\"compression\": "
        + values
        + "}, \"conditions\": [\"warm-throttle-open\"]}";
  }

  private static Survey survey(String purpose, String... findings) {
    var text = String.format(Locale.ROOT, TWO_ENGINES, purpose, String.join(",", findings));
    return SurveyReader.bind(text, WHOLE);
  }

  private static Assessment assess(String... findings) {
    return new Assessor(WHOLE).assess(survey("pre-purchase", findings), List.of());
  }

  private static String written(Catalogue catalogue, Survey survey) {
    var assessment = new Assessor(catalogue).assess(survey, List.of(survey));
    return new String(AssessmentWriter.write(assessment, "1.0.0"), StandardCharsets.UTF_8);
  }

  private static SubsystemGrade powerhead(EngineGrade engine) {
    return engine.subsystems().stream()
        .filter(s -> s.subsystem() == Subsystem.POWERHEAD)
        .findFirst()
        .orElseThrow();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "sample-surveys/diesel-inboard/survey.json",
        "sample-surveys/half-inspected/survey.json",
        "sample-surveys/sound-pair/2026/survey.json"
      })
  void a_survey_that_leaves_it_out_is_assessed_as_if_it_did_not_exist(String file) {
    var survey =
        new SurveyReader(WHOLE, character -> true, (name, report) -> Map.of())
            .read(Path.of(file))
            .survey();
    assertThat(written(WHOLE, survey)).isEqualTo(written(WITHOUT, survey));
  }

  @ParameterizedTest
  @ValueSource(strings = {"pre-purchase", "season-end", "yearly-record"})
  void half_a_pattern_that_only_the_powerhead_could_complete_asks_nothing(String purpose) {
    var old = "{\"check\": \"fuel-age\", \"on\": \"boat\", \"readings\": {\"age\": \"300 d\"}}";
    var survey = survey(purpose, OVERHEATED, old);
    assertThat(written(WHOLE, survey))
        .isEqualTo(written(WITHOUT, survey))
        .doesNotContain("powerhead", "compression", "cold-start");
  }

  @Test
  void one_look_opens_it_for_its_own_engine_alone() {
    var assessment = assess(EVEN);
    assertThat(assessment.engines()).extracting(e -> e.subsystems().size()).containsExactly(6, 5);
    assertThat(powerhead(assessment.engines().get(0)).grade().high()).isEqualTo(100);
    assertThat(assessment.open())
        .filteredOn(r -> r.check().subsystem() == Subsystem.POWERHEAD)
        .extracting(r -> r.check().id() + " " + r.component().id())
        .containsExactly(
            "hour-meter port",
            "alarm-history port",
            "full-throttle-speed port",
            "propeller port",
            "steering port");
  }

  @Test
  void the_one_look_that_went_well_gives_no_word() {
    var grade = powerhead(assess(EVEN).engines().get(0)).grade();
    assertThat(grade.graded()).isFalse();
    assertThat(grade.low()).isLessThan(grade.high());
  }

  @Test
  void what_a_purpose_does_not_ask_for_is_not_missed() {
    var survey = survey("season-end", EVEN);
    var grade = powerhead(new Assessor(WHOLE).assess(survey, List.of()).engines().get(0)).grade();
    assertThat(grade.graded()).isTrue();
    assertThat(grade.certain()).isTrue();
  }

  @Test
  void a_look_that_was_only_tried_is_told_and_opens_nothing() {
    var assessment =
        assess(
            "{\"check\": \"compression-spread\", \"on\": \"port\","
                + " \"not-inspected\": \"a plug is seized\"}");
    assertThat(assessment.engines()).allMatch(e -> e.subsystems().size() == 5);
    assertThat(assessment.results())
        .filteredOn(r -> r.check().subsystem() == Subsystem.POWERHEAD)
        .singleElement()
        .matches(r -> !r.leavesOpen());
  }

  @Test
  void further_tests_of_it_are_named_only_where_it_was_opened() {
    assertThat(assess().plan().furtherTests()).noneMatch(c -> c.subsystem() == Subsystem.POWERHEAD);
    assertThat(assess(EVEN).plan().furtherTests()).extracting(Check::id).contains("leak-down");
  }

  @Test
  void it_can_decide_the_engine() {
    var water = assess(finding("spark-plugs", "water"));
    assertThat(water.engines().get(0).decidedBy()).isEqualTo(Subsystem.POWERHEAD);
    assertThat(water.verdict().stops())
        .singleElement()
        .matches(s -> s.order() == org.seafettle.catalogue.StopOrder.DO_NOT_CRANK);
  }

  @Test
  void once_opened_it_is_asked_for_what_would_settle_a_pattern() {
    var causes = assess(compression("[\"180 psi\", \"150 psi\"]")).causes();
    assertThat(causes)
        .filteredOn(c -> c.pattern().id().equals("gasket-or-rings-after-heat"))
        .singleElement()
        .matches(c -> !c.settled());
  }

  @Test
  void iron_from_an_engine_that_was_used_is_not_rust_of_standing() {
    Map<String, String> oil =
        Map.of(
            "iron-in-oil", "\"content\": \"250 mg/kg\"",
            "water-in-oil", "\"water\": \"0.08 %\"",
            "copper-in-oil", "\"content\": \"10 mg/kg\"",
            "lead-in-oil", "\"content\": \"3 mg/kg\"");
    var findings = new ArrayList<String>();
    oil.forEach(
        (check, reading) ->
            findings.add(
                "{\"check\": \""
                    + check
                    + "\", \"on\": \"port\", \"readings\": {"
                    + reading
                    + "}}"));
    assertThat(causes(findings)).contains("rust-of-standing");
    findings.add(hoursAYear(3));
    assertThat(causes(findings)).contains("rust-of-standing");
    findings.set(findings.size() - 1, hoursAYear(80));
    assertThat(causes(findings)).doesNotContain("rust-of-standing");
  }

  private static String hoursAYear(int hours) {
    return "{\"check\": \"hours-per-year\", \"on\": \"port\", \"readings\": {\"earlier\": \""
        + (600 - hours)
        + " h\", \"years-between\": \"1 a\"}}";
  }

  private static List<String> causes(List<String> findings) {
    return assess(findings.toArray(String[]::new)).causes().stream()
        .filter(Cause::settled)
        .map(c -> c.pattern().id())
        .toList();
  }
}

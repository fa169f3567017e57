package org.seafettle.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.seafettle.assessment.Assessor;
import org.seafettle.html.Templates;
import org.seafettle.json.SurveyReader;
import org.seafettle.quantity.MeasuredUnit;

/** How numbers and orders are told, on a boat of which little else is known. */
class FindingsInWordsTest {

  private static final Words WORDS = Templates.supplied().words("en");

  private static Report report(String... findings) {
    return report("inboard-gasoline", true, findings);
  }

  private static Report report(String engine, boolean afloat, String... findings) {
    var survey =
        """
        {"format": "seafettle-survey/1",
         "survey": {"id": "T", "purpose": "pre-purchase", "date": "2026-10-17", "place": "Quay",
                    "afloat": %s, "by": {"name": "A. Surveyor"}},
         "boat": {"name": "Case in Point"},
         "engines": [{"id": "port", "type": "%s"}],
         "batteries": [{"id": "start", "serves": ["port"], "chemistry": "flooded",
                        "nominal": "12 V", "cranking": "600 A"}],
         "pumps": [{"id": "bilge", "rated": "500 gal/h", "fed-by": "start"}],
         "findings": [%s]}
        """
            .formatted(afloat, engine, String.join(",", findings));
    var catalogue = SedgeWarbler.CATALOGUE;
    var assessment =
        new Assessor(catalogue).assess(SurveyReader.bind(survey, catalogue), List.of());
    return Report.of(assessment, WORDS, Map.of(), Options.USUAL);
  }

  private static String read(String check, String on, String readings) {
    return "{\"check\": \"%s\", \"on\": \"%s\", \"readings\": {%s}}".formatted(check, on, readings);
  }

  private static String is(String check, String word) {
    return "{\"check\": \"%s\", \"on\": \"boat\", \"is\": \"%s\"}".formatted(check, word);
  }

  private static String caption(String finding) {
    return report(finding).findings().get(0).drawing().caption().replace('\u00a0', ' ');
  }

  @Test
  void a_computed_number_of_unknown_uncertainty_has_three_digits() {
    var inflow = "\"cycles\": \"20\", \"volume\": \"40 L\", \"period\": \"1 h\"";
    assertThat(caption(read("inflow", "bilge", inflow))).startsWith("Inflow share: 0.423; ");
  }

  @Test
  void a_computed_number_is_not_rounded_onto_the_limit_that_it_misses() {
    var bucket = "\"volume\": \"10 L\", \"time\": \"38.056 s\"";
    assertThat(caption(read("pump-flow", "bilge", bucket))).startsWith("Pump flow share: 0.4998; ");
  }

  @Test
  void how_far_cylinders_lie_apart_is_called_a_difference() {
    var three = "\"temperature\": [\"60 Cel\", \"95 Cel\", \"62 Cel\"]";
    assertThat(caption(read("cylinder-temperature-spread", "port", three)))
        .isEqualTo("Difference in temperature: 35 K; temperature: 60 °C / 95 °C / 62 °C.");
  }

  @Test
  void an_empty_battery_is_not_told_to_be_empty_within_nothing() {
    var flat = "\"voltage\": \"11.5 V\", \"temperature\": \"20 Cel\", \"rested\": \"8 h\"";
    assertThat(caption(read("battery-rest-voltage", "start", flat)))
        .startsWith("State of charge: 0 %; ");
  }

  @Test
  void nobody_switches_a_boat_on() {
    assertThat(report(is("fuel-leak-or-vapour", "smell")).first().verdict().says())
        .containsExactly("Do not switch anything on aboard: a smell of gasoline.");
  }

  @Test
  void no_word_is_given_to_what_an_index_would_be_where_too_little_was_seen() {
    var water = read("ethanol-content", "boat", "\"ethanol\": \"16 %\"");
    assertThat(report(water).findings().get(0).judged())
        .extracting(Row::text)
        .anyMatch(t -> t.matches(".*the fuel index would be \\d+\\."));
  }

  @Test
  void the_findings_of_a_source_are_told_in_their_order() {
    var used =
        report(
                is("fuel-leak-or-vapour", "smell"),
                is("bilge-water", "above-the-switch"),
                read(
                    "inflow",
                    "bilge",
                    "\"cycles\": \"20\", \"volume\": \"40 L\", \"period\": \"1 h\""),
                is("fuel-shut-off", "seized"),
                is("bilge-oil", "film"),
                is("siphon-loops", "can-siphon-back"))
            .annexe()
            .method()
            .sources();
    assertThat(used)
        .extracting(MethodPart.SourceLine::used)
        .allSatisfy(
            line -> {
              var numbers =
                  java.util.regex.Pattern.compile("\\d+")
                      .matcher(line)
                      .results()
                      .map(r -> Integer.valueOf(r.group()))
                      .toList();
              assertThat(numbers).isSorted();
            });
  }

  @Test
  void what_was_looked_at_is_not_told_as_unseen_beside_a_possible_cause() {
    var finding =
        report(
                "{\"check\": \"oil-filter-metal\", \"on\": \"port\", \"is\": \"flakes\"}",
                read("copper-in-oil", "port", "\"content\": \"1 mg/kg\", \"oil-hours\": \"100 h\""))
            .findings()
            .stream()
            .filter(f -> f.heading().title().contains("flakes in the oil filter"))
            .findFirst()
            .orElseThrow();
    assertThat(finding.causes())
        .extracting(row -> row.text().replace('\u00a0', ' '))
        .filteredOn(t -> t.contains("Bearings are coming apart"))
        .singleElement()
        .satisfies(
            t ->
                assertThat(t)
                    .contains(
                        "none of these was looked at: oil pressure at warm idle; or lead in the oil, by laboratory.")
                    .doesNotContain("copper"));
  }

  private static final String MILKY =
      "{\"check\": \"oil-appearance\", \"on\": \"port\", \"is\": \"milky\"}";

  private static String told(List<Row> rows) {
    return String.join(" ", rows.stream().map(Row::text).toList()).replace('\u00a0', ' ');
  }

  private static String row(FindingPart finding, String label) {
    return finding.judged().stream()
        .filter(r -> r.label().equals(label))
        .map(Row::text)
        .findFirst()
        .orElse("")
        .replace('\u00a0', ' ');
  }

  @Test
  void a_look_that_no_diesel_has_is_not_told_as_missing_on_a_diesel() {
    var diesel = report("inboard-diesel", true, MILKY).findings().get(0);
    var gasoline = report(MILKY).findings().get(0);
    assertThat(told(gasoline.causes()))
        .containsPattern("looked at: [^.]*age of unopened exhaust risers");
    assertThat(told(diesel.causes()))
        .contains("looked at: ")
        .doesNotContainPattern("looked at: [^.]*age of unopened exhaust risers");
  }

  @Test
  void of_several_looks_that_would_settle_a_cause_only_the_last_stands_behind_an_or() {
    assertThat(told(report(MILKY).findings().get(0).causes()))
        .containsPattern("none of these was looked at: [^.]*; [^.]*; or [^.;]*\\.")
        .doesNotContainPattern("looked at: [^.]*; or [^.]*; or ");
  }

  @Test
  void who_may_do_it_is_told_as_a_person_would_say_it() {
    var seized = report(is("fuel-leak-or-vapour", "smell"), is("siphon-loops", "can-siphon-back"));
    assertThat(seized.plan().groups())
        .flatExtracting(PlanPart.Group::tasks)
        .extracting(TaskRow::who)
        .noneMatch(who -> who.matches(".* or .* or .*"));
  }

  @Test
  void the_limit_that_decided_is_told_also_where_what_lies_beyond_is_of_the_same_class() {
    var crimp = report(read("crimp-pull", "boat", "\"share\": \"0.5\"")).findings().get(0);
    assertThat(row(crimp, "limit"))
        .startsWith("below 0.8: in time (this reading); 0.8 to 1: in time; 1 and above: in order.");
    assertThat(crimp.drawing().scale().orElseThrow().ticks())
        .extracting(Scale.Tick::label)
        .containsExactly("0.8", "1");
    var weak = report(read("crimp-pull", "boat", "\"share\": \"0.9\"")).findings().get(0);
    assertThat(row(weak, "limit")).contains("0.8 to 1: in time (this reading)");
  }

  @Test
  void a_short_finding_stays_on_one_page_and_a_long_one_may_be_continued() {
    assertThat(report(is("fuel-shut-off", "seized")).findings().get(0).whole()).isTrue();
    assertThat(report(MILKY).findings().get(0).whole()).isFalse();
  }

  private static final String FLAT =
      read(
          "battery-rest-voltage",
          "start",
          "\"voltage\": \"11.5 V\", \"temperature\": \"20 Cel\", \"rested\": \"8 h\"");

  @Test
  void a_charge_beyond_the_end_of_its_scale_is_not_told_to_be_of_unknown_uncertainty() {
    assertThat(row(report(FLAT).findings().get(0), "how sure"))
        .isEqualTo("Within the uncertainty of what was read the finding stays the same.");
  }

  @Test
  void an_instrument_that_is_known_for_one_reading_and_not_for_another_says_for_which() {
    assertThat(report(FLAT).annexe().evidence().instruments())
        .extracting(InstrumentRow::checks)
        .anyMatch(c -> c.endsWith("(voltage)"))
        .anyMatch(c -> c.endsWith("(temperature, rested)"));
  }

  @Test
  void an_interval_stands_among_all_readings() {
    var last =
        "{\"check\": \"impeller-change\", \"on\": \"port\", \"last\": {\"date\": \"2020-10-17\"}}";
    var report = report(last);
    assertThat(report.annexe().evidence().readings())
        .extracting(EvidencePart.Reading::values)
        .containsExactly("72 months of 24; last done 17\u00a0October\u00a02020");
    assertThat(caption(last))
        .isEqualTo("300 % of the interval: 72 months of 24; last done 17 October 2020.");
  }

  @Test
  void an_uncertainty_ends_in_no_zero_that_its_value_shares() {
    var phrases = new Phrases(WORDS, Units.AS_RECORDED, SedgeWarbler.survey(text -> text));
    assertThat(phrases.uncertain(12.5, 0.0502, MeasuredUnit.VOLT).replace('\u00a0', ' '))
        .isEqualTo("12.50 ± 0.05 V");
    assertThat(phrases.uncertain(12.503, 0.0502, MeasuredUnit.VOLT).replace('\u00a0', ' '))
        .isEqualTo("12.503 ± 0.050 V");
  }

  @Test
  void the_weakest_of_several_cells_is_told_as_it_was_read() {
    var cells = "\"gravity\": [\"1.250\", \"1.140\"], \"temperature\": \"80 °F\"";
    assertThat(caption(read("battery-cell-gravity", "start", cells))).contains(": 1.140; ");
  }

  @Test
  void no_uncertainty_is_drawn_that_its_mark_would_cover() {
    assertThat(report(FLAT).findings().get(0).drawing().scale().orElseThrow().bar()).isEmpty();
  }

  @Test
  void who_is_afloat_is_not_told_to_do_something_before_launching() {
    var seized = is("seacocks", "seized");
    var stiff = is("seacocks", "stiff");
    assertThat(heading("inboard-gasoline", false, seized)).endsWith("before launching");
    assertThat(heading("inboard-gasoline", true, seized))
        .endsWith("with the boat hauled out, before she is left afloat");
    assertThat(heading("inboard-gasoline", true, stiff)).endsWith("when she is next ashore");
  }

  private static String heading(String engine, boolean afloat, String finding) {
    return report(engine, afloat, finding).findings().get(0).heading().findingClass();
  }

  @Test
  void a_law_that_was_not_read_is_not_told_to_require_anything() {
    assertThat(
            row(
                report(
                        "{\"check\": \"emergency-stop\", \"on\": \"port\", \"is\": \"does-not-stop-the-engine\"}")
                    .findings()
                    .get(0),
                "law"))
        .isEqualTo(
            "On a boat to which that law applies it may require this to be in order; the text of the law was not"
                + " read.");
    assertThat(row(report(is("fire-extinguishers", "too-few")).findings().get(0), "law"))
        .isEqualTo(
            "The source is a law: on a boat that it covers, it requires this to be in order.");
  }

  @Test
  void a_caution_stands_with_the_few_actions_that_need_it() {
    var many = SedgeWarbler.assessment("season-end", 0);
    var photos = SedgeWarbler.photoFacts(many.survey());
    var groups = Report.of(many, WORDS, photos, Options.USUAL).plan().groups();
    assertThat(groups).flatExtracting(PlanPart.Group::batches).hasSizeGreaterThan(groups.size());
    assertThat(groups)
        .allSatisfy(
            group ->
                assertThat(group.batches())
                    .flatExtracting(PlanPart.Batch::tasks)
                    .isEqualTo(group.tasks()))
        .flatExtracting(PlanPart.Group::batches)
        .allSatisfy(
            batch -> {
              assertThat(batch.tasks()).hasSizeBetween(1, 3);
              var numbers =
                  batch.tasks().stream()
                      .flatMap(t -> t.findings().stream())
                      .map(Reference::number)
                      .toList();
              assertThat(batch.cautions())
                  .allMatch(c -> numbers.containsAll(List.of(c.label().split(", | and "))));
            });
  }
}

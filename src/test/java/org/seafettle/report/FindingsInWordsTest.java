package org.seafettle.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.seafettle.assessment.Assessor;
import org.seafettle.html.Templates;
import org.seafettle.json.SurveyReader;

/** How numbers and orders are told, on a boat of which little else is known. */
class FindingsInWordsTest {

  private static final Words WORDS = Templates.supplied().words("en");

  private static Report report(String... findings) {
    var survey =
        """
        {"format": "seafettle-survey/1",
         "survey": {"id": "T", "purpose": "pre-purchase", "date": "2026-10-17", "place": "Quay",
                    "afloat": true, "by": {"name": "A. Surveyor"}},
         "boat": {"name": "Case in Point"},
         "engines": [{"id": "port", "type": "inboard-gasoline"}],
         "batteries": [{"id": "start", "serves": ["port"], "chemistry": "flooded",
                        "nominal": "12 V", "cranking": "600 A"}],
         "pumps": [{"id": "bilge", "rated": "500 gal/h", "fed-by": "start"}],
         "findings": [%s]}
        """
            .formatted(String.join(",", findings));
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
    assertThat(caption(read("inflow", "bilge", inflow))).startsWith("Inflow share 0.423; ");
  }

  @Test
  void a_computed_number_is_not_rounded_onto_the_limit_that_it_misses() {
    var bucket = "\"volume\": \"10 L\", \"time\": \"38.056 s\"";
    assertThat(caption(read("pump-flow", "bilge", bucket))).startsWith("Pump flow share 0.4998; ");
  }

  @Test
  void how_far_cylinders_lie_apart_is_called_a_difference() {
    var three = "\"temperature\": [\"60 Cel\", \"95 Cel\", \"62 Cel\"]";
    assertThat(caption(read("cylinder-temperature-spread", "port", three)))
        .isEqualTo("Difference in temperature 35 K; temperature 60 °C / 95 °C / 62 °C.");
  }

  @Test
  void an_empty_battery_is_not_told_to_be_empty_within_nothing() {
    var flat = "\"voltage\": \"11.5 V\", \"temperature\": \"20 Cel\", \"rested\": \"8 h\"";
    assertThat(caption(read("battery-rest-voltage", "start", flat)))
        .startsWith("State of charge 0 %; ");
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
                "{\"check\": \"oil-leak\", \"on\": \"port\", \"is\": \"runs\"}",
                read("oil-level", "port", "\"position\": 1.08"))
            .findings()
            .stream()
            .filter(f -> f.heading().title().contains("oil running"))
            .findFirst()
            .orElseThrow();
    assertThat(finding.causes())
        .extracting(Row::text)
        .filteredOn(t -> t.contains("The oil leaks out"))
        .singleElement()
        .satisfies(
            t ->
                assertThat(t)
                    .contains("not looked at: change of the oil level since the last look.")
                    .doesNotContain("engine oil level"));
  }
}

package org.seafettle.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.seafettle.assessment.Surveys.assess;
import static org.seafettle.assessment.Surveys.finding;
import static org.seafettle.assessment.Surveys.level;
import static org.seafettle.assessment.Surveys.result;
import static org.seafettle.assessment.Surveys.says;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.seafettle.catalogue.Deadline;
import org.seafettle.catalogue.FindingClass;
import org.seafettle.catalogue.Pattern;
import org.seafettle.catalogue.StopOrder;

/** What several findings together point to. */
class CausesTest {

  private static final String GASOLINE_IN_OIL = "gasoline-in-the-oil";
  private static final String OIL_OF_100_HOURS =
      "\"readings\": {\"content\": \"%s\", \"oil-hours\": \"100 h\"}";
  private static final String RAIN = "rain-through-the-deck-fill";

  private static Optional<Cause> cause(Assessment assessment, String pattern, String engine) {
    return assessment.causes().stream()
        .filter(c -> c.pattern().id().equals(pattern) && c.engine().id().equals(engine))
        .findFirst();
  }

  private static Optional<Pattern> raisedBy(Assessment assessment, String check, String on) {
    return result(assessment, check, on).seen().orElseThrow().raisedBy();
  }

  @Test
  void a_high_level_and_the_smell_of_fuel_have_one_cause_on_the_engine_that_shows_both() {
    var assessment = assess(level("port", "1.1"), says("oil-appearance", "port", "fuel-smell"));
    var cause = cause(assessment, GASOLINE_IN_OIL, "port").orElseThrow();
    assertThat(cause.settled()).isTrue();
    assertThat(cause.from())
        .extracting(r -> r.check().id())
        .containsExactly("oil-level", "oil-appearance");
    assertThat(cause(assessment, GASOLINE_IN_OIL, "starboard")).isEmpty();
  }

  @Test
  void a_sign_on_one_engine_and_a_sign_on_the_other_settle_nothing() {
    var assessment =
        assess(level("port", "1.1"), says("oil-appearance", "starboard", "fuel-smell"));
    assertThat(assessment.causes()).noneMatch(Cause::settled);
    assertThat(cause(assessment, GASOLINE_IN_OIL, "port").orElseThrow().from())
        .extracting(r -> r.component().id())
        .containsExactly("port");
  }

  @Test
  void each_engine_has_its_own_cause_with_its_own_findings_as_they_are_numbered() {
    var assessment =
        assess(
            level("port", "1.1"),
            says("oil-appearance", "port", "fuel-smell"),
            level("starboard", "1.1"),
            says("oil-appearance", "starboard", "fuel-smell"));
    for (var engine : new String[] {"port", "starboard"}) {
      assertThat(cause(assessment, GASOLINE_IN_OIL, engine).orElseThrow().from())
          .hasSize(2)
          .allMatch(r -> r.component().id().equals(engine))
          .allMatch(r -> r.number().isPresent());
    }
  }

  @Test
  void a_sign_whose_other_look_was_not_taken_points_to_a_possible_cause() {
    var cause =
        cause(assess(says("separator-water", "port", "water-again")), RAIN, "port").orElseThrow();
    assertThat(cause.settled()).isFalse();
    assertThat(cause.missing().orElseThrow().anyOf())
        .extracting(Pattern.Sign::check)
        .containsExactly("deck-fill-cap");
  }

  @Test
  void a_look_that_was_taken_and_showed_nothing_rules_a_cause_out() {
    var sound =
        assess(
            says("separator-water", "port", "water-again"), says("deck-fill-cap", "boat", "seals"));
    assertThat(cause(sound, RAIN, "port")).isEmpty();
  }

  @Test
  void with_two_looks_missing_nothing_is_said() {
    assertThat(cause(assess(level("port", "1.1")), "overfilled", "port")).isEmpty();
  }

  @Test
  void a_cause_is_told_at_what_it_explains_and_not_at_its_evidence() {
    var assessment = assess(level("port", "1.1"), says("oil-appearance", "port", "fuel-smell"));
    var cause = cause(assessment, GASOLINE_IN_OIL, "port").orElseThrow();
    assertThat(cause.explains(result(assessment, "oil-level", "port"))).isTrue();
    assertThat(cause.explains(result(assessment, "oil-appearance", "port"))).isFalse();
    assertThat(cause.explains(result(assessment, "oil-level", "starboard"))).isFalse();
  }

  @Test
  void evidence_alone_asks_for_no_cause_of_what_nobody_found() {
    assertThat(cause(assess(says("oil-appearance", "port", "fuel-smell")), GASOLINE_IN_OIL, "port"))
        .isEmpty();
  }

  @Test
  void a_cause_that_is_none_without_its_last_look_is_not_asked_as_a_question() {
    var iron = finding("iron-in-oil", "port", OIL_OF_100_HOURS, "500 mg/kg");
    var silicon = finding("silicon-in-oil", "port", OIL_OF_100_HOURS, "90 mg/kg");
    assertThat(cause(assess(iron), "dirt-wears-the-engine", "port")).isEmpty();
    assertThat(cause(assess(iron, silicon), "dirt-wears-the-engine", "port"))
        .hasValueSatisfying(c -> assertThat(c.settled()).isTrue());
  }

  @Test
  void what_is_in_order_points_to_no_cause() {
    var assessment =
        assess(
            says("oil-appearance", "port", "golden"),
            "{\"check\": \"engine-oil-change\", \"on\": \"port\","
                + " \"last\": {\"date\": \"2026-06-01\", \"hours\": \"550 h\"}}");
    assertThat(cause(assessment, "overfilled", "port")).isEmpty();
  }

  @Test
  void a_settled_cause_makes_its_finding_graver_and_hurries_it() {
    var assessment =
        assess(
            level("port", "1.1"),
            says("oil-appearance", "port", "fuel-smell"),
            level("starboard", "1.1"));
    var port = result(assessment, "oil-level", "port").seen().orElseThrow();
    assertThat(port.outcome().findingClass()).isEqualTo(FindingClass.MONITOR);
    assertThat(port.found()).isEqualTo(FindingClass.TIMELY);
    assertThat(port.by()).contains(Deadline.WITHIN_TEN_HOURS);
    assertThat(raisedBy(assessment, "oil-level", "port"))
        .hasValueSatisfying(p -> assertThat(p.id()).isEqualTo(GASOLINE_IN_OIL));
    var starboard = result(assessment, "oil-level", "starboard").seen().orElseThrow();
    assertThat(starboard.found()).isEqualTo(FindingClass.MONITOR);
    assertThat(starboard.by()).contains(Deadline.NEXT_SERVICE);
  }

  @Test
  void a_finding_that_is_as_grave_already_is_not_raised_nor_made_milder() {
    for (var position : new String[] {"1.3", "1.7"}) {
      var assessment =
          assess(level("port", position), says("oil-appearance", "port", "fuel-smell"));
      assertThat(cause(assessment, GASOLINE_IN_OIL, "port").orElseThrow().settled()).isTrue();
      assertThat(raisedBy(assessment, "oil-level", "port")).isEmpty();
    }
  }

  @Test
  void what_was_found_in_order_is_not_raised_by_what_else_was_found() {
    var assessment =
        assess(
            level("port", "0.5"),
            says("oil-level-drift", "port", "risen-without-topping-up"),
            says("oil-appearance", "port", "fuel-smell"));
    assertThat(cause(assessment, GASOLINE_IN_OIL, "port").orElseThrow().settled()).isTrue();
    assertThat(result(assessment, "oil-level", "port").reports()).isFalse();
    assertThat(raisedBy(assessment, "oil-level", "port")).isEmpty();
  }

  @Test
  void a_diesel_that_may_run_away_on_its_own_oil_must_not_be_started() {
    var verdict =
        OneLook.aboard("inboard-diesel")
            .assess(level("port", "1.7"), says("oil-appearance", "port", "fuel-smell"))
            .verdict();
    assertThat(verdict.stops())
        .filteredOn(stop -> stop.because().check().id().equals("oil-level"))
        .extracting(Verdict.Stop::order)
        .containsExactly(StopOrder.DO_NOT_START);
  }
}

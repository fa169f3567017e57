package org.seafettle.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.seafettle.assessment.OneLook.CATALOGUE;
import static org.seafettle.assessment.OneLook.aboard;
import static org.seafettle.assessment.OneLook.findingClass;
import static org.seafettle.assessment.OneLook.guidance;
import static org.seafettle.assessment.OneLook.number;
import static org.seafettle.assessment.OneLook.outcome;

import org.junit.jupiter.api.Test;
import org.seafettle.catalogue.FindingClass;
import org.seafettle.catalogue.StopOrder;

/** Where a survey of the bilge goes wrong, and what the trade knows of it. */
class BilgeTrapsTest {

  private static final OneLook OUTBOARD = aboard("outboard-4-stroke");

  private static Result capacity(String readings) {
    return OUTBOARD.assess("{\"check\": \"pump-capacity\"" + readings + "}").results().stream()
        .filter(r -> r.check().id().equals("pump-capacity"))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void a_pump_moves_half_of_its_label_and_all_of_what_was_measured() {
    assertThat(number(capacity(""))).isCloseTo(15 / 15.0, within(1e-9));
    assertThat(number(capacity(", \"readings\": {\"delivered\": \"30 L/min\"}")))
        .isCloseTo(30 / 15.0, within(1e-9));
  }

  @Test
  void gallons_of_a_pump_are_us_gallons() {
    var look = capacity(", \"readings\": {\"delivered\": \"10 gpm\"}");
    assertThat(number(look)).isCloseTo(37.854 / 15, within(0.001));
  }

  @Test
  void a_private_boat_has_no_law_on_pumps_and_is_held_against_a_benchmark() {
    for (var check : CATALOGUE.checks()) {
      if (check.id().startsWith("pump-") || check.id().equals("high-water-alarm")) {
        assertThat(check.outcomes())
            .as(check.id())
            .noneMatch(o -> o.advice().filter(a -> a.requiredByLaw()).isPresent());
      }
    }
    assertThat(guidance("pump-capacity")).contains("Benchmark");
    assertThat(OneLook.outcome("high-water-alarm", "none").saying().means())
        .contains("commercial boats")
        .contains("benchmark");
  }

  @Test
  void nobody_is_graded_for_a_pump_that_cannot_keep_up_with_a_burst_hose() {
    assertThat(guidance("pump-capacity")).contains("No pump keeps up with a large hole");
    assertThat(CATALOGUE.byId().keySet()).noneMatch(id -> id.contains("hole"));
  }

  @Test
  void a_dirty_bilge_hangs_the_switch_and_then_the_engine_does_not_start() {
    assertThat(guidance("bilge-cleanliness"))
        .contains("hangs the pump’s switch")
        .contains("burns out or flattens the battery")
        .contains("the engine does not start");
    var slime = outcome(OUTBOARD.say("bilge-cleanliness", "slime-on-the-float"));
    assertThat(slime.findingClass()).isEqualTo(FindingClass.TIMELY);
  }

  @Test
  void a_bilge_is_cleaned_with_something_biodegradable_and_nothing_oily_goes_overboard() {
    var clean = outcome(OUTBOARD.say("bilge-cleanliness", "dirt")).advice().orElseThrow().action();
    assertThat(clean.does()).contains("biodegradable").contains("bring them ashore");
    assertThat(clean.cautions()).anyMatch(c -> c.text().contains("must not go overboard"));
  }

  @Test
  void the_automatic_pump_of_a_boat_left_afloat_stays_live_even_over_oil() {
    var soak = outcome(OUTBOARD.say("bilge-oil", "pool")).advice().orElseThrow().action();
    assertThat(soak.cautions())
        .anyMatch(c -> c.text().contains("on a boat left afloat it stays live"));
  }

  @Test
  void a_smell_of_gasoline_needs_no_detector_and_nothing_is_switched() {
    var smell = outcome(OUTBOARD.say("bilge-vapour", "smell"));
    assertThat(smell.advice().orElseThrow().stop()).contains(StopOrder.DO_NOT_SWITCH_ON);
  }

  @Test
  void an_extinguisher_made_in_2013_went_out_of_use_at_the_end_of_2025() {
    assertThat(findingClass(OUTBOARD.read("fire-extinguishers", "\"year\": \"2013\"")))
        .isEqualTo(FindingClass.BEFORE_USE);
    assertThat(findingClass(OUTBOARD.read("fire-extinguishers", "\"year\": \"2014\"")))
        .isEqualTo(FindingClass.MONITOR);
  }

  @Test
  void openings_are_held_against_the_rule_on_outboard_boats_too_and_blowers_are_not() {
    var opening =
        OUTBOARD.read("ventilation-openings", "\"opening\": \"10 in2\", \"volume\": \"100 ft3\"");
    assertThat(number(opening)).isCloseTo(10 / 14.979, within(0.001));
    var survey = OUTBOARD.survey();
    assertThat(OneLook.check("blower-flow").scope().covers(survey, survey.boat())).isFalse();
  }
}

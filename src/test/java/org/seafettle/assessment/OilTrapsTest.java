package org.seafettle.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.seafettle.assessment.OneLook.aboard;
import static org.seafettle.assessment.OneLook.findingClass;
import static org.seafettle.assessment.OneLook.guidance;
import static org.seafettle.assessment.OneLook.outcome;
import static org.seafettle.assessment.OneLook.unseen;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.seafettle.catalogue.Deadline;
import org.seafettle.catalogue.FindingClass;
import org.seafettle.catalogue.Reason;
import org.seafettle.catalogue.Who;

/** Where a survey of the oil goes wrong, and what the trade knows of it. */
class OilTrapsTest {

  private static final OneLook OUTBOARD = aboard("outboard-4-stroke");

  @ParameterizedTest
  @CsvSource({"16, in-grade", "20, in-grade", "12, barely-outside"})
  void an_oil_of_7_5_is_both_a_16_and_a_20_since_the_thin_grades_overlap(
      String grade, String expected) {
    var look = viscosity("7.5", grade);
    assertThat(outcome(look).name()).isEqualTo(expected);
  }

  @Test
  void an_oil_of_5_8_is_no_20_any_more_although_old_tables_begin_at_5_6() {
    assertThat(findingClass(viscosity("5.8", "20"))).isEqualTo(FindingClass.BEFORE_USE);
    assertThat(guidance("oil-viscosity")).contains("January 2015");
  }

  private static Result viscosity(String viscosity, String grade) {
    return OUTBOARD.read(
        "oil-viscosity",
        "\"viscosity\": \"%s mm2/s\", \"grade\": \"%s\"".formatted(viscosity, grade));
  }

  @Test
  void sodium_tells_how_much_sea_ever_came_in_and_not_how_much_water_is_there_now() {
    var look = OUTBOARD.read("sodium-in-oil", "\"above-fresh-oil\": \"540 mg/kg\"");
    assertThat(outcome(look).saying().means()).contains("salt stays when the water boils away");
    assertThat(guidance("sodium-in-oil")).contains("has ever come in");
  }

  @Test
  void base_numbers_by_two_methods_are_never_compared() {
    var mixed = OUTBOARD.read("base-number", "\"used-by-d4739\": \"4\", \"new-by-d2896\": \"10\"");
    assertThat(unseen(mixed).kind()).isEqualTo(Reason.Kind.READING_MISSING);
    assertThat(unseen(mixed).text()).isEqualTo("base-numbers");
  }

  @ParameterizedTest
  @ValueSource(strings = {"iron", "copper", "lead", "aluminium", "chromium", "silicon", "tin"})
  void a_sample_drawn_right_after_a_change_is_no_good_result(String metal) {
    var look = OUTBOARD.read(metal + "-in-oil", "\"content\": \"1 mg/kg\", \"oil-hours\": \"2 h\"");
    assertThat(unseen(look).text()).isEqualTo("oil-too-fresh");
  }

  @Test
  void the_history_of_the_engine_counts_more_than_general_limits_of_metals() {
    assertThat(guidance("iron-in-oil")).contains("General limits only");
  }

  @Test
  void fuel_in_the_oil_alone_never_stops_an_engine() {
    var look = OUTBOARD.read("fuel-in-oil", "\"fuel\": \"25 %\"");
    assertThat(findingClass(look)).isEqualTo(FindingClass.TIMELY);
  }

  @Test
  void a_diesel_takes_seven_per_cent_of_fuel_where_gasoline_takes_five() {
    assertThat(findingClass(aboard("inboard-diesel").read("fuel-in-oil", "\"fuel\": \"6 %\"")))
        .isEqualTo(FindingClass.MONITOR);
    assertThat(findingClass(OUTBOARD.read("fuel-in-oil", "\"fuel\": \"6 %\"")))
        .isEqualTo(FindingClass.TIMELY);
  }

  @Test
  void a_gearcase_that_cools_down_loses_pressure_without_a_leak() {
    var look =
        OUTBOARD.read(
            "gearcase-pressure",
            """
            "start": "100 kPa", "end": "87.1 kPa",
            "start-temperature": "40 Cel", "end-temperature": "20 Cel"
            """);
    assertThat(findingClass(look)).isEqualTo(FindingClass.OK);
  }

  @Test
  void a_dipstick_that_was_not_read_as_the_maker_says_is_less_certain() {
    var position = "\"readings\": {\"position\": \"0.85\"}";
    var careless = OUTBOARD.result("oil-level", position);
    var careful =
        OUTBOARD.result("oil-level", position + ", \"conditions\": [\"read-as-the-manual-says\"]");
    assertThat(findingClass(careless)).isEqualTo(findingClass(careful));
    assertThat(careless.tooCloseToCall()).isTrue();
    assertThat(careful.tooCloseToCall()).isFalse();
  }

  @Test
  void oil_is_ideally_midway_between_the_marks() {
    var look = OUTBOARD.read("oil-level", "\"position\": \"0.5\"");
    assertThat(outcome(look).saying().means()).isEqualTo("Midway between the marks is ideal.");
  }

  @Test
  void oil_is_looked_at_every_trip_or_every_third_to_fifth_in_daily_use_and_after_a_lay_up() {
    assertThat(guidance("oil-level"))
        .contains("before every trip")
        .contains("third to fifth trip")
        .contains("always before the first trip after a lay-off");
  }

  @Test
  void oil_far_above_the_mark_with_nothing_added_points_to_fuel() {
    var look = OUTBOARD.read("oil-level", "\"position\": \"1.8\"");
    assertThat(outcome(look).saying().means()).contains("nothing added").contains("fuel");
    assertThat(outcome(look).advice().orElseThrow().action().id()).isEqualTo("find-fuel-in-oil");
  }

  @Test
  void oil_low_again_after_topping_up_points_to_a_leak() {
    var look = OUTBOARD.say("oil-level-drift", "low-again-after-topping-up");
    assertThat(outcome(look).saying().means()).contains("leak is the first suspect");
  }

  @Test
  void golden_and_brown_oil_are_well_and_near_black_is_no_failure_by_itself() {
    assertThat(findingClass(OUTBOARD.say("oil-appearance", "golden"))).isEqualTo(FindingClass.OK);
    assertThat(findingClass(OUTBOARD.say("oil-appearance", "brown"))).isEqualTo(FindingClass.OK);
    var black = outcome(OUTBOARD.say("oil-appearance", "near-black"));
    assertThat(black.findingClass()).isEqualTo(FindingClass.ADVICE);
    assertThat(black.saying().means()).contains("no fault").contains("100 hours");
  }

  @Test
  void milky_oil_goes_to_a_workshop_at_once() {
    var advice = outcome(OUTBOARD.say("oil-appearance", "milky")).advice().orElseThrow();
    assertThat(advice.by()).isEqualTo(Deadline.AT_ONCE);
    assertThat(advice.action().who()).containsExactly(Who.MECHANIC);
  }

  @Test
  void salt_in_the_proportion_of_the_sea_settles_what_the_water_in_the_oil_is() {
    var assessment =
        OUTBOARD.assess(
            "{\"check\": \"oil-appearance\", \"is\": \"milky\"}",
            """
            {"check": "salt-origin-in-oil",
             "readings": {"sodium": "540 mg/kg", "potassium": "20 mg/kg"}}
            """);
    assertThat(assessment.causes())
        .filteredOn(Cause::settled)
        .extracting(c -> c.pattern().id())
        .contains("sea-water-in-the-oil");
  }
}

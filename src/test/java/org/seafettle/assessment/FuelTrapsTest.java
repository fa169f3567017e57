package org.seafettle.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.seafettle.assessment.OneLook.aboard;
import static org.seafettle.assessment.OneLook.check;
import static org.seafettle.assessment.OneLook.findingClass;
import static org.seafettle.assessment.OneLook.guidance;
import static org.seafettle.assessment.OneLook.number;
import static org.seafettle.assessment.OneLook.outcome;

import org.junit.jupiter.api.Test;
import org.seafettle.catalogue.FindingClass;
import org.seafettle.catalogue.StopOrder;
import org.seafettle.formula.fuel.Burn;
import org.seafettle.formula.fuel.EthanolBlend;
import org.seafettle.formula.fuel.Restriction;
import org.seafettle.problem.Refused;

/** Where a survey of the fuel goes wrong, and what the trade knows of it. */
class FuelTrapsTest {

  private static final double KILOPASCALS_PER_INCH_OF_MERCURY = 3.38639;

  private static final OneLook OUTBOARD = aboard("outboard-4-stroke");
  private static final OneLook STERNDRIVE = aboard("sterndrive-gasoline");

  @Test
  void metal_parts_of_a_plastic_fill_are_not_to_be_bonded() {
    assertThat(findingClass(STERNDRIVE.say("fill-grounding", "plastic-not-bonded")))
        .isEqualTo(FindingClass.OK);
    var bonded = outcome(STERNDRIVE.say("fill-grounding", "plastic-but-bonded"));
    assertThat(bonded.findingClass()).isEqualTo(FindingClass.TIMELY);
    assertThat(bonded.saying().means()).contains("invites the spark");
    assertThat(guidance("fill-grounding")).contains("ohms are those of a metal fill only");
  }

  @Test
  void a_metal_fill_is_to_be_grounded() {
    assertThat(findingClass(STERNDRIVE.read("fill-grounding", "\"resistance\": \"100 Ohm\"")))
        .isEqualTo(FindingClass.MONITOR);
    assertThat(findingClass(STERNDRIVE.read("fill-grounding", "\"resistance\": \"5 kOhm\"")))
        .isEqualTo(FindingClass.TIMELY);
  }

  @Test
  void automotive_hose_breaks_the_law_on_a_sterndrive_and_a_benchmark_on_an_outboard() {
    var bound = outcome(STERNDRIVE.say("fuel-hose-marking", "automotive-hose"));
    var free = outcome(OUTBOARD.say("fuel-hose-marking", "automotive-hose"));
    assertThat(bound.advice().orElseThrow().requiredByLaw()).isTrue();
    assertThat(free.advice().orElseThrow().requiredByLaw()).isFalse();
    assertThat(free.saying().means()).contains("a benchmark here");
    assertThat(free.findingClass()).isEqualTo(bound.findingClass());
  }

  @Test
  void three_hundred_horsepower_burn_24_gallons_an_hour_and_not_21() {
    assertThat(Burn.GASOLINE.gallonsPerHour(300)).isCloseTo(24.19, within(0.01));
  }

  @Test
  void a_foot_of_lift_takes_less_of_gasoline_than_of_water() {
    double inchesOfMercury =
        Restriction.liftKilopascals(745, 0.3048) / KILOPASCALS_PER_INCH_OF_MERCURY;
    assertThat(inchesOfMercury).isCloseTo(0.658, within(0.001));
  }

  @Test
  void ethanol_blend_holds_half_a_per_cent_of_water_and_not_a_twentieth() {
    assertThat(EthanolBlend.percentFromTeaspoonsPerGallon(3.8)).isCloseTo(0.495, within(0.001));
    assertThat(EthanolBlend.tolerancePercent(60)).isEqualTo(0.5);
  }

  @Test
  void air_that_cools_down_loses_pressure_without_a_leak() {
    var look =
        STERNDRIVE.read(
            "fuel-pressure-test",
            """
            "start": "3.000 psi", "end": "2.698 psi",
            "start-temperature": "20 Cel", "end-temperature": "15 Cel"
            """);
    assertThat(findingClass(look)).isEqualTo(FindingClass.OK);
    assertThat(number(look)).isCloseTo(0, within(0.02));
  }

  @Test
  void a_held_pressure_proves_nothing_about_each_fitting_and_no_surveyor_pumps_the_system_up() {
    assertThat(guidance("fuel-pressure-test"))
        .contains("says nothing about each fitting")
        .contains("no surveyor puts a filled gasoline system under air pressure");
  }

  @Test
  void a_line_with_vapour_in_it_reads_falsely_low() {
    assertThat(guidance("fuel-vacuum"))
        .contains("reads falsely low")
        .contains("never at idle")
        .contains("clear hose");
  }

  @Test
  void an_imperial_gallon_is_not_taken_for_a_us_gallon() {
    assertThatThrownBy(
            () ->
                OUTBOARD.read("oil-consumption", "\"added\": \"1 imp gal\", \"fuel\": \"90 gal\""))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("imp gal");
  }

  @Test
  void a_separator_is_changed_every_100_hours_and_sooner_on_wet_fuel() {
    assertThat(guidance("separator-change")).contains("25 to 50 hours");
    assertThat(findingClass(OUTBOARD.say("separator-change", "too-long-for-wet-fuel")))
        .isEqualTo(FindingClass.TIMELY);
    var after80 = "\"last\": {\"date\": \"2026-07-01\", \"hours\": \"520 h\"}";
    assertThat(findingClass(OUTBOARD.result("separator-change", after80)))
        .isEqualTo(FindingClass.OK);
    assertThat(
            findingClass(
                OUTBOARD
                    .makersLimit("separator-change", "\"hours\": \"50 h\"")
                    .result("separator-change", after80)))
        .isEqualTo(FindingClass.TIMELY);
  }

  @Test
  void an_alarm_for_water_in_the_fuel_is_never_ignored() {
    var look = outcome(OUTBOARD.say("separator-water", "alarm-stays-on"));
    assertThat(look.advice().orElseThrow().stop()).contains(StopOrder.DO_NOT_START);
    assertThat(look.saying().means()).contains("never to be ignored");
  }

  @Test
  void a_tank_filled_with_water_by_mistake_is_not_started_on() {
    var look = outcome(OUTBOARD.say("wrong-fuel", "certain"));
    assertThat(look.saying().observed()).contains("Water or the wrong fuel");
    assertThat(look.advice().orElseThrow().stop()).contains(StopOrder.DO_NOT_START);
  }

  @Test
  void octane_and_its_scale_are_named() {
    assertThat(guidance("octane")).contains("(R+M)/2").contains("RON");
  }

  @Test
  void the_water_limit_of_a_delivery_is_said_to_be_taken_for_tanks() {
    assertThat(OneLook.outcome("tank-water", "a-little-water").citation().at())
        .contains("as delivered");
    assertThat(check("tank-water").guidance().how())
        .anyMatch(h -> h.contains("gives a range only"));
  }
}

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
import org.seafettle.problem.Refused;

/** Where a survey of the cooling goes wrong, and what the trade knows of it. */
class CoolingTrapsTest {

  private static final OneLook OUTBOARD = aboard("outboard-4-stroke");
  private static final OneLook DIESEL = aboard("inboard-diesel");

  @Test
  void no_engine_is_judged_by_the_temperature_of_its_telltale() {
    assertThat(check("telltale").criterion().readings()).isEmpty();
    assertThat(guidance("running-temperature")).contains("telltale’s water tells nothing");
  }

  @Test
  void a_strong_telltale_does_not_prove_that_water_reaches_every_passage() {
    assertThat(guidance("telltale")).contains("does not show that the water reaches every passage");
  }

  @Test
  void a_weak_telltale_is_only_watched_until_its_nozzle_was_cleared() {
    assertThat(findingClass(OUTBOARD.say("telltale", "weak"))).isEqualTo(FindingClass.MONITOR);
    assertThat(findingClass(OUTBOARD.say("telltale", "weak-with-clear-nozzle")))
        .isEqualTo(FindingClass.TIMELY);
  }

  @Test
  void the_figure_on_a_retail_bottle_is_where_a_pipe_bursts_and_not_where_ice_forms() {
    assertThat(guidance("winter-protection")).contains("-50 °F").contains("bursts");
    assertThat(guidance("coolant-freezing-point")).contains("first ice forms");
    // 30 % propylene glycol is sold as -50 °F; its first ice forms at about -13 °C
    var look = DIESEL.read("coolant-freezing-point", "\"propylene-glycol\": \"30 %\"");
    assertThat(outcome(look).name()).isEqualTo("too-weak");
    assertThat(number(look)).isCloseTo(-15 + 13, within(0.1));
  }

  @Test
  void antifreeze_that_was_not_measured_as_it_came_out_may_be_thinned() {
    var look = outcome(OUTBOARD.say("winter-protection", "filled-not-measured"));
    assertThat(look.findingClass()).isEqualTo(FindingClass.MONITOR);
    assertThat(look.saying().means()).contains("thins the antifreeze");
  }

  @Test
  void an_outboard_drains_itself_upright_and_an_inboard_does_not() {
    assertThat(findingClass(OUTBOARD.say("winter-protection", "drained-by-itself-upright")))
        .isEqualTo(FindingClass.OK);
    assertThat(findingClass(DIESEL.say("winter-protection", "drained-by-itself-upright")))
        .isEqualTo(FindingClass.TIMELY);
  }

  @Test
  void a_difference_of_temperatures_is_no_temperature() {
    var rise =
        DIESEL.read("raw-water-temperature-rise", "\"inlet\": \"59 °F\", \"outlet\": \"77 °F\"");
    assertThat(number(rise)).isCloseTo(10, within(1e-6));
    assertThatThrownBy(() -> DIESEL.read("raw-water-temperature-rise", "\"rise\": \"18 °F\""))
        .isInstanceOf(Refused.class);
  }

  @Test
  void the_rise_of_the_raw_water_means_nothing_where_the_block_is_cooled_by_it() {
    assertThatThrownBy(() -> OUTBOARD.read("raw-water-temperature-rise", "\"rise\": \"10 K\""))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("does not apply");
  }

  @Test
  void a_thermostat_of_143_fahrenheit_opens_at_61_7_although_a_manual_prints_62() {
    var look =
        OUTBOARD
            .makersLimit("thermostat-opening", "\"lowest\": \"140 °F\", \"highest\": \"146 °F\"")
            .read("thermostat-opening", "\"opens-at\": \"143 °F\"");
    assertThat(number(look)).isCloseTo(61.67, within(0.01));
  }

  @Test
  void some_flush_ports_are_for_use_with_the_engine_stopped() {
    assertThat(guidance("flushing")).contains("with the engine stopped");
  }

  @Test
  void a_short_flush_in_salt_is_an_advice_and_none_at_all_a_fault() {
    assertThat(findingClass(OUTBOARD.read("flushing", "\"minutes\": \"15 min\"")))
        .isEqualTo(FindingClass.OK);
    assertThat(findingClass(OUTBOARD.read("flushing", "\"minutes\": \"5 min\"")))
        .isEqualTo(FindingClass.ADVICE);
    assertThat(findingClass(OUTBOARD.say("flushing", "never-flushed")))
        .isEqualTo(FindingClass.TIMELY);
    assertThat(guidance("flushing")).contains("about fifteen minutes");
  }

  @Test
  void the_makers_figure_for_flushing_wins_but_does_not_excuse_no_flush_at_all() {
    var five = OUTBOARD.makersLimit("flushing", "\"lowest\": \"5 min\"");
    assertThat(findingClass(five.read("flushing", "\"minutes\": \"6 min\"")))
        .isEqualTo(FindingClass.OK);
    assertThat(findingClass(five.read("flushing", "\"minutes\": \"0 min\"")))
        .isEqualTo(FindingClass.TIMELY);
    var twenty = OUTBOARD.makersLimit("flushing", "\"lowest\": \"20 min\"");
    assertThat(findingClass(twenty.read("flushing", "\"minutes\": \"15 min\"")))
        .isEqualTo(FindingClass.ADVICE);
  }

  @Test
  void a_flush_port_without_its_seal_costs_cooling_under_way() {
    var look = outcome(OUTBOARD.say("flush-port-seal", "missing"));
    assertThat(look.findingClass()).isEqualTo(FindingClass.BEFORE_USE);
    assertThat(look.saying().means()).contains("costs cooling under way");
  }

  @Test
  void an_engine_far_above_its_makers_band_is_still_close_to_its_alarm() {
    var look =
        OUTBOARD
            .makersLimit("running-temperature", "\"highest\": \"75 °C\"")
            .read("running-temperature", "\"temperature\": \"92 °C\"");
    assertThat(outcome(look).name()).isEqualTo("near-alarm");
  }
}

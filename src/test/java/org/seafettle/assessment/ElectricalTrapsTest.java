package org.seafettle.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.seafettle.assessment.OneLook.CATALOGUE;
import static org.seafettle.assessment.OneLook.aboard;
import static org.seafettle.assessment.OneLook.findingClass;
import static org.seafettle.assessment.OneLook.guidance;
import static org.seafettle.assessment.OneLook.number;
import static org.seafettle.assessment.OneLook.outcome;
import static org.seafettle.assessment.OneLook.unseen;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.seafettle.catalogue.FindingClass;
import org.seafettle.catalogue.Reason;
import org.seafettle.problem.Refused;

/** Where a survey of the electrics goes wrong, and what the trade knows of it. */
class ElectricalTrapsTest {

  private static final OneLook OUTBOARD = aboard("outboard-4-stroke");
  private static final OneLook LITHIUM = OUTBOARD.battery("\"chemistry\": \"lfp\"");
  private static final OneLook UNKNOWN = OUTBOARD.battery("\"capacity\": \"90 Ah\"");
  private static final OneLook TWENTY_FOUR =
      OUTBOARD.battery("\"chemistry\": \"flooded\", \"nominal\": \"24 V\"");

  private static String volts(String volts) {
    return "\"voltage\": \"" + volts + "\", \"temperature\": \"20 Cel\"";
  }

  private static String rested(String volts, String hours) {
    return volts(volts) + ", \"rested\": \"" + hours + "\"";
  }

  @Test
  void the_voltage_table_of_lead_is_never_applied_to_lithium() {
    assertThatThrownBy(() -> LITHIUM.read("battery-rest-voltage", rested("12.4 V", "8 h")))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("does not apply");
  }

  @ParameterizedTest
  @ValueSource(strings = {"battery-load-test", "battery-cranking-ratio", "battery-cell-gravity"})
  void load_test_and_gravity_of_lead_are_never_applied_to_lithium(String check) {
    assertThatThrownBy(() -> LITHIUM.read(check, volts("9.8 V")))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("does not apply");
  }

  @Test
  void cranking_on_lithium_is_not_held_against_the_load_test_of_lead() {
    var look = LITHIUM.read("cranking-voltage", volts("9.5 V"));
    assertThat(unseen(look).text()).isEqualTo("lead-limits");
  }

  @ParameterizedTest
  @ValueSource(strings = {"battery-load-test", "cranking-voltage"})
  void no_limit_of_lead_is_applied_while_nobody_knows_the_chemistry(String check) {
    var look = UNKNOWN.read(check, volts("9.8 V"));
    assertThat(unseen(look))
        .isEqualTo(new Reason(Reason.Kind.READING_MISSING, "battery-chemistry"));
  }

  @Test
  void no_charge_is_read_from_a_voltage_while_nobody_knows_the_chemistry() {
    var look = UNKNOWN.read("battery-rest-voltage", rested("12.6 V", "8 h"));
    assertThat(unseen(look).kind()).isEqualTo(Reason.Kind.READING_MISSING);
  }

  @Test
  void a_24_volt_bank_is_two_of_12_volts() {
    var halves = TWENTY_FOUR.read("battery-rest-voltage", rested("24.8 V", "8 h"));
    assertThat(number(halves)).isCloseTo(75, within(1e-6));
    assertThat(number(TWENTY_FOUR.read("charging-voltage", "\"voltage\": \"28.4 V\"")))
        .isCloseTo(14.2, within(1e-9));
    assertThat(number(TWENTY_FOUR.read("battery-load-test", volts("19.2 V"))))
        .isCloseTo(0, within(1e-9));
  }

  @Test
  void a_drop_is_judged_as_a_share_of_12_or_of_24_volts() {
    assertThat(number(OUTBOARD.read("critical-circuit-drop", "\"lost\": \"0.6 V\"")))
        .isCloseTo(5, within(1e-9));
    assertThat(number(TWENTY_FOUR.read("critical-circuit-drop", "\"lost\": \"0.6 V\"")))
        .isCloseTo(2.5, within(1e-9));
  }

  @Test
  void a_voltage_after_less_than_an_hour_of_rest_tells_no_charge() {
    var look = OUTBOARD.read("battery-rest-voltage", rested("12.7 V", "0.5 h"));
    assertThat(unseen(look).text()).isEqualTo("not-rested");
  }

  @Test
  void a_voltage_after_one_to_six_hours_of_rest_is_right_within_a_tenth_of_a_volt_only() {
    assertThat(OUTBOARD.read("battery-rest-voltage", rested("12.47 V", "3 h")).tooCloseToCall())
        .isTrue();
    assertThat(OUTBOARD.read("battery-rest-voltage", rested("12.47 V", "6 h")).tooCloseToCall())
        .isFalse();
  }

  @Test
  void a_resting_voltage_is_not_corrected_for_temperature() {
    var cold = "\"voltage\": \"12.3 V\", \"temperature\": \"2 Cel\", \"rested\": \"8 h\"";
    var warm = "\"voltage\": \"12.3 V\", \"temperature\": \"38 Cel\", \"rested\": \"8 h\"";
    assertThat(number(OUTBOARD.read("battery-rest-voltage", cold)))
        .isEqualTo(number(OUTBOARD.read("battery-rest-voltage", warm)));
  }

  @Test
  void a_frozen_battery_is_not_read_by_its_voltage() {
    var look =
        OUTBOARD.read(
            "battery-rest-voltage",
            "\"voltage\": \"12.6 V\", \"temperature\": \"-8 Cel\", \"rested\": \"8 h\"");
    assertThat(unseen(look).kind()).isEqualTo(Reason.Kind.CONDITION_NOT_MET);
  }

  @Test
  void amperes_of_the_warm_scale_are_not_taken_for_those_of_the_cold_one() {
    var asMarine = OUTBOARD.read("battery-cranking-ratio", "\"measured-as-mca\": \"450 A\"");
    assertThat(number(asMarine)).isCloseTo(0.693, within(1e-9));
    assertThat(findingClass(asMarine)).isEqualTo(FindingClass.TIMELY);
    assertThat(guidance("battery-cranking-ratio")).contains("on that same scale");
  }

  @Test
  void a_load_test_without_a_word_on_its_charge_is_less_certain() {
    var bare = "\"readings\": {" + volts("9.9 V") + "}";
    var charged = bare + ", \"conditions\": [\"three-quarters-charged\"]";
    assertThat(OUTBOARD.result("battery-load-test", bare).tooCloseToCall()).isTrue();
    assertThat(OUTBOARD.result("battery-load-test", charged).tooCloseToCall()).isFalse();
  }

  @Test
  void a_deep_cycle_battery_is_full_at_a_lower_gravity_than_a_starting_one() {
    var cells = "\"gravity\": [\"1.240\", \"1.245\"], \"temperature\": \"80 °F\"";
    assertThat(findingClass(OUTBOARD.read("battery-cell-gravity", cells)))
        .isEqualTo(FindingClass.TIMELY);
    assertThat(findingClass(OUTBOARD.read("battery-cell-gravity", cells + ", \"full\": \"1.265\"")))
        .isEqualTo(FindingClass.OK);
  }

  @Test
  void acid_freezes_by_its_own_gravity_whatever_the_maker_calls_full() {
    var look =
        OUTBOARD.read(
            "battery-freezing-margin",
            "\"gravity\": [\"1.150\", \"1.160\"], \"temperature\": \"80 °F\"");
    assertThat(number(look)).isCloseTo(0, within(1e-6));
  }

  @ParameterizedTest
  @ValueSource(strings = {"us-electrical-law", "us-fuel-system-law", "us-ignition-law"})
  void law_on_inboards_is_a_benchmark_on_an_outboard_boat_and_never_a_violation(String law) {
    var survey = OUTBOARD.survey();
    var there =
        CATALOGUE.checks().stream()
            .flatMap(
                c ->
                    survey
                        .components()
                        .filter(on -> on.kind() == c.on() && c.scope().covers(survey, on))
                        .flatMap(
                            on ->
                                c.outcomes().stream()
                                    .filter(o -> o.citation().source().id().equals(law))
                                    .filter(
                                        o ->
                                            c.outcome(o.name(), survey, on)
                                                .equals(java.util.Optional.of(o)))))
            .toList();
    assertThat(there)
        .isNotEmpty()
        .allSatisfy(
            o -> {
              assertThat(o.citation().source().title()).contains("a benchmark for all others");
              assertThat(o.advice().filter(a -> a.requiredByLaw())).as(o.name()).isEmpty();
            });
    assertThat(there)
        .allSatisfy(
            o ->
                assertThat(o.saying().observed() + o.saying().means())
                    .doesNotContainIgnoringCase("violat"));
  }

  @Test
  void what_the_law_wants_of_a_battery_on_a_sterndrive_boat_is_said_to_be_law() {
    var bound = aboard("sterndrive-gasoline").say("battery-secured", "loose");
    assertThat(outcome(bound).advice().orElseThrow().requiredByLaw()).isTrue();
    assertThat(outcome(OUTBOARD.say("battery-secured", "loose")).advice().orElseThrow())
        .satisfies(a -> assertThat(a.requiredByLaw()).isFalse());
  }

  @Test
  void a_battery_and_any_other_source_have_their_fuses_at_different_distances() {
    assertThat(findingClass(OUTBOARD.read("fuse-distance", "\"distance\": \"60 in\"")))
        .isEqualTo(FindingClass.MONITOR);
    assertThat(findingClass(OUTBOARD.read("fuse-distance", "\"distance\": \"80 in\"")))
        .isEqualTo(FindingClass.BEFORE_USE);
  }

  @Test
  void a_magnitude_as_a_manual_prints_it_is_no_potential() {
    assertThatThrownBy(() -> OUTBOARD.read("drive-potential", "\"potential\": \"950 mV\""))
        .isInstanceOf(Refused.class);
    assertThat(findingClass(OUTBOARD.read("drive-potential", "\"potential\": \"-950 mV\"")))
        .isEqualTo(FindingClass.OK);
  }

  @Test
  void too_much_protection_harms_aluminium_as_too_little_does() {
    assertThat(findingClass(OUTBOARD.read("drive-potential", "\"potential\": \"-1150 mV\"")))
        .isEqualTo(FindingClass.TIMELY);
  }

  @Test
  void a_crimp_in_service_is_never_pulled() {
    assertThat(guidance("crimp-pull")).contains("never pull at a circuit in service");
  }

  @Test
  void an_inboard_that_only_cranks_keeps_its_raw_water_shut() {
    assertThat(guidance("cranking-voltage")).contains("raw-water seacock shut").contains("fires");
    assertThat(guidance("starter-voltage")).contains("raw-water seacock shut");
    var find = outcome(OUTBOARD.read("cranking-voltage", volts("8 V"))).advice().orElseThrow();
    assertThat(find.action().cautions()).anyMatch(c -> c.text().contains("raw-water seacock"));
  }

  @Test
  void a_wire_in_an_engine_space_or_a_bundle_carries_less() {
    var wire = "\"current\": \"54 A\", \"gauge\": \"10\", \"insulation\": \"105 Cel\"";
    assertThat(number(OUTBOARD.read("wire-load", wire + ", \"in-engine-space\": \"0 m\"")))
        .isCloseTo(0.9, within(1e-9));
    assertThat(number(OUTBOARD.read("wire-load", wire + ", \"in-engine-space\": \"2 m\"")))
        .isCloseTo(54 / 51.0, within(1e-9));
    var bundle = ", \"in-engine-space\": \"2 m\", \"bundled\": \"3\"";
    assertThat(number(OUTBOARD.read("wire-load", wire + bundle)))
        .isCloseTo(54 / 51.0 / 0.7, within(1e-9));
  }

  @Test
  void clamps_are_tight_clean_and_protected_at_the_battery_and_at_the_engine() {
    assertThat(outcome(OUTBOARD.say("starting-terminals", "clean-and-tight")).saying().observed())
        .contains("tight, clean and protected at both ends");
    assertThat(guidance("starting-terminals")).contains("both ends").contains("engine block");
  }

  @Test
  void cable_ends_in_salt_water_are_renewed_every_two_years_and_that_is_an_advice() {
    var look = OUTBOARD.result("cable-ends", "\"last\": {\"date\": \"2023-05-01\"}");
    assertThat(findingClass(look)).isEqualTo(FindingClass.ADVICE);
    assertThat(outcome(look).advice().orElseThrow().action().does()).contains("Cut the cable back");
  }

  @Test
  void a_battery_far_below_its_makers_charging_window_is_hardly_charged() {
    var look =
        OUTBOARD
            .makersLimit("charging-voltage", "\"lowest\": \"13.8 V\", \"highest\": \"14.6 V\"")
            .read("charging-voltage", "\"voltage\": \"12.4 V\"");
    assertThat(outcome(look).name()).isEqualTo("hardly-charging");
  }

  @Test
  void the_age_of_a_battery_follows_from_the_year_in_which_it_was_fitted() {
    var fitted = OUTBOARD.battery("\"chemistry\": \"agm\", \"installed\": 2019");
    var look =
        fitted.assess("{\"check\": \"battery-age\"}").results().stream()
            .filter(r -> r.check().id().equals("battery-age"))
            .findFirst()
            .orElseThrow();
    assertThat(number(look)).isEqualTo(7);
    assertThat(findingClass(look)).isEqualTo(FindingClass.TIMELY);
  }
}

package org.seafettle.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.seafettle.assessment.Surveys.assess;
import static org.seafettle.assessment.Surveys.level;
import static org.seafettle.assessment.Surveys.result;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.seafettle.assessment.EngineGrade.SubsystemGrade;
import org.seafettle.catalogue.FindingClass;
import org.seafettle.catalogue.Reason;
import org.seafettle.catalogue.StopOrder;
import org.seafettle.catalogue.Subsystem;
import org.seafettle.formula.conformity.Verdict;

/** What becomes of a survey. */
class AssessorTest {

  private static final String MILKY =
      "{\"check\": \"oil-appearance\", \"on\": \"port\", \"is\": \"milky\"}";

  private static SubsystemGrade grade(Assessment assessment, String engine, Subsystem subsystem) {
    return assessment.engines().stream()
        .filter(e -> e.engine().id().equals(engine))
        .flatMap(e -> e.subsystems().stream())
        .filter(s -> s.subsystem() == subsystem)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void what_the_survey_does_not_mention_counts_as_not_recorded_and_never_as_good() {
    var assessment = assess();
    var oil = result(assessment, "oil-level", "port");
    assertThat(oil.sighting()).isEqualTo(new Sighting.Unseen(Reason.of(Reason.Kind.NOT_RECORDED)));
    assertThat(assessment.verdict().readiness())
        .isEqualTo(org.seafettle.assessment.Verdict.Readiness.NOT_ENOUGH_SEEN);
    assertThat(grade(assessment, "port", Subsystem.OIL).grade().graded()).isFalse();
    assertThat(grade(assessment, "port", Subsystem.OIL).couldHide()).isPresent();
  }

  @Test
  void a_battery_that_was_not_recorded_counts_as_not_seen_for_its_engine() {
    var assessment = assess();
    assertThat(result(assessment, "battery-case", "starboard").sighting())
        .isEqualTo(new Sighting.Unseen(Reason.of(Reason.Kind.COMPONENT_NOT_RECORDED)));
    assertThat(result(assessment, "battery-case", "start-port").sighting())
        .isEqualTo(new Sighting.Unseen(Reason.of(Reason.Kind.NOT_RECORDED)));
  }

  @Test
  void milky_oil_stops_the_engine_it_was_seen_on_and_not_the_other() {
    var assessment = assess(MILKY);
    assertThat(assessment.verdict().stops())
        .singleElement()
        .satisfies(
            stop -> {
              assertThat(stop.order()).isEqualTo(StopOrder.DO_NOT_START);
              assertThat(stop.because().component().id()).isEqualTo("port");
            });
    assertThat(grade(assessment, "port", Subsystem.OIL).grade().high()).isEqualTo(4);
    assertThat(grade(assessment, "starboard", Subsystem.OIL).grade().high()).isEqualTo(100);
    assertThat(assessment.engines().get(0).decidedBy()).isEqualTo(Subsystem.OIL);
  }

  @Test
  void findings_are_numbered_gravest_first() {
    var assessment = assess(level("port", "1.1"), MILKY);
    assertThat(assessment.findings())
        .extracting(r -> r.check().id())
        .containsExactly("oil-appearance", "oil-level");
    assertThat(assessment.findings()).extracting(r -> r.number().getAsInt()).containsExactly(1, 2);
  }

  @Test
  void the_ledger_adds_up_to_the_index() {
    var oil = grade(assess(level("port", "1.2"), MILKY), "port", Subsystem.OIL);
    double taken = oil.ledger().stream().mapToDouble(EngineGrade.LedgerLine::taken).sum();
    assertThat(oil.ledger()).hasSize(2);
    assertThat(oil.grade().high()).isEqualTo(100 - Math.min(100, taken));
    assertThat(oil.ledger()).extracting(EngineGrade.LedgerLine::weight).containsExactly(1.0, 0.5);
  }

  @Test
  void a_level_exactly_at_the_upper_mark_is_still_between_the_marks() {
    assertThat(result(assess(level("port", "1.0")), "oil-level", "port").counts())
        .isEqualTo(FindingClass.OK);
    assertThat(result(assess(level("port", "1.001")), "oil-level", "port").counts())
        .isEqualTo(FindingClass.MONITOR);
  }

  @Test
  void a_reading_within_its_uncertainty_of_a_limit_is_too_close_to_call() {
    var assessment = assess(level("port", "1.02 ± 0.05"));
    var measured = result(assessment, "oil-level", "port").seen().orElseThrow().measured();
    assertThat(measured.orElseThrow().tooCloseToCall()).isTrue();
    assertThat(measured.orElseThrow().comparison().orElseThrow().verdict())
        .isEqualTo(Verdict.CONDITIONAL_FAIL);
    assertThat(grade(assessment, "port", Subsystem.OIL).grade().high()).isEqualTo(84);
    assertThat(grade(assessment, "port", Subsystem.OIL).flips())
        .singleElement()
        .extracting(EngineGrade.Flip::high)
        .isEqualTo(100.0);
  }

  @Test
  void a_level_not_read_as_the_manual_says_is_less_certain_and_no_fault() {
    var certain = assess(level("port", "0.9"));
    var unsure =
        assess(
            "{\"check\": \"oil-level\", \"on\": \"port\", \"readings\": {\"position\": \"0.9\"}}");
    assertThat(result(certain, "oil-level", "port").tooCloseToCall()).isFalse();
    assertThat(result(unsure, "oil-level", "port").tooCloseToCall()).isTrue();
    assertThat(result(unsure, "oil-level", "port").counts()).isEqualTo(FindingClass.OK);
  }

  @Test
  void a_check_that_could_not_be_done_says_why_and_leaves_its_worst_open() {
    var assessment =
        assess(
            "{\"check\": \"oil-level\", \"on\": \"port\", \"not-inspected\": \"no dipstick aboard\"}");
    var result = result(assessment, "oil-level", "port");
    assertThat(result.sighting())
        .isEqualTo(new Sighting.Unseen(new Reason(Reason.Kind.STATED, "no dipstick aboard")));
    assertThat(grade(assessment, "port", Subsystem.OIL).open()).contains(result);
  }

  @Test
  void a_tank_that_nobody_saw_can_hide_less_on_a_diesel_boat_than_on_one_of_gasoline() {
    var tank = OneLook.check("fuel-tank-condition");
    var diesel = OneLook.aboard("inboard-diesel").survey();
    var gasoline = OneLook.aboard("inboard-gasoline").survey();
    assertThat(tank.worst(diesel, diesel.boat()).findingClass()).isEqualTo(FindingClass.BEFORE_USE);
    assertThat(tank.worst(gasoline, gasoline.boat()).findingClass()).isEqualTo(FindingClass.STOP);
  }

  @Test
  void a_check_that_does_not_apply_takes_no_part_in_the_grade() {
    var assessment =
        assess(
            "{\"check\": \"oil-level\", \"on\": \"port\", \"not-applicable\": \"no dipstick on this model\"}");
    assertThat(grade(assessment, "port", Subsystem.OIL).open())
        .extracting(r -> r.check().id())
        .doesNotContain("oil-level");
  }

  @Test
  void a_check_seen_in_part_keeps_what_was_found_and_leaves_the_rest_open() {
    var assessment =
        assess(
            "{\"check\": \"fuel-hose-condition\", \"on\": \"boat\", \"is\": \"sound\", \"partly\": \"behind the tank\"}");
    var result = result(assessment, "fuel-hose-condition", "boat");
    assertThat(result.leavesOpen()).isTrue();
    assertThat(result.counts()).isEqualTo(FindingClass.OK);
  }

  @Test
  void what_was_put_right_on_the_spot_is_told_and_no_longer_counts() {
    var assessment =
        assess(
            "{\"check\": \"oil-level\", \"on\": \"port\", \"readings\": {\"position\": \"0.1\"},"
                + " \"done\": \"topped up\"}");
    var result = result(assessment, "oil-level", "port");
    assertThat(result.reports()).isTrue();
    assertThat(result.seen().orElseThrow().found()).isEqualTo(FindingClass.MONITOR);
    assertThat(result.counts()).isEqualTo(FindingClass.OK);
    assertThat(assessment.plan().tasks()).isEmpty();
  }

  @Test
  void the_makers_own_interval_beats_the_catalogues() {
    var last =
        "{\"check\": \"engine-oil-change\", \"on\": \"port\","
            + " \"last\": {\"date\": \"2026-06-01\", \"hours\": \"530 h\"}}";
    var limit =
        ", \"limits\": [{\"check\": \"engine-oil-change\", \"hours\": \"50 h\", \"months\": \"12 mo\","
            + " \"source\": \"engine maker's manual, p. 40\"}]";
    var general = assess(Surveys.of("pre-purchase", "", last, ""));
    var makers = assess(Surveys.of("pre-purchase", limit, last, ""));
    assertThat(result(general, "engine-oil-change", "port").counts()).isEqualTo(FindingClass.OK);
    assertThat(result(makers, "engine-oil-change", "port").counts()).isEqualTo(FindingClass.TIMELY);
    assertThat(
            result(makers, "engine-oil-change", "port")
                .seen()
                .flatMap(Sighting.Seen::measured)
                .orElseThrow()
                .measure()
                .maker())
        .isPresent();
  }

  @Test
  void without_hours_an_interval_is_judged_by_the_calendar_alone_and_counts_as_seen_in_part() {
    var assessment =
        assess(
            "{\"check\": \"engine-oil-change\", \"on\": \"port\","
                + " \"last\": {\"date\": \"2026-06-01\"}}");
    var result = result(assessment, "engine-oil-change", "port");
    assertThat(result.counts()).isEqualTo(FindingClass.OK);
    assertThat(result.leavesOpen()).isTrue();
  }

  @Test
  void the_hours_since_the_last_change_are_shown_to_a_tenth() {
    var last =
        "{\"check\": \"engine-oil-change\", \"on\": \"port\","
            + " \"last\": {\"date\": \"2026-06-01\", \"hours\": \"566.67 h\"}}";
    var measured =
        result(assess(last), "engine-oil-change", "port").seen().orElseThrow().measured();
    assertThat(measured.orElseThrow().measure().shown())
        .extracting(s -> s.name() + " " + s.quantity().written())
        .containsExactly(
            "months-since 4.0 mo",
            "interval-months 12.0 mo",
            "hours-since 33.3 h",
            "interval-hours 100.0 h");
  }

  @Test
  void a_battery_that_has_not_rested_is_not_judged_by_its_voltage() {
    var assessment =
        assess(
            "{\"check\": \"battery-rest-voltage\", \"on\": \"start-port\", \"readings\":"
                + " {\"voltage\": \"11.9 V\", \"temperature\": \"15 Cel\", \"rested\": \"0.5 h\"}}");
    assertThat(result(assessment, "battery-rest-voltage", "start-port").sighting())
        .isInstanceOfSatisfying(
            Sighting.Unseen.class,
            unseen -> assertThat(unseen.reason().kind()).isEqualTo(Reason.Kind.CONDITION_NOT_MET));
  }

  @Test
  void a_task_costs_what_the_price_list_says_and_names_what_it_does_not_price() {
    var prices =
        ", \"prices\": {\"currency\": \"EUR\", \"labour\": 60, \"items\": {\"engine-oil\": 40}}";
    var assessment = assess(Surveys.of("pre-purchase", "", level("port", "0.1"), prices));
    var cost = assessment.plan().tasks().get(0).cost().orElseThrow();
    var hours = assessment.plan().tasks().get(0).action().hours().orElseThrow();
    assertThat(cost.least())
        .isEqualByComparingTo(new BigDecimal("40").add(BigDecimal.valueOf(60 * hours.least())));
    assertThat(cost.most())
        .isEqualByComparingTo(new BigDecimal("40").add(BigDecimal.valueOf(60 * hours.most())));
    var none = assess(level("port", "0.1"));
    assertThat(none.plan().tasks().get(0).cost()).isEmpty();
  }

  @Test
  void a_task_says_what_settling_it_does_to_the_index() {
    var assessment = assess(level("port", "1.1"), MILKY);
    var first = assessment.plan().tasks().get(0);
    assertThat(first.gravest()).isEqualTo(FindingClass.STOP);
    assertThat(first.gain().from()).isEqualTo(0);
    assertThat(first.gain().to()).isEqualTo(84);
  }

  @Test
  void the_most_telling_look_not_taken_comes_first() {
    var looks = assess().plan().looks();
    assertThat(looks).isNotEmpty();
    assertThat(looks)
        .isSortedAccordingTo(
            java.util.Comparator.comparingDouble(NextLook::raisesLowBy).reversed());
  }

  @Test
  void an_optional_check_that_was_not_done_is_only_named_as_a_further_test() {
    var assessment = assess();
    assertThat(assessment.plan().furtherTests()).extracting(c -> c.id()).contains("flushing");
    assertThat(assessment.results()).extracting(r -> r.check().id()).doesNotContain("flushing");
  }
}

package org.seafettle.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.seafettle.assessment.Surveys.finding;
import static org.seafettle.assessment.Surveys.level;
import static org.seafettle.assessment.Surveys.says;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.seafettle.assessment.Verdict.Readiness;
import org.seafettle.catalogue.Catalogue;
import org.seafettle.catalogue.Check;
import org.seafettle.catalogue.FindingClass;
import org.seafettle.catalogue.Reason;
import org.seafettle.catalogue.StopOrder;
import org.seafettle.catalogue.Subsystem;
import org.seafettle.json.CatalogueReader;
import org.seafettle.survey.Survey;

/** What a survey leaves to be done and to be looked at, with no more checks than the case needs. */
class PlanTest {

  private static final Catalogue CATALOGUE = CatalogueReader.supplied();

  private static final String IN_ORDER = level("port", "0.5") + "," + level("starboard", "0.5");

  private static final String PUMP =
      ", \"pumps\": [{\"id\": \"bilge\", \"rated\": \"500 gal/h\", \"fed-by\": \"start-port\"}]";

  private static Assessment assess(String findings, String more, String... checks) {
    return new Assessor(only(checks)).assess(survey(findings, more), List.of());
  }

  private static Survey survey(String findings, String more) {
    return Surveys.of("pre-purchase", "", findings, more);
  }

  private static Catalogue only(String... checks) {
    return new Catalogue(
        CATALOGUE.version(),
        CATALOGUE.digest(),
        Arrays.stream(checks).map(id -> CATALOGUE.check(id).orElseThrow()).toList(),
        List.of(),
        CATALOGUE.sources());
  }

  private static String changedAt(String on, String hours) {
    return finding(
        "engine-oil-change",
        on,
        "\"last\": {\"date\": \"2026-06-01\", \"hours\": \"%s h\"}",
        hours);
  }

  private static String prices(String fields) {
    return ", \"prices\": {\"currency\": \"EUR\", " + fields + "}";
  }

  @Test
  void among_looks_that_could_hide_as_much_what_endangers_people_is_looked_at_first() {
    var looks = Surveys.assess().plan().looks();
    for (int i = 1; i < looks.size(); i++) {
      var before = looks.get(i - 1);
      var after = looks.get(i);
      boolean alike =
          before.raisesLowBy() == after.raisesLowBy()
              && before.result().worst().findingClass() == after.result().worst().findingClass();
      if (alike) {
        assertThat(StopOrder.place(before.result().worst().stop()))
            .isLessThanOrEqualTo(StopOrder.place(after.result().worst().stop()));
      }
    }
    assertThat(looks.get(0).result().worst().stop()).contains(StopOrder.DO_NOT_GO_BELOW);
  }

  @Test
  void a_boat_on_which_everything_expected_was_seen_and_in_order_is_ready() {
    var verdict = assess(IN_ORDER, "", "oil-level").verdict();
    assertThat(verdict.readiness()).isEqualTo(Readiness.READY);
    assertThat(verdict.stops()).isEmpty();
  }

  @Test
  void a_boat_on_which_little_was_not_seen_is_ready_as_far_as_seen() {
    var golden =
        says("oil-appearance", "port", "golden")
            + ","
            + says("oil-appearance", "starboard", "golden");
    var assessment =
        assess(IN_ORDER + "," + golden, "", "oil-level", "oil-appearance", "engine-oil-change");
    assertThat(assessment.verdict().readiness()).isEqualTo(Readiness.READY_AS_FAR_AS_SEEN);
  }

  @Test
  void a_boat_of_which_too_little_was_seen_is_not_called_ready() {
    assertThat(assess(level("port", "0.5"), "", "oil-level").verdict().readiness())
        .isEqualTo(Readiness.NOT_ENOUGH_SEEN);
  }

  @Test
  void the_verdict_counts_what_is_open_by_its_class() {
    var milky = says("oil-appearance", "port", "milky");
    var findings = milky + "," + level("port", "0.1") + "," + level("starboard", "0.1");
    var counts = assess(findings, "", "oil-level", "oil-appearance").verdict().counts();
    assertThat(counts.get(FindingClass.STOP)).isEqualTo(1);
    assertThat(counts.get(FindingClass.MONITOR)).isEqualTo(2);
    assertThat(counts.get(FindingClass.BEFORE_USE)).isZero();
  }

  @Test
  void what_was_a_stop_last_year_is_named_before_the_new_one() {
    var then =
        Surveys.of(
            "pre-purchase", "", says("oil-appearance", "starboard", "milky"), "", "2025-10-17");
    var now =
        survey(
            says("oil-appearance", "port", "milky")
                + ","
                + says("oil-appearance", "starboard", "milky"),
            "");
    var stops = new Assessor(only("oil-appearance")).assess(now, List.of(then)).verdict().stops();
    assertThat(stops)
        .extracting(s -> s.because().component().id())
        .containsExactly("starboard", "port");
  }

  @Test
  void a_look_is_worth_what_it_can_free_the_index_from() {
    assertThat(assess("", "", "oil-level").plan().looks())
        .extracting(NextLook::raisesLowBy)
        .containsExactly(96.0, 96.0);
    assertThat(assess("", "", "oil-level", "oil-appearance").plan().looks())
        .extracting(NextLook::raisesLowBy)
        .containsExactly(4.0, 4.0, 4.0, 4.0);
    assertThat(assess("", "", "bilge-water").plan().looks())
        .extracting(NextLook::raisesLowBy)
        .containsExactly(96.0);
  }

  @Test
  void a_look_that_was_taken_is_not_asked_for_again() {
    assertThat(assess(level("port", "0.5"), "", "oil-level").plan().looks())
        .extracting(n -> n.result().component().id())
        .containsExactly("starboard");
  }

  @Test
  void of_two_looks_that_are_worth_the_same_the_one_for_the_graver_comes_first() {
    var looks = assess("", "", "engine-oil-change", "oil-appearance", "oil-level").plan().looks();
    assertThat(looks)
        .extracting(n -> n.result().worst().findingClass())
        .isSortedAccordingTo(java.util.Comparator.reverseOrder());
    assertThat(looks).hasSize(6);
  }

  @Test
  void nobody_is_asked_for_the_strainer_of_an_outboard() {
    var outboards = Surveys.of("season-end", "", "", "");
    assertThat(new Assessor(only("raw-water-strainer")).assess(outboards, List.of()).results())
        .isEmpty();
  }

  @Test
  void an_engine_whose_battery_was_not_recorded_stands_in_for_it_and_the_other_does_not() {
    assertThat(assess("", "", "battery-case").results())
        .extracting(r -> r.component().id())
        .containsExactly("start-port", "starboard");
  }

  @Test
  void a_boat_without_a_recorded_pump_stands_in_for_it() {
    assertThat(assess("", "", "float-switch").results())
        .singleElement()
        .satisfies(
            r -> {
              assertThat(r.component().id()).isEqualTo("boat");
              assertThat(r.sighting())
                  .isEqualTo(new Sighting.Unseen(Reason.of(Reason.Kind.COMPONENT_NOT_RECORDED)));
            });
    assertThat(assess("", PUMP, "float-switch").results())
        .extracting(r -> r.component().id())
        .containsExactly("bilge");
  }

  @Test
  void further_tests_are_those_that_fit_the_boat_and_were_neither_expected_nor_done() {
    var checks = new String[] {"oil-level", "flushing", "pump-flow", "diesel-growth"};
    assertThat(assess("", "", checks).plan().furtherTests())
        .extracting(Check::id)
        .containsExactly("flushing");
    assertThat(assess("", PUMP, checks).plan().furtherTests())
        .extracting(Check::id)
        .containsExactly("flushing", "pump-flow");
    var flushed = says("flushing", "port", "never-flushed");
    assertThat(assess(flushed, "", checks).plan().furtherTests()).isEmpty();
  }

  @Test
  void a_part_without_a_price_is_named_and_so_is_the_work_without_a_rate() {
    var low = says("oil-appearance", "port", "milky");
    var cost =
        assess(low, prices("\"items\": {\"engine-oil\": 40}"), "oil-appearance")
            .plan()
            .tasks()
            .get(0)
            .cost()
            .orElseThrow();
    assertThat(cost.unpriced()).containsExactly("oil-filter", Task.LABOUR);
    assertThat(cost.least()).isEqualByComparingTo(new BigDecimal("40"));
    assertThat(cost.most()).isEqualByComparingTo(new BigDecimal("40"));
  }

  @Test
  void with_a_rate_for_the_work_no_work_is_unpriced() {
    var task =
        assess(says("oil-appearance", "port", "milky"), prices("\"labour\": 60"), "oil-appearance")
            .plan()
            .tasks()
            .get(0);
    var cost = task.cost().orElseThrow();
    assertThat(cost.unpriced()).containsExactly("engine-oil", "oil-filter");
    assertThat(cost.least())
        .isEqualByComparingTo(BigDecimal.valueOf(60 * task.action().hours().orElseThrow().least()));
  }

  @Test
  void a_price_list_that_prices_nothing_of_a_task_gives_no_cost() {
    var tasks =
        assess(
                says("oil-appearance", "port", "milky"),
                prices("\"items\": {\"impeller\": 40}"),
                "oil-appearance")
            .plan()
            .tasks();
    assertThat(tasks.get(0).cost()).isEmpty();
  }

  @Test
  void of_two_tasks_that_gain_the_same_the_cheaper_comes_first() {
    var findings = level("port", "1.7") + "," + changedAt("starboard", "290");
    var priced = assess(findings, prices("\"labour\": 60"), "oil-level", "engine-oil-change");
    var tasks = priced.plan().tasks();
    assertThat(tasks).extracting(Task::gravest).containsOnly(FindingClass.BEFORE_USE);
    assertThat(tasks).extracting(t -> t.gain().points()).containsExactly(64.0, 64.0);
    assertThat(tasks).extracting(t -> t.component().id()).containsExactly("starboard", "port");
  }

  @Test
  void what_is_due_at_once_comes_first_and_people_before_the_engine() {
    var findings =
        says("oil-appearance", "port", "milky")
            + ","
            + says("fuel-leak-or-vapour", "boat", "smell")
            + ","
            + says("carbon-monoxide-alarm", "boat", "sounds-or-people-unwell");
    var checks = new String[] {"oil-appearance", "fuel-leak-or-vapour", "carbon-monoxide-alarm"};
    assertThat(assess(findings, "", checks).plan().tasks())
        .extracting(t -> t.action().id())
        .containsExactly("find-exhaust-gas", "find-fuel-leak", "find-water-in-engine-oil");
  }

  @Test
  void of_two_tasks_of_one_class_the_one_that_gains_more_comes_first() {
    var findings =
        level("port", "1.7")
            + ","
            + says("oil-appearance", "port", "milky")
            + ","
            + changedAt("starboard", "290");
    var tasks =
        assess(findings, "", "oil-level", "oil-appearance", "engine-oil-change").plan().tasks();
    assertThat(tasks)
        .extracting(t -> t.component().id() + " " + t.gain().points())
        .containsExactly("port 36.0", "starboard 64.0", "port 4.0");
  }

  @Test
  void what_is_gained_on_the_whole_boat_is_told_for_the_weakest_engine() {
    var findings =
        says("fuel-appearance", "boat", "drops")
            + ","
            + says("separator-water", "starboard", "two-layers")
            + ","
            + level("port", "0.1");
    var tasks =
        assess(findings, "", "fuel-appearance", "separator-water", "oil-level").plan().tasks();
    var sample =
        tasks.stream().filter(t -> t.component().id().equals("boat")).findFirst().orElseThrow();
    assertThat(sample.gain().from()).isEqualTo(0);
    assertThat(sample.gain().to()).isEqualTo(4);
    var topUp =
        tasks.stream().filter(t -> t.component().id().equals("port")).findFirst().orElseThrow();
    assertThat(topUp.gain().points()).isEqualTo(16);
  }

  @Test
  void what_is_known_to_be_weakest_decides_before_what_might_be_weaker() {
    var engine = assess(level("port", "0.1"), "", "oil-level", "cooling-hoses").engines().get(0);
    assertThat(engine.decidedBy()).isEqualTo(Subsystem.OIL);
  }

  @Test
  void of_what_is_well_as_far_as_seen_the_least_seen_decides() {
    var engine = assess(IN_ORDER, "", "oil-level", "cooling-hoses").engines().get(0);
    assertThat(engine.decidedBy()).isEqualTo(Subsystem.COOLING);
  }

  @Test
  void a_look_that_was_taken_on_one_engine_is_open_on_the_other() {
    assertThat(assess(level("port", "0.5"), "", "oil-level").open())
        .extracting(r -> r.component().id())
        .containsExactly("starboard");
  }
}

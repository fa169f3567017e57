package org.seafettle.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.seafettle.assessment.TwinEngines.component;
import static org.seafettle.assessment.TwinEngines.lastDone;
import static org.seafettle.assessment.TwinEngines.survey;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.seafettle.catalogue.Deadline;
import org.seafettle.survey.Survey;

/** The day behind a deadline, where there is an honest one. */
class DeadlinesTest {

  private static Optional<LocalDate> until(Deadline by, String on, Survey survey, Survey... past) {
    var deadlines = new Deadlines(survey, TwinEngines.dues(survey, past));
    return deadlines.until(by, component(survey, on));
  }

  private static Optional<LocalDate> day(String day) {
    return Optional.of(LocalDate.parse(day));
  }

  private static String oil(String on, String day) {
    return lastDone("engine-oil-change", on, "\"date\": \"" + day + "\", \"hours\": \"100 h\"");
  }

  @ParameterizedTest
  @EnumSource(names = {"BEFORE_LAUNCHING", "BEFORE_NEXT_USE", "BEFORE_NEXT_SEASON"})
  void a_boat_that_is_laid_up_has_time_until_the_eve_of_her_season(Deadline by) {
    var laidUp = survey("2026-10-17", "100 h", "100 h", "", "");
    assertThat(until(by, "port", laidUp)).isEqualTo(day("2027-04-30"));
  }

  @ParameterizedTest
  @EnumSource(names = {"BEFORE_LAUNCHING", "BEFORE_NEXT_USE"})
  void nobody_knows_the_day_on_which_a_boat_in_her_season_is_used_next(Deadline by) {
    assertThat(until(by, "port", survey("2026-07-01", "100 h", "100 h", "", ""))).isEmpty();
  }

  @Test
  void ten_hours_are_used_up_at_the_pace_of_the_engine_itself() {
    var before = survey("2025-09-27", "0 h", "0 h", "", "");
    var now =
        survey(
            "2026-09-27",
            "150 h",
            "300 h",
            oil("port", "2026-09-01") + "," + oil("starboard", "2026-09-01"),
            "");
    assertThat(until(Deadline.WITHIN_TEN_HOURS, "port", now, before)).isEqualTo(day("2027-05-10"));
    assertThat(until(Deadline.WITHIN_TEN_HOURS, "starboard", now, before))
        .isEqualTo(day("2027-05-05"));
  }

  @Test
  void the_next_service_is_the_first_thing_to_come_on_the_same_engine() {
    var impeller = lastDone("impeller-change", "port", "\"date\": \"2026-01-10\"");
    var now =
        survey(
            "2026-10-17",
            "100 h",
            "100 h",
            impeller + "," + oil("port", "2026-06-01") + "," + oil("starboard", "2026-02-01"),
            "");
    assertThat(until(Deadline.NEXT_SERVICE, "port", now)).isEqualTo(day("2027-06-01"));
    assertThat(until(Deadline.NEXT_SERVICE, "starboard", now)).isEqualTo(day("2027-02-01"));
  }

  @Test
  void what_is_due_today_is_no_service_to_come() {
    var impeller = lastDone("impeller-change", "port", "\"date\": \"2025-11-20\"");
    var today =
        survey("2026-10-17", "100 h", "100 h", impeller + "," + oil("port", "2025-10-17"), "");
    assertThat(until(Deadline.NEXT_SERVICE, "port", today)).isEqualTo(day("2027-11-20"));
  }

  @Test
  void where_a_service_is_overdue_no_later_day_is_named_for_the_next_one() {
    var impeller = lastDone("impeller-change", "port", "\"date\": \"2025-11-20\"");
    var late =
        survey("2026-10-17", "100 h", "100 h", impeller + "," + oil("port", "2025-06-01"), "");
    assertThat(until(Deadline.NEXT_SERVICE, "port", late)).isEmpty();
  }

  @Test
  void nobody_comes_aboard_because_a_battery_reaches_its_age_or_anodes_are_looked_at() {
    var age =
        "{ \"check\": \"battery-age\", \"on\": \"start\", \"readings\": { \"age\": \"4 a\" } }";
    var ends = lastDone("cable-ends", "start", "\"date\": \"2026-06-01\"");
    assertThat(until(Deadline.NEXT_SERVICE, "start", survey("2026-10-17", "1 h", "1 h", age, "")))
        .isEmpty();
    assertThat(
            until(
                Deadline.NEXT_SERVICE,
                "start",
                survey("2026-10-17", "1 h", "1 h", age + "," + ends, "")))
        .isEqualTo(day("2028-06-01"));
    var anodes =
        "{ \"check\": \"external-anodes\", \"on\": \"port\", \"readings\": { \"lost\": \"10 %\" } }";
    assertThat(until(Deadline.NEXT_SERVICE, "port", survey("2026-10-17", "1 h", "1 h", anodes, "")))
        .isEmpty();
  }
}

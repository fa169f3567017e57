package org.seafettle.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import org.seafettle.catalogue.Catalogue;
import org.seafettle.json.CatalogueReader;
import org.seafettle.json.SurveyReader;
import org.seafettle.survey.Survey;

/** What falls due when. The dates by hours are the published check values SC-DUE-02 to 04. */
class DueTest {

  private static final Catalogue CATALOGUE = CatalogueReader.supplied();

  private static final String SEASON = ", \"season\": { \"from\": \"05-01\", \"to\": \"09-30\" }";

  private static final String CHANGED_AT_150 =
      "{ \"check\": \"engine-oil-change\", \"on\": \"port\","
          + " \"last\": { \"date\": \"2025-09-30\", \"hours\": \"150 h\" } }";

  private static Survey survey(String date, String season, String hours, String findings) {
    return survey(date, season, hours, findings, "");
  }

  private static Survey survey(
      String date, String season, String hours, String findings, String work) {
    return SurveyReader.bind(json(date, season, hours, findings, work), CATALOGUE);
  }

  private static String json(
      String date, String season, String hours, String findings, String work) {
    return String.format(
        Locale.ROOT,
        """
            {
              "format": "seafettle-survey/1",
              "survey": { "id": "D-1", "purpose": "yearly-record", "date": "%s", "place": "yard"%s,
                          "by": { "name": "Ida Holm" } },
              "boat": { "name": "Sedge", "water": "salt" },
              "engines": [ { "id": "port", "type": "outboard-4-stroke", "serial": "A1",
                             "hours": "%s" } ],
              "findings": [%s],
              "work": [%s]
            }
            """,
        date,
        season,
        hours,
        findings,
        work);
  }

  private static Due due(Survey survey, List<Survey> earlier, String check) {
    return new Assessor(CATALOGUE)
        .assess(survey, earlier).plan().dues().stream()
            .filter(d -> d.result().check().id().equals(check))
            .findFirst()
            .orElseThrow();
  }

  private static Optional<LocalDate> day(String day) {
    return Optional.of(LocalDate.parse(day));
  }

  @Test
  void hours_run_out_in_the_season_only_and_at_the_pace_of_the_last_one() {
    var before = survey("2024-09-30", SEASON, "138.8 h", "");
    var now = survey("2025-09-30", SEASON, "200 h", CHANGED_AT_150);
    var due = due(now, List.of(before), "engine-oil-change");
    assertThat(due.byHours().orElseThrow().left()).isEqualTo(50);
    assertThat(due.byHours().orElseThrow().meter()).isEqualTo(250);
    assertThat(due.byHours().orElseThrow().pace().orElseThrow().hours())
        .singleElement()
        .satisfies(h -> assertThat(h).isCloseTo(61.2, within(1e-9)));
    assertThat(due.byHours().orElseThrow().fast()).isEqualTo(day("2026-09-02"));
    assertThat(due.byHours().orElseThrow().slow()).isEqualTo(day("2026-09-02"));
    assertThat(due.byCalendar()).contains(between("2026-09-30", "2026-09-30"));
    assertThat(due.next()).isEqualTo(day("2026-09-02"));
    assertThat(due.overdue()).isEmpty();
    assertThat(due.isAge()).isFalse();
  }

  @Test
  void a_busy_and_a_quiet_season_span_the_dates_and_the_calendar_may_come_first() {
    var oldest = survey("2023-09-30", SEASON, "77.6 h", "");
    var before = survey("2024-09-30", SEASON, "123.5 h", "");
    var now = survey("2025-09-30", SEASON, "200 h", CHANGED_AT_150);
    var due = due(now, List.of(before, oldest), "engine-oil-change");
    assertThat(due.byHours().orElseThrow().fast()).isEqualTo(day("2026-08-08"));
    assertThat(due.byHours().orElseThrow().slow()).isEqualTo(day("2027-05-14"));
    assertThat(due.next()).isEqualTo(day("2026-08-08"));
    assertThat(due.latest()).isEqualTo(day("2026-09-30"));
  }

  @Test
  void what_is_overrun_says_by_how_much() {
    var now = survey("2026-10-30", SEASON, "261 h", CHANGED_AT_150);
    var due = due(now, List.of(), "engine-oil-change");
    assertThat(due.overdue()).contains(new Due.Overdue(OptionalDouble.of(11), OptionalLong.of(30)));
    assertThat(due.next()).isEqualTo(day("2026-09-30"));
  }

  @Test
  void due_on_the_day_itself_is_not_yet_overdue() {
    var now = survey("2026-09-30", SEASON, "250 h", CHANGED_AT_150);
    var due = due(now, List.of(), "engine-oil-change");
    assertThat(due.overdue()).isEmpty();
    assertThat(due.next()).isEqualTo(day("2026-09-30"));
  }

  @Test
  void without_an_earlier_reading_of_the_meter_no_day_by_hours_is_told() {
    var now =
        survey("2026-07-01", SEASON, "200 h", CHANGED_AT_150.replace("2025-09-30", "2026-06-01"));
    var running = due(now, List.of(), "engine-oil-change").byHours().orElseThrow();
    assertThat(running.meter()).isEqualTo(250);
    assertThat(running.pace()).isEmpty();
    assertThat(running.fast()).isEmpty();
  }

  @Test
  void entries_of_the_service_log_tell_the_pace_too() {
    var now =
        survey(
            "2025-09-30",
            SEASON,
            "200 h",
            CHANGED_AT_150,
            "{ \"date\": \"2024-09-30\", \"on\": \"port\", \"what\": \"Oil\", \"hours\": \"138.8 h\" }");
    assertThat(due(now, List.of(), "engine-oil-change").byHours().orElseThrow().fast())
        .isEqualTo(day("2026-09-02"));
  }

  @Test
  void a_meter_that_fell_was_exchanged_and_what_it_showed_before_tells_nothing() {
    var before = survey("2024-09-30", SEASON, "900 h", "");
    var now = survey("2025-09-30", SEASON, "200 h", CHANGED_AT_150);
    assertThat(due(now, List.of(before), "engine-oil-change").byHours().orElseThrow().pace())
        .isEmpty();
  }

  @Test
  void without_a_season_the_hours_are_spread_over_the_whole_year() {
    var before = survey("2024-09-30", "", "100 h", "");
    var now = survey("2025-09-30", "", "200 h", CHANGED_AT_150);
    var running = due(now, List.of(before), "engine-oil-change").byHours().orElseThrow();
    assertThat(running.pace().orElseThrow().stated()).isFalse();
    assertThat(running.fast()).isEqualTo(day("2026-04-01"));
  }

  @Test
  void an_engine_that_lay_idle_never_uses_up_its_hours_but_the_calendar_runs_on() {
    var before = survey("2024-09-30", SEASON, "200 h", "");
    var now = survey("2025-09-30", SEASON, "200 h", CHANGED_AT_150);
    var due = due(now, List.of(before), "engine-oil-change");
    assertThat(due.byHours().orElseThrow().fast()).isEmpty();
    assertThat(due.next()).isEqualTo(day("2026-09-30"));
  }

  @Test
  void what_was_done_on_the_spot_begins_anew() {
    var changed = CHANGED_AT_150.replaceFirst("}\\s*}$", "}, \"done\": \"Oil changed.\" }");
    var now = survey("2026-10-30", SEASON, "261 h", changed);
    var due = due(now, List.of(), "engine-oil-change");
    assertThat(due.overdue()).isEmpty();
    assertThat(due.byHours().orElseThrow().meter()).isEqualTo(361);
    assertThat(due.byCalendar()).contains(between("2027-10-30", "2027-10-30"));
  }

  @Test
  void what_was_overdue_by_its_look_alone_and_was_renewed_on_the_spot_begins_anew() {
    var renewed =
        "{ \"check\": \"separator-change\", \"on\": \"port\","
            + " \"is\": \"too-long-for-wet-fuel\", \"done\": \"Element renewed.\" }";
    var due = due(survey("2026-10-30", SEASON, "261 h", renewed), List.of(), "separator-change");
    assertThat(due.byHours().orElseThrow().meter()).isEqualTo(361);
    assertThat(due.next()).isEqualTo(day("2027-10-30"));
  }

  @Test
  void an_interval_of_hours_alone_tells_nothing_of_an_engine_without_a_meter() {
    var hoursOnly =
        OneLook.aboard("outboard-4-stroke").makersLimit("engine-oil-change", "\"hours\": \"50 h\"");
    var changed =
        "{ \"check\": \"engine-oil-change\", \"on\": \"port\","
            + " \"last\": { \"date\": \"2026-06-01\" } }";
    assertThat(hoursOnly.assess(changed).plan().dues()).isEmpty();
  }

  @Test
  void an_age_in_whole_years_leaves_a_year_open() {
    var now =
        survey(
            "2026-10-17",
            SEASON,
            "200 h",
            "{ \"check\": \"fire-extinguishers\", \"readings\": { \"oldest\": \"3 a\" } }");
    var due = due(now, List.of(), "fire-extinguishers");
    assertThat(due.isAge()).isTrue();
    assertThat(due.interval().months()).hasValue(144);
    assertThat(due.byCalendar()).contains(between("2034-10-17", "2035-10-17"));
    assertThat(due.overdue()).isEmpty();
  }

  @Test
  void an_extinguisher_past_its_age_is_overdue() {
    var now =
        survey(
            "2026-10-17",
            SEASON,
            "200 h",
            "{ \"check\": \"fire-extinguishers\", \"readings\": { \"oldest\": \"14 a\" } }");
    assertThat(due(now, List.of(), "fire-extinguishers").overdue().orElseThrow().days())
        .hasValue(730);
  }

  private static String anodes(String lost, String more) {
    return "{ \"check\": \"external-anodes\", \"on\": \"port\", \"readings\": { \"lost\": \""
        + lost
        + "\" }"
        + more
        + " }";
  }

  /** Worked by hand: a fifth more in 153 days of season, a fifth to go until half is gone. */
  @Test
  void anodes_are_looked_at_after_a_year_and_their_wear_tells_when_half_is_gone() {
    var before = survey("2025-09-30", SEASON, "100 h", anodes("10 ± 1 %", ""));
    var now = survey("2026-09-30", SEASON, "200 h", anodes("30 ± 1 %", ""));
    var due = due(now, List.of(before), "external-anodes");
    assertThat(due.byCalendar()).contains(between("2027-09-30", "2027-09-30"));
    assertThat(due.byWear())
        .contains(
            new Due.Wearing(
                50, LocalDate.parse("2025-09-30"), day("2027-09-20"), day("2028-05-12")));
    assertThat(due.next()).isEqualTo(day("2027-09-20"));
  }

  @Test
  void anodes_that_were_renewed_wear_from_nothing() {
    var before =
        survey("2025-09-30", SEASON, "100 h", anodes("60 %", ", \"done\": \"Anodes renewed.\""));
    var now = survey("2026-09-30", SEASON, "200 h", anodes("30 ± 10 %", ""));
    var wear = due(now, List.of(before), "external-anodes").byWear().orElseThrow();
    assertThat(wear.fast()).isEqualTo(day("2027-07-16"));
    assertThat(wear.slow()).isEqualTo(day("2027-09-30"));
  }

  @Test
  void wear_that_may_be_none_has_a_first_day_and_no_last() {
    var before = survey("2025-09-30", SEASON, "100 h", anodes("20 ± 10 %", ""));
    var now = survey("2026-09-30", SEASON, "200 h", anodes("25 ± 10 %", ""));
    var wear = due(now, List.of(before), "external-anodes").byWear().orElseThrow();
    assertThat(wear.fast()).isPresent();
    assertThat(wear.slow()).isEmpty();
  }

  @Test
  void anodes_that_are_larger_than_last_year_were_renewed_and_nothing_tells_how_fast_they_wear() {
    var before = survey("2025-09-30", SEASON, "100 h", anodes("40 %", ""));
    var now = survey("2026-09-30", SEASON, "200 h", anodes("10 %", ""));
    assertThat(due(now, List.of(before), "external-anodes").byWear()).isEmpty();
    assertThat(due(now, List.of(), "external-anodes").byWear()).isEmpty();
  }

  @Test
  void anodes_that_have_to_be_renewed_are_work_and_not_looked_at_again() {
    var now = survey("2026-09-30", SEASON, "200 h", anodes("60 %", ""));
    var plan = new Assessor(CATALOGUE).assess(now, List.of()).plan();
    assertThat(plan.tasks()).hasSize(1);
    assertThat(plan.dues()).isEmpty();
  }

  @Test
  void an_hour_meter_that_was_set_back_is_told() {
    var before = survey("2024-09-30", SEASON, "900 h", "");
    var now = survey("2025-09-30", SEASON, "200 h", "");
    assertThat(new Assessor(CATALOGUE).assess(now, List.of(before)).history().exchanged())
        .containsExactly(
            new Exchange.SetBack(
                now.engines().get(0),
                new Meter.Point(LocalDate.parse("2024-09-30"), 900),
                new Meter.Point(LocalDate.parse("2025-09-30"), 200)));
    assertThat(new Assessor(CATALOGUE).assess(before, List.of()).history().exchanged()).isEmpty();
  }

  @Test
  void hours_that_were_rounded_when_they_were_written_down_are_no_meter_set_back() {
    var before = survey("2024-09-30", SEASON, "200.4 h", "");
    var rounded = survey("2025-09-30", SEASON, "200 h", "");
    assertThat(new Assessor(CATALOGUE).assess(rounded, List.of(before)).history().exchanged())
        .isEmpty();
    var fallen = survey("2025-09-30", SEASON, "199 h", "");
    assertThat(new Assessor(CATALOGUE).assess(fallen, List.of(before)).history().exchanged())
        .hasSize(1);
  }

  @Test
  void an_engine_with_another_serial_number_is_told_to_be_another_one() {
    var serial = json("2024-09-30", SEASON, "900 h", "", "").replace("A1", "B2");
    var before = SurveyReader.bind(serial, CATALOGUE);
    var now = survey("2025-09-30", SEASON, "200 h", "");
    assertThat(new Assessor(CATALOGUE).assess(now, List.of(before)).history().exchanged())
        .containsExactly(
            new Exchange.Renewed(
                before.engines().get(0), now.engines().get(0), LocalDate.parse("2024-09-30")));
  }

  private static final String TWELFTH_YEAR =
      "{ \"check\": \"fire-extinguishers\", \"readings\": { \"oldest\": \"11.5 a\" } }";

  @Test
  void a_task_before_next_season_is_in_time_until_the_eve_of_its_first_day() {
    assertThat(until(survey("2026-10-30", SEASON, "301 h", TWELFTH_YEAR)))
        .contains(LocalDate.parse("2027-04-30"));
    assertThat(until(survey("2027-04-30", SEASON, "301 h", TWELFTH_YEAR)))
        .contains(LocalDate.parse("2027-04-30"));
    assertThat(until(survey("2027-05-01", SEASON, "301 h", TWELFTH_YEAR)))
        .contains(LocalDate.parse("2028-04-30"));
  }

  @Test
  void without_a_season_no_day_is_made_up() {
    assertThat(until(survey("2026-10-30", "", "301 h", TWELFTH_YEAR))).isEmpty();
  }

  @Test
  void ten_hours_of_running_are_used_up_at_the_pace_of_the_busiest_season() {
    var before = survey("2025-10-30", SEASON, "148 h", "");
    var now = survey("2026-10-30", SEASON, "301 h", CHANGED_AT_150);
    assertThat(until(now, List.of(before))).contains(LocalDate.parse("2027-05-10"));
  }

  private static Optional<LocalDate> until(Survey survey) {
    return until(survey, List.of());
  }

  private static Optional<LocalDate> until(Survey survey, List<Survey> earlier) {
    return new Assessor(CATALOGUE)
        .assess(survey, earlier).plan().tasks().stream().findFirst().orElseThrow().until();
  }

  private static Due.Between between(String earliest, String latest) {
    return new Due.Between(LocalDate.parse(earliest), LocalDate.parse(latest));
  }
}

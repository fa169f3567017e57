package org.seafettle.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.seafettle.assessment.TwinEngines.lastDone;
import static org.seafettle.assessment.TwinEngines.survey;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.seafettle.survey.Survey;

/** How much an engine is used, as its meter tells. */
class PaceTest {

  private static Optional<List<Double>> hours(Survey survey, Survey... earlier) {
    return Pace.of(survey, List.of(earlier), survey.engines().get(0)).map(Pace::hours);
  }

  private static Survey autumn(String findings, String work) {
    return survey("2026-09-30", "200 h", "900 h", findings, work);
  }

  @Test
  void half_a_season_tells_the_pace_and_a_day_less_does_not() {
    var laidUp = survey("2026-04-30", "100 h", "100 h", "", "");
    assertThat(hours(survey("2026-07-14", "150 h", "150 h", "", ""), laidUp))
        .contains(List.of(100.0));
    assertThat(hours(survey("2026-07-13", "150 h", "150 h", "", ""), laidUp)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"1799 h, true", "1800 h, false", "2500 h, false"})
  void an_engine_that_ran_day_and_night_all_season_was_misread(String ran, boolean told) {
    var laidUp = survey("2026-04-30", "0 h", "0 h", "", "");
    assertThat(hours(survey("2026-07-14", ran, "0 h", "", ""), laidUp).isPresent()).isEqualTo(told);
  }

  @Test
  void a_meter_that_stood_still_tells_that_the_engine_lay_idle() {
    var before = survey("2025-09-30", "200 h", "100 h", "", "");
    assertThat(hours(autumn("", ""), before)).contains(List.of(0.0));
  }

  @Test
  void an_idle_engine_whose_hours_were_rounded_down_ran_no_less_than_nothing() {
    var before = survey("2025-09-30", "200.4 h", "100 h", "", "");
    var changed =
        lastDone("engine-oil-change", "port", "\"date\": \"2024-09-30\", \"hours\": \"150 h\"");
    assertThat(hours(autumn("", ""), before)).contains(List.of(0.0));
    var running = TwinEngines.dues(autumn(changed, ""), before).get(0).byHours().orElseThrow();
    assertThat(running.fast()).isPresent();
    assertThat(running.slow()).isEmpty();
  }

  @Test
  void one_hour_less_is_rounding_and_more_than_that_another_meter() {
    assertThat(hours(autumn("", ""), survey("2025-09-30", "201 h", "1 h", "", "")))
        .contains(List.of(0.0));
    assertThat(hours(autumn("", ""), survey("2025-09-30", "201.1 h", "1 h", "", ""))).isEmpty();
  }

  @Test
  void the_meter_as_it_stood_at_the_last_oil_change_tells_the_pace() {
    var changed =
        lastDone("engine-oil-change", "port", "\"date\": \"2025-09-30\", \"hours\": \"140 h\"");
    assertThat(hours(autumn(changed, ""))).contains(List.of(60.0));
  }

  @Test
  void what_was_done_on_the_other_engine_tells_nothing_of_this_one() {
    var changed =
        lastDone(
            "engine-oil-change", "starboard", "\"date\": \"2025-09-30\", \"hours\": \"140 h\"");
    var logged =
        "{ \"date\": \"2025-09-30\", \"on\": \"starboard\", \"what\": \"Oil\", \"hours\": \"140 h\" }";
    assertThat(hours(autumn(changed, ""))).isEmpty();
    assertThat(hours(autumn("", logged))).isEmpty();
    assertThat(hours(autumn("", logged.replace("starboard", "port")))).contains(List.of(60.0));
  }
}

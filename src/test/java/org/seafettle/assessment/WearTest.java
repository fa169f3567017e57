package org.seafettle.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.seafettle.assessment.TwinEngines.survey;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.seafettle.survey.Survey;

/** When what wears comes to its limit. The days are worked by hand for a season of 150 days. */
class WearTest {

  private static Survey on(String day, String finding) {
    return survey(day, "100 h", "100 h", finding, "");
  }

  private static String read(String check, String on, String readings) {
    return "{ \"check\": \"%s\", \"on\": \"%s\", \"readings\": { %s }"
        .formatted(check, on, readings);
  }

  private static String lost(String share) {
    return read("external-anodes", "port", "\"lost\": \"" + share + "\"") + " }";
  }

  private static String left(String share) {
    return read("internal-anodes", "port", "\"left\": \"" + share + "\"") + " }";
  }

  private static Optional<Due.Wearing> wear(Survey before, Survey now) {
    return TwinEngines.dues(now, before).stream().findFirst().orElseThrow().byWear();
  }

  private static Due.Wearing until(double limit, String since, String fast, String slow) {
    return new Due.Wearing(
        limit,
        LocalDate.parse(since),
        Optional.of(LocalDate.parse(fast)),
        Optional.of(LocalDate.parse(slow)));
  }

  @Test
  void what_wore_in_half_a_season_wears_twice_as_much_in_a_whole_one() {
    var wear = wear(on("2026-07-14", lost("10 ± 1 %")), on("2026-09-27", lost("30 ± 1 %")));
    assertThat(wear).contains(until(50, "2026-07-14", "2027-07-10", "2027-07-20"));
  }

  @Test
  void of_what_is_left_of_an_anode_less_is_worse() {
    var wear = wear(on("2025-09-27", left("90 ± 1 %")), on("2026-09-27", left("70 ± 1 %")));
    assertThat(wear).contains(until(50, "2025-09-27", "2027-09-18", "2028-05-12"));
  }

  @Test
  void of_an_anode_that_was_renewed_all_was_left() {
    var renewed = left("40 %").replaceFirst(" }$", ", \"done\": \"Renewed.\" }");
    assertThat(wear(on("2025-09-27", renewed), on("2026-09-27", left("80 ± 1 %"))))
        .contains(until(50, "2025-09-27", "2028-07-04", "2028-07-26"));
  }

  @Test
  void an_anode_of_which_just_half_is_gone_has_come_to_its_limit_today() {
    assertThat(wear(on("2025-09-27", lost("10 %")), on("2026-09-27", lost("50 %"))))
        .contains(until(50, "2025-09-27", "2026-09-27", "2026-09-27"));
    assertThat(wear(on("2025-09-27", left("90 %")), on("2026-09-27", left("50 %"))))
        .contains(until(50, "2025-09-27", "2026-09-27", "2026-09-27"));
  }

  @Test
  void an_anode_that_is_as_it_was_shows_no_wear() {
    assertThat(wear(on("2025-09-27", lost("20 %")), on("2026-09-27", lost("20 %")))).isEmpty();
    assertThat(wear(on("2025-09-27", left("80 %")), on("2026-09-27", left("80 %")))).isEmpty();
  }

  @Test
  void an_anode_that_grew_was_renewed_in_between() {
    assertThat(wear(on("2025-09-27", left("70 %")), on("2026-09-27", left("90 %")))).isEmpty();
  }

  @Test
  void an_anode_that_was_renewed_today_has_not_begun_to_wear() {
    var renewed = lost("30 %").replaceFirst(" }$", ", \"done\": \"Renewed.\" }");
    assertThat(wear(on("2025-09-27", lost("10 %")), on("2026-09-27", renewed))).isEmpty();
  }

  @Test
  void a_battery_that_turns_weaker_is_no_share_that_wears() {
    var strong =
        read("battery-load-test", "start", "\"voltage\": \"10.6 V\", \"temperature\": \"21 Cel\"");
    var weaker = strong.replace("10.6", "10.2");
    assertThat(wear(on("2025-09-27", strong + " }"), on("2026-09-27", weaker + " }"))).isEmpty();
  }
}

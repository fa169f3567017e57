package org.seafettle.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.seafettle.json.CatalogueReader;
import org.seafettle.survey.Survey;

/** What becomes of a finding from survey to survey. */
class FindingBookTest {

  private static String hose(String is) {
    return "{\"check\": \"cooling-hoses\", \"on\": \"port\", " + is + "}";
  }

  private static final String CRACKED = hose("\"is\": \"minor-cracks-or-rust\"");
  private static final String SOFT = hose("\"is\": \"soft-or-weeping\"");
  private static final String SOUND = hose("\"is\": \"sound\"");
  private static final String DAMP_BILGE = "{\"check\": \"bilge-water\", \"is\": \"damp\"}";

  /** One survey a year from 2020 on; the last is the one that is judged. */
  private static Assessment over(List<String> engines, List<String> findings) {
    var surveys = new ArrayList<Survey>();
    for (int i = 0; i < findings.size(); i++) {
      var year = Integer.toString(2020 + i);
      surveys.add(
          Surveys.of("yearly-record", engines.get(i), findings.get(i), "", year + "-10-01"));
    }
    var now = surveys.remove(surveys.size() - 1);
    // the order in which earlier surveys are named does not matter
    java.util.Collections.reverse(surveys);
    return new Assessor(CatalogueReader.supplied()).assess(now, surveys);
  }

  private static Assessment over(String... findings) {
    return over(java.util.Collections.nCopies(findings.length, ""), List.of(findings));
  }

  private static Followed.Status status(Assessment assessment, int number) {
    return assessment.history().followed().stream()
        .filter(f -> f.number() == number)
        .findFirst()
        .orElseThrow()
        .status();
  }

  private static Map<String, Integer> numbers(Assessment assessment) {
    return assessment.findings().stream()
        .collect(
            Collectors.toMap(
                r -> r.check().id() + " " + r.component().id(), r -> r.number().orElseThrow()));
  }

  @Test
  void a_first_survey_numbers_its_findings_gravest_first_and_follows_nothing() {
    var assessment = over(DAMP_BILGE + "," + SOFT);
    assertThat(numbers(assessment))
        .isEqualTo(Map.of("cooling-hoses port", 1, "bilge-water boat", 2));
    assertThat(assessment.history().followed()).isEmpty();
  }

  @Test
  void what_was_found_before_is_followed_in_the_order_of_its_numbers() {
    var low = "{\"check\": \"oil-level\", \"on\": \"port\", \"readings\": {\"position\": \"0.1\"}}";
    var milky = "{\"check\": \"oil-appearance\", \"on\": \"port\", \"is\": \"milky\"}";
    assertThat(over(low + "," + milky, "").history().followed())
        .extracting(f -> f.number() + " " + f.then().check().id())
        .containsExactly("1 oil-appearance", "2 oil-level");
  }

  @Test
  void of_two_findings_that_are_equally_grave_the_one_known_longer_is_told_first() {
    var starboard = CRACKED.replace("port", "starboard");
    assertThat(over(starboard, CRACKED + "," + starboard).findings())
        .extracting(r -> r.component().id())
        .containsExactly("starboard", "port");
  }

  @Test
  void a_finding_keeps_its_number_and_a_new_one_comes_after_the_last_even_if_it_is_graver() {
    var assessment = over(DAMP_BILGE, DAMP_BILGE + "," + SOFT);
    assertThat(numbers(assessment))
        .isEqualTo(Map.of("bilge-water boat", 1, "cooling-hoses port", 2));
    assertThat(assessment.findings())
        .extracting(r -> r.check().id())
        .as("told gravest first all the same")
        .containsExactly("cooling-hoses", "bilge-water");
  }

  @Test
  void the_number_of_a_settled_finding_is_never_given_to_another() {
    var assessment = over(CRACKED, SOUND, SOUND + "," + DAMP_BILGE);
    assertThat(numbers(assessment)).isEqualTo(Map.of("bilge-water boat", 2));
  }

  @Test
  void a_hose_that_was_renewed_is_completed_and_the_year_after_no_longer_followed() {
    assertThat(status(over(CRACKED, SOUND), 1)).isEqualTo(Followed.Status.COMPLETED);
    assertThat(over(CRACKED, SOUND, SOUND).history().followed()).isEmpty();
  }

  @Test
  void what_is_put_right_on_the_spot_is_completed() {
    var mended = hose("\"is\": \"minor-cracks-or-rust\", \"done\": \"Renewed.\"");
    assertThat(status(over(CRACKED, mended), 1)).isEqualTo(Followed.Status.COMPLETED);
    assertThat(over(mended, SOUND).history().followed()).isEmpty();
  }

  @Test
  void what_is_as_it_was_is_outstanding_since_it_was_first_reported() {
    var followed = over(CRACKED, CRACKED, CRACKED).history().followed().get(0);
    assertThat(followed.status()).isEqualTo(Followed.Status.OUTSTANDING);
    assertThat(followed.since()).isEqualTo(LocalDate.of(2020, 10, 1));
  }

  @Test
  void a_fault_that_grew_is_worse_and_one_that_eased_is_still_outstanding() {
    assertThat(status(over(CRACKED, SOFT), 1)).isEqualTo(Followed.Status.WORSE);
    assertThat(status(over(SOFT, CRACKED), 1)).isEqualTo(Followed.Status.OUTSTANDING);
  }

  @Test
  void work_that_has_begun_leaves_the_finding_open() {
    var begun = hose("\"is\": \"soft-or-weeping\", \"begun\": \"Hose ordered.\"");
    var assessment = over(CRACKED, begun);
    assertThat(status(assessment, 1)).isEqualTo(Followed.Status.IN_PROGRESS);
    assertThat(assessment.findings()).extracting(r -> r.counts().word()).containsExactly("timely");
  }

  @Test
  void what_nobody_looked_at_stays_open_until_somebody_does() {
    var unseen = hose("\"not-inspected\": \"cowl not taken off\"");
    assertThat(status(over(CRACKED, unseen), 1)).isEqualTo(Followed.Status.NOT_LOOKED_AT);
    assertThat(status(over(CRACKED, ""), 1)).isEqualTo(Followed.Status.NOT_LOOKED_AT);
    assertThat(status(over(CRACKED, unseen, CRACKED), 1)).isEqualTo(Followed.Status.OUTSTANDING);
  }

  @Test
  void a_fault_that_comes_back_has_its_old_number_again() {
    var assessment = over(CRACKED, SOUND, CRACKED);
    assertThat(status(assessment, 1)).isEqualTo(Followed.Status.BACK);
    assertThat(numbers(assessment)).isEqualTo(Map.of("cooling-hoses port", 1));
  }

  @Test
  void a_finding_on_an_engine_that_was_replaced_is_gone_and_the_new_engine_has_its_own_number() {
    var assessment =
        over(List.of(", \"serial\": \"A1\"", ", \"serial\": \"B2\""), List.of(CRACKED, CRACKED));
    assertThat(status(assessment, 1)).isEqualTo(Followed.Status.GONE);
    assertThat(numbers(assessment)).isEqualTo(Map.of("cooling-hoses port", 2));
  }

  @Test
  void an_engine_whose_number_was_not_written_down_is_taken_for_the_same() {
    var assessment = over(List.of("", ", \"serial\": \"B2\""), List.of(CRACKED, CRACKED));
    assertThat(status(assessment, 1)).isEqualTo(Followed.Status.OUTSTANDING);
  }

  @Test
  void a_finding_on_something_that_is_no_longer_there_is_gone() {
    var none = hose("\"not-applicable\": \"raw-water cooling was taken out\"");
    assertThat(status(over(CRACKED, none), 1)).isEqualTo(Followed.Status.GONE);
  }
}

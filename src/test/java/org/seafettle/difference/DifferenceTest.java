package org.seafettle.difference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.seafettle.assessment.Assessment;
import org.seafettle.assessment.Assessor;
import org.seafettle.assessment.Grade;
import org.seafettle.catalogue.Catalogue;
import org.seafettle.catalogue.Subsystem;
import org.seafettle.difference.Change.Kind;
import org.seafettle.json.CatalogueReader;
import org.seafettle.json.SurveyReader;

/** What is said of two surveys of one boat. */
class DifferenceTest {

  private static final Catalogue CATALOGUE = CatalogueReader.supplied();

  private static Assessment survey(String date, String serial, int installed, String... findings) {
    return new Assessor(CATALOGUE)
        .assess(
            SurveyReader.bind(
                String.format(
                    Locale.ROOT,
                    """
                    {
                      "format": "seafettle-survey/1",
                      "survey": { "id": "C-1", "purpose": "yearly-record", "date": "%s",
                                  "place": "yard", "by": { "name": "Ida Holm" } },
                      "boat": { "name": "Sedge", "water": "salt" },
                      "engines": [ { "id": "port", "type": "outboard-4-stroke",
                                     "serial": "%s", "hours": "200 h" } ],
                      "batteries": [ { "id": "start", "serves": ["port"], "chemistry": "agm",
                                       "nominal": "12 V", "installed": %d } ],
                      "findings": [%s]
                    }
                    """,
                    date,
                    serial,
                    installed,
                    String.join(",", findings)),
                CATALOGUE),
            List.of());
  }

  private static Assessment then(String... findings) {
    return survey("2025-09-30", "A1", 2020, findings);
  }

  private static Assessment now(String... findings) {
    return survey("2026-09-30", "A1", 2020, findings);
  }

  private static String oil(String rest) {
    return "{ \"check\": \"oil-appearance\", \"on\": \"port\", " + rest + " }";
  }

  private static Kind oil(Assessment then, Assessment now) {
    return Difference.between(then, now, Match.ONE_BOAT).changes().stream()
        .filter(c -> c.result().check().id().equals("oil-appearance"))
        .findFirst()
        .orElseThrow()
        .kind();
  }

  private static final String MILKY = oil("\"is\": \"milky\"");
  private static final String GOLDEN = oil("\"is\": \"golden\"");
  private static final String UNSEEN = oil("\"not-inspected\": \"no rag\"");
  private static final String DONE = oil("\"is\": \"milky\", \"done\": \"Changed.\"");

  @Test
  void every_course_of_a_finding_has_its_word() {
    assertThat(oil(then(GOLDEN), now(MILKY))).isEqualTo(Kind.NEW);
    assertThat(oil(then(UNSEEN), now(MILKY))).isEqualTo(Kind.FIRST_SEEN);
    assertThat(oil(then(MILKY), now(MILKY))).isEqualTo(Kind.STILL_OPEN);
    assertThat(oil(then(MILKY), now(GOLDEN))).isEqualTo(Kind.PUT_RIGHT);
    assertThat(oil(then(MILKY), now(UNSEEN))).isEqualTo(Kind.OPEN_NOT_SEEN);
    assertThat(oil(then(GOLDEN), now(UNSEEN))).isEqualTo(Kind.WELL_NOT_SEEN);
    assertThat(oil(then(GOLDEN), now(GOLDEN))).isEqualTo(Kind.WELL);
  }

  @Test
  void silence_is_not_seen_and_never_put_right() {
    assertThat(oil(then(MILKY), now())).isEqualTo(Kind.OPEN_NOT_SEEN);
  }

  @Test
  void what_was_put_right_on_the_spot_counts_so_both_times() {
    assertThat(oil(then(MILKY), now(DONE))).isEqualTo(Kind.PUT_RIGHT);
    assertThat(oil(then(DONE), now(MILKY))).isEqualTo(Kind.NEW);
  }

  @Test
  void graver_is_worse_and_milder_is_better() {
    var inDate = "{ \"check\": \"fire-extinguishers\", \"readings\": { \"oldest\": \"11.5 a\" } }";
    var old = inDate.replace("11.5", "13");
    assertThat(Difference.between(then(inDate), now(old), Match.ONE_BOAT).of(Kind.WORSE))
        .hasSize(1);
    assertThat(Difference.between(then(old), now(inDate), Match.ONE_BOAT).of(Kind.BETTER))
        .hasSize(1);
  }

  @Test
  void an_engine_with_another_serial_number_is_another_engine() {
    var exchanged = survey("2026-09-30", "B2", 2020, MILKY);
    assertThat(oil(then(GOLDEN), exchanged)).isEqualTo(Kind.FIRST_SEEN);
    var grades = Difference.between(then(GOLDEN), exchanged, Match.ONE_BOAT).grades();
    assertThat(grades.get(0).proof()).isEqualTo(GradeChange.Proof.NOTHING_BEFORE);
    assertThat(Difference.between(then(GOLDEN), exchanged, Match.TWO_BOATS).of(Kind.NEW))
        .hasSize(1);
  }

  @Test
  void a_battery_of_another_year_is_another_battery() {
    var bulged = "{ \"check\": \"battery-case\", \"on\": \"start\", \"is\": \"bulged\" }";
    var sound = bulged.replace("bulged", "sound");
    assertThat(Difference.between(then(bulged), now(sound), Match.ONE_BOAT).of(Kind.PUT_RIGHT))
        .hasSize(1);
    var renewed = survey("2026-09-30", "A1", 2026, sound);
    assertThat(Difference.between(then(bulged), renewed, Match.ONE_BOAT).of(Kind.PUT_RIGHT))
        .isEmpty();
  }

  @Test
  void ranges_that_overlap_prove_nothing() {
    var grades = Difference.between(then(GOLDEN), now(MILKY), Match.ONE_BOAT).grades();
    assertThat(grades.get(0).proof()).isEqualTo(GradeChange.Proof.NOT_PROVEN);
  }

  @Test
  void an_index_that_rose_because_nobody_looked_again_proves_nothing() {
    var leak = "{ \"check\": \"oil-leak\", \"on\": \"port\", \"is\": \"damp\" }";
    assertThat(oilIndex(then(leak), now()).proof()).isNotEqualTo(GradeChange.Proof.BETTER);
    var before = new Grade(60, 70, 1, true);
    assertThat(change(before, new Grade(80, 90, 1, true), true))
        .isEqualTo(GradeChange.Proof.SEEN_ONCE);
    assertThat(change(before, new Grade(10, 50, 1, true), true))
        .isEqualTo(GradeChange.Proof.SEEN_ONCE);
    assertThat(change(before, new Grade(80, 90, 1, true), false))
        .isEqualTo(GradeChange.Proof.BETTER);
    assertThat(change(before, new Grade(10, 50, 1, true), false))
        .isEqualTo(GradeChange.Proof.WORSE);
    assertThat(change(before, new Grade(70, 90, 1, true), false))
        .isEqualTo(GradeChange.Proof.NOT_PROVEN);
  }

  private static GradeChange oilIndex(Assessment then, Assessment now) {
    var change = Difference.between(then, now, Match.ONE_BOAT).grades().get(1);
    assertThat(change.subsystem()).contains(Subsystem.OIL);
    assertThat(change.seenOnce()).isTrue();
    return change;
  }

  private static GradeChange.Proof change(Grade then, Grade now, boolean seenOnce) {
    var engine = now().survey().engines().get(0);
    return new GradeChange(engine, Optional.of(Subsystem.OIL), Optional.of(then), now, seenOnce)
        .proof();
  }

  @Test
  void readings_differ_where_the_difference_exceeds_the_uncertainty_of_both() {
    var reading =
        "{ \"check\": \"battery-rest-voltage\", \"on\": \"start\", \"readings\":"
            + " { \"voltage\": \"12.70 ± 0.03 V\", \"temperature\": \"16 Cel\", \"rested\": \"14 h\" } }";
    var near = voltage(reading, reading.replace("12.70 ± 0.03", "12.65 ± 0.04"));
    assertThat(near.by()).isCloseTo(-0.05, within(1e-9));
    assertThat(near.uncertainty().orElseThrow()).isCloseTo(0.05, within(1e-9));
    var far = voltage(reading, reading.replace("12.70 ± 0.03", "12.60 ± 0.04"));
    assertThat(far.proof()).isEqualTo(ReadingChange.Proof.FALLEN);
    var same = voltage(reading, reading);
    assertThat(same.proof()).isEqualTo(ReadingChange.Proof.NOT_PROVEN);
    assertThat(voltage(reading, reading.replace("12.70", "12.90")).proof())
        .isEqualTo(ReadingChange.Proof.RISEN);
  }

  private static ReadingChange voltage(String then, String now) {
    return Difference.between(then(then), now(now), Match.ONE_BOAT).readings().stream()
        .filter(r -> r.spec().name().equals("voltage") && r.first())
        .findFirst()
        .orElseThrow();
  }

  @Test
  void a_powerhead_that_only_one_survey_opened_proves_nothing() {
    var melted = "{ \"check\": \"spark-plugs\", \"on\": \"port\", \"is\": \"melted\" }";
    assertThat(Difference.between(then(), now(), Match.ONE_BOAT).grades())
        .noneMatch(g -> g.subsystem().equals(Optional.of(Subsystem.POWERHEAD)));
    assertThat(Difference.between(then(), now(melted), Match.ONE_BOAT).grades())
        .filteredOn(g -> g.subsystem().equals(Optional.of(Subsystem.POWERHEAD)))
        .extracting(GradeChange::proof)
        .containsExactly(GradeChange.Proof.NOTHING_BEFORE);
    assertThat(Difference.between(then(melted), now(), Match.ONE_BOAT).grades())
        .noneMatch(g -> g.proof() == GradeChange.Proof.BETTER);
  }
}

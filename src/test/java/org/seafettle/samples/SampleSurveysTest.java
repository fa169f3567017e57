package org.seafettle.samples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.seafettle.assessment.Assessment;
import org.seafettle.assessment.Assessor;
import org.seafettle.assessment.Cause;
import org.seafettle.assessment.ConditionWord;
import org.seafettle.assessment.Result;
import org.seafettle.assessment.Verdict;
import org.seafettle.catalogue.Catalogue;
import org.seafettle.catalogue.FindingClass;
import org.seafettle.catalogue.StopOrder;
import org.seafettle.catalogue.Subsystem;
import org.seafettle.json.CatalogueReader;
import org.seafettle.json.SurveyReader;
import org.seafettle.json.SurveySource;
import org.seafettle.photo.Metadata;
import org.seafettle.photo.Orientation;
import org.seafettle.photo.Original;
import org.seafettle.problem.Place;
import org.seafettle.problem.Problem;
import org.seafettle.problem.Refused;

/** The samples are what a newcomer sees first: each has to go on telling its story. */
class SampleSurveysTest {

  private static final Path SAMPLES = Path.of("sample-surveys");
  private static final Catalogue CATALOGUE = CatalogueReader.supplied();
  private static final SurveyReader READER =
      new SurveyReader(CATALOGUE, character -> true, (name, report) -> Map.of());

  @ParameterizedTest
  @ValueSource(
      strings = {
        "sound-pair/2024",
        "sound-pair/2025",
        "sound-pair/2026",
        "neglected",
        "half-inspected",
        "diesel-inboard"
      })
  void a_sample_is_read_without_a_remark_and_shows_every_photograph(String sample) {
    SurveySource source = READER.read(SAMPLES.resolve(sample));
    assertThat(source.remarks()).isEmpty();
    for (var photo : source.survey().photos()) {
      assertThat(original(sample, photo.file()).size().width()).as(photo.file()).isPositive();
    }
  }

  @Test
  void the_sound_pair_is_in_excellent_order_and_seen_in_full() {
    Assessment assessment = assessed("sound-pair/2026");
    assertThat(assessment.verdict().readiness()).isEqualTo(Verdict.Readiness.READY);
    assertThat(assessment.engines()).hasSize(2);
    for (var engine : assessment.engines()) {
      assertThat(engine.grade().certain()).isTrue();
      assertThat(engine.grade().word()).isEqualTo(ConditionWord.EXCELLENT);
    }
    assertThat(assessment.findings())
        .extracting(Result::counts)
        .allMatch(c -> !c.atLeast(FindingClass.TIMELY));
  }

  @Test
  void the_sound_pair_has_four_earlier_years_beside_this_one() {
    SurveySource source = READER.read(SAMPLES.resolve("sound-pair/2026"));
    assertThat(source.earlier())
        .extracting(s -> s.survey().occasion().date().getYear())
        .containsExactly(2022, 2023, 2024, 2025);
    assertThat(source.survey().work()).isNotEmpty();
  }

  @Test
  void the_neglected_boat_must_not_be_started_and_has_failed() {
    Assessment assessment = assessed("neglected");
    assertThat(assessment.verdict().readiness()).isEqualTo(Verdict.Readiness.STOP);
    assertThat(assessment.verdict().stops())
        .first()
        .satisfies(s -> assertThat(s.order()).isEqualTo(StopOrder.DO_NOT_START));
    var grade = assessment.engines().get(0).grade();
    assertThat(grade.graded()).isTrue();
    assertThat(grade.word()).isEqualTo(ConditionWord.FAILED);
    assertThat(assessment.verdict().counts())
        .hasEntrySatisfying(FindingClass.BEFORE_USE, n -> assertThat(n).isGreaterThan(3))
        .hasEntrySatisfying(FindingClass.TIMELY, n -> assertThat(n).isGreaterThan(3))
        .hasEntrySatisfying(FindingClass.MONITOR, n -> assertThat(n).isGreaterThan(3));
  }

  @Test
  void the_neglected_boats_milky_oil_and_lost_coolant_have_one_cause() {
    assertThat(assessed("neglected").causes())
        .filteredOn(Cause::settled)
        .extracting(c -> c.pattern().id())
        .contains("coolant-in-the-oil");
  }

  @Test
  void the_neglected_boats_weak_cylinder_its_plug_and_its_leak_down_point_at_the_gasket() {
    Assessment assessment = assessed("neglected");
    assertThat(assessment.causes())
        .filteredOn(Cause::settled)
        .extracting(c -> c.pattern().id())
        .contains("gasket-or-rings-after-heat", "gasket-at-the-weak-cylinder");
    assertThat(assessment.findings())
        .filteredOn(f -> f.check().subsystem() == Subsystem.POWERHEAD)
        .extracting(f -> f.check().id())
        .containsExactlyInAnyOrder("compression-spread", "leak-down", "spark-plugs", "propeller");
    assertThat(assessment.findings())
        .filteredOn(Result::tooCloseToCall)
        .noneMatch(f -> f.check().subsystem() == Subsystem.POWERHEAD);
  }

  @Test
  void the_neglected_boat_has_a_reading_too_close_to_call_a_makers_limit_and_prices() {
    Assessment assessment = assessed("neglected");
    assertThat(assessment.findings()).anyMatch(Result::tooCloseToCall);
    assertThat(assessment.survey().engines().get(0).limits()).isNotEmpty();
    assertThat(assessment.survey().prices()).isPresent();
  }

  @Test
  void too_little_of_the_half_inspected_boat_was_seen_for_a_grade() {
    Assessment assessment = assessed("half-inspected");
    var engine = assessment.engines().get(0);
    assertThat(engine.grade().graded()).isFalse();
    assertThat(engine.grade().high()).isGreaterThan(engine.grade().low());
    assertThat(engine.subsystems()).anyMatch(s -> s.grade().coverage() < 0.6);
    assertThat(assessment.plan().looks()).isNotEmpty();
    assertThat(assessment.verdict().stops()).isEmpty();
  }

  @Test
  void the_half_inspected_boat_may_come_as_an_archive(@TempDir Path folder) throws IOException {
    Path from = SAMPLES.resolve("half-inspected");
    Path archive = folder.resolve("half-inspected.zip");
    try (var zip = new ZipOutputStream(Files.newOutputStream(archive));
        var files = Files.walk(from)) {
      for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
        zip.putNextEntry(new ZipEntry(from.relativize(file).toString().replace('\\', '/')));
        zip.write(Files.readAllBytes(file));
      }
    }
    assertThat(READER.read(archive).survey()).isEqualTo(READER.read(from).survey());
  }

  @Test
  void the_diesel_is_good_for_the_winter_with_decisions_to_take_before_spring() {
    Assessment assessment = assessed("diesel-inboard");
    var grade = assessment.engines().get(0).grade();
    assertThat(grade.word()).isIn(ConditionWord.GOOD, ConditionWord.FAIR);
    assertThat(assessment.verdict().stops()).isEmpty();
    assertThat(assessment.verdict().counts().get(FindingClass.BEFORE_USE)).isZero();
    assertThat(assessment.verdict().counts().get(FindingClass.TIMELY)).isPositive();
    assertThat(assessment.survey().findings())
        .filteredOn(f -> f.done().isPresent())
        .hasSizeGreaterThan(4);
  }

  @Test
  void the_broken_survey_is_refused_with_all_its_faults_at_once() {
    var refused = catchThrowableOfType(Refused.class, () -> READER.read(SAMPLES.resolve("broken")));
    assertThat(refused.problems()).hasSizeGreaterThan(24).allMatch(p -> !p.remedy().isBlank());
    assertThat(refused.problems())
        .extracting(Problem::remedy)
        .contains("Did you mean \"oil-level\"?", "Did you mean \"afloat\"?");
  }

  @Test
  void the_photographs_lie_every_way_round_and_one_betrays_a_place_and_one_another_day() {
    SurveySource neglected = READER.read(SAMPLES.resolve("neglected"));
    List<Metadata> all =
        Stream.of("neglected", "sound-pair/2026")
            .flatMap(
                sample ->
                    READER.read(SAMPLES.resolve(sample)).survey().photos().stream()
                        .map(p -> original(sample, p.file()).metadata()))
            .toList();
    assertThat(all)
        .extracting(Metadata::orientation)
        .contains(Orientation.of(1), Orientation.of(3), Orientation.of(6), Orientation.of(8));
    assertThat(all).filteredOn(Metadata::positionRecorded).hasSize(1);
    assertThat(neglected.survey().photos())
        .filteredOn(
            p ->
                !original("neglected", p.file())
                    .metadata()
                    .taken()
                    .orElseThrow()
                    .clock()
                    .toLocalDate()
                    .equals(neglected.survey().occasion().date()))
        .singleElement()
        .satisfies(p -> assertThat(p.id()).isEqualTo("extinguisher"));
  }

  private static Assessment assessed(String sample) {
    SurveySource source = READER.read(SAMPLES.resolve(sample));
    return new Assessor(CATALOGUE)
        .assess(source.survey(), source.earlier().stream().map(SurveySource::survey).toList());
  }

  private static Original original(String sample, String file) {
    try {
      var bytes = Files.readAllBytes(SAMPLES.resolve(sample).resolve(file));
      return Original.read(bytes, Place.file(file), file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}

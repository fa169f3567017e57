package org.seafettle.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.seafettle.assessment.Assessment;
import org.seafettle.assessment.Assessor;
import org.seafettle.assessment.ConditionWord;
import org.seafettle.catalogue.Catalogue;
import org.seafettle.catalogue.Deadline;
import org.seafettle.catalogue.FindingClass;
import org.seafettle.catalogue.StopOrder;
import org.seafettle.catalogue.Subsystem;
import org.seafettle.survey.Survey;
import org.seafettle.survey.Word;

class AssessmentWriterTest {

  private static final String VERSION = "1.0.0";

  private final Survey now = SurveyReader.bind(Surveys.GOOD, Surveys.CATALOGUE);
  private final Survey before =
      SurveyReader.bind(Surveys.with("\"2026-10-17\"", "\"2025-10-11\""), Surveys.CATALOGUE);
  private final Assessment assessment =
      new Assessor(Surveys.CATALOGUE).assess(now, List.of(before));
  private final JsonNode schema = SurveySchema.resource(AssessmentWriter.RESOURCE);

  @Test
  void an_assessment_is_written_as_it_always_was() {
    Golden.hold("good-assessment.json", written(assessment));
  }

  @Test
  void an_assessment_keeps_to_its_schema() throws IOException {
    assertThat(violations(assessment)).isEmpty();
  }

  @Test
  void an_assessment_by_the_supplied_catalogue_keeps_to_its_schema() throws IOException {
    Catalogue supplied = CatalogueReader.supplied();
    var survey =
        new Survey(
            now.occasion(),
            now.boat(),
            now.outfit(),
            List.of(),
            now.photos(),
            now.work(),
            now.prices(),
            List.of());
    assertThat(violations(new Assessor(supplied).assess(survey, List.of(survey)))).isEmpty();
  }

  private List<com.networknt.schema.Error> violations(Assessment judged) throws IOException {
    var json = JsonMapper.builder().build().readTree(written(judged));
    return SurveySchema.load(schema).validate(json);
  }

  @Test
  void the_same_assessment_is_the_same_bytes_in_every_language() {
    var usual = Locale.getDefault();
    var bytes = AssessmentWriter.write(assessment, VERSION);
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG"));
      assertThat(AssessmentWriter.write(assessment, VERSION)).isEqualTo(bytes);
    } finally {
      Locale.setDefault(usual);
    }
    assertThat(bytes[bytes.length - 1]).isEqualTo((byte) '\n');
  }

  @Test
  void numbers_are_free_of_the_noise_of_arithmetic() {
    var record =
        new JsonRecord()
            .number("sum", 0.1 + 0.2)
            .number("half", 93.28125)
            .number("whole", 100.0)
            .number("small", 1e-7)
            .number("none", -0.0);
    assertThat(PrettyJson.write(record.node()))
        .isEqualTo(
            """
            {
              "sum": 0.3,
              "half": 93.28125,
              "whole": 100,
              "small": 0.0000001,
              "none": 0
            }""");
  }

  @Test
  void the_words_of_the_schema_are_those_that_are_written() {
    assertThat(words("class")).isEqualTo(Word.all(FindingClass.class));
    assertThat(words("subsystem")).isEqualTo(Word.all(Subsystem.class));
    assertThat(words("condition-word")).isEqualTo(Word.all(ConditionWord.class));
    assertThat(words("deadline")).isEqualTo(Word.all(Deadline.class));
    assertThat(words("stop-order")).isEqualTo(Word.all(StopOrder.class));
  }

  private List<String> words(String name) {
    var words = new ArrayList<String>();
    schema.at("/$defs/" + name + "/enum").forEach(w -> words.add(w.asText()));
    return words;
  }

  @Test
  void every_field_is_described_and_every_object_is_closed() {
    assertThat(SurveySchemaTest.faultsOf(schema)).isEmpty();
  }

  private static String written(Assessment judged) {
    return new String(AssessmentWriter.write(judged, VERSION), StandardCharsets.UTF_8);
  }
}

package org.seafettle.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.seafettle.survey.Chemistry;
import org.seafettle.survey.Circuit;
import org.seafettle.survey.EngineType;
import org.seafettle.survey.Feature;
import org.seafettle.survey.Photo;
import org.seafettle.survey.Purpose;
import org.seafettle.survey.Water;
import org.seafettle.survey.Word;

class SurveySchemaTest {

  private final JsonNode schema = SurveySchema.resource(SurveySchema.RESOURCE);

  @Test
  void the_published_schemas_have_the_words_of_the_supplied_catalogue() {
    var supplied = CatalogueReader.supplied();
    hold(SurveySchema.RESOURCE, SurveySchema.published(supplied));
    hold(SurveySchema.FOR_EDITORS, SurveySchema.forEditors(supplied));
  }

  private static void hold(String resource, JsonNode upToDate) {
    Golden.hold(Path.of("src/main/resources" + resource), PrettyJson.write(upToDate) + "\n");
  }

  @Test
  void every_field_is_described_and_every_object_is_closed() {
    assertThat(faultsOf(schema)).isEmpty();
  }

  static List<String> faultsOf(JsonNode schema) {
    var faults = new ArrayList<String>();
    schema.path("properties").properties().forEach(e -> look(e.getKey(), e.getValue(), faults));
    schema
        .path("$defs")
        .properties()
        .forEach(e -> look("$defs." + e.getKey(), e.getValue(), faults));
    return faults;
  }

  private static void look(String path, JsonNode rule, List<String> faults) {
    boolean onlyRefers = rule.has("$ref") && rule.size() == 1;
    if (!onlyRefers && rule.path("description").asText().isBlank()) {
      faults.add(path + " is not described");
    }
    if (rule.path("type").asText().equals("object") && !rule.has("additionalProperties")) {
      faults.add(path + " is open");
    }
    rule.path("properties")
        .properties()
        .forEach(e -> look(path + "." + e.getKey(), e.getValue(), faults));
    if (rule.has("items")) {
      look(path + "[]", rule.get("items"), faults);
    }
  }

  @Test
  void the_words_of_the_schema_are_those_that_are_read() {
    assertThat(words("/properties/survey/properties/purpose")).isEqualTo(Word.all(Purpose.class));
    assertThat(words("/properties/boat/properties/water")).isEqualTo(Word.all(Water.class));
    assertThat(words("/properties/boat/properties/fuel/properties/kind"))
        .isEqualTo(SurveyWords.fuels());
    assertThat(words("/$defs/engine/properties/type")).isEqualTo(Word.all(EngineType.class));
    assertThat(words("/$defs/engine/properties/cooling")).isEqualTo(Word.all(Circuit.class));
    assertThat(words("/$defs/battery/properties/chemistry")).isEqualTo(Word.all(Chemistry.class));
    assertThat(words("/$defs/photo/properties/marks/items/properties/shape"))
        .isEqualTo(Word.all(Photo.Mark.Shape.class));
    var features = new TreeSet<String>();
    schema
        .at("/properties/boat/properties/features/properties")
        .fieldNames()
        .forEachRemaining(features::add);
    assertThat(features).isEqualTo(new TreeSet<>(Word.all(Feature.class)));
  }

  private List<String> words(String pointer) {
    var words = new ArrayList<String>();
    schema.at(pointer + "/enum").forEach(w -> words.add(w.asText()));
    return words;
  }

  @Test
  void an_editor_with_the_published_schema_accepts_the_good_survey() throws Exception {
    var published = SurveySchema.load(SurveySchema.forEditors(Surveys.CATALOGUE));
    var mapper = JsonMapper.builder().build();
    assertThat(published.validate(mapper.readTree(Surveys.GOOD))).isEmpty();
    var wrong = Surveys.with("\"milky\"]", "\"milk\"]");
    assertThat(published.validate(mapper.readTree(wrong))).isNotEmpty();
    var misplaced = Surveys.with("\"is\": \"low\"", "\"readings\": {\"level\": \"3 cm\"}");
    assertThat(published.validate(mapper.readTree(misplaced))).isNotEmpty();
  }

  @Test
  void the_schema_is_itself_valid() {
    var meta =
        com.networknt.schema.SchemaRegistry.withDefaultDialect(
                com.networknt.schema.dialect.Dialects.getDraft202012())
            .getSchema(
                com.networknt.schema.SchemaLocation.of(
                    "https://json-schema.org/draft/2020-12/schema"));
    assertThat(meta.validate(SurveySchema.forEditors(Surveys.CATALOGUE))).isEmpty();
  }

  @Test
  void every_example_of_the_schema_would_be_accepted() {
    var faults = new ArrayList<String>();
    examples(SurveySchema.published(Surveys.CATALOGUE), "", faults);
    assertThat(faults).isEmpty();
  }

  private void examples(JsonNode rule, String path, List<String> faults) {
    if (rule.isObject() && rule.has("examples") && !path.isEmpty()) {
      var alone = (com.fasterxml.jackson.databind.node.ObjectNode) rule.deepCopy();
      alone.set("$defs", SurveySchema.published(Surveys.CATALOGUE).get("$defs"));
      var one = SurveySchema.load(alone);
      rule.get("examples")
          .forEach(e -> one.validate(e).forEach(f -> faults.add(path + ": " + e + ": " + f)));
    }
    rule.properties().forEach(e -> examples(e.getValue(), path + "/" + e.getKey(), faults));
  }
}

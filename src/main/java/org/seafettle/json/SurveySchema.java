package org.seafettle.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SchemaRegistryConfig;
import com.networknt.schema.dialect.Dialects;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Locale;
import org.seafettle.catalogue.Catalogue;

/**
 * The published schema of survey files. Its words of the catalogue are those of the catalogue at
 * hand, so that a survey is never held against another one.
 */
final class SurveySchema {

  /** Where the published schema lies. */
  static final String RESOURCE = "/org/seafettle/schema/survey.schema.json";

  /** Where the one that completes every word while one types lies. */
  static final String FOR_EDITORS = "/org/seafettle/schema/survey-for-editors.schema.json";

  private final ObjectNode node;
  private final Schema schema;

  SurveySchema(Catalogue catalogue) {
    node = resource(RESOURCE);
    SchemaWords.put(node, catalogue);
    schema = load(node);
  }

  /** The published schema with the words of a catalogue. */
  static ObjectNode published(Catalogue catalogue) {
    var node = resource(RESOURCE);
    SchemaWords.put(node, catalogue);
    return node;
  }

  /**
   * The same with what each check may say. It is seven times as long, so the program itself, which
   * looks at this with more care when it reads the findings, does without.
   */
  static ObjectNode forEditors(Catalogue catalogue) {
    var node = published(catalogue);
    node.put("$id", "https://seafettle.org/schema/survey-1-for-editors.json");
    SchemaWords.putBranches(node, catalogue);
    return node;
  }

  /** Blames what the schema does not allow and what nobody has blamed yet. */
  void validate(JsonNode root, Faults faults) {
    var words = new SchemaFaults(node, faults);
    schema.validate(root).forEach(words::blame);
  }

  /** A schema that is ready to validate. Nothing is fetched: what it refers to lies within it. */
  static Schema load(JsonNode node) {
    var config =
        SchemaRegistryConfig.builder()
            .locale(Locale.ROOT)
            .formatAssertionsEnabled(false)
            .preloadSchema(false)
            .build();
    return SchemaRegistry.withDefaultDialect(
            Dialects.getDraft202012(),
            registry ->
                registry
                    .schemaRegistryConfig(config)
                    .schemaLoader(loader -> loader.fetchRemoteResources(false)))
        .getSchema(node);
  }

  /** Read by the parser of surveys, so that none other has to be woken at the start. */
  static ObjectNode resource(String name) {
    try (var in = SurveySchema.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("The program lacks " + name + ". Install it anew.");
      }
      return (ObjectNode) DocumentParser.parse(name, in.readAllBytes()).root();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}

package org.seafettle.json;

import com.fasterxml.jackson.core.JsonParseException;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.io.IOException;

/**
 * Reads YAML into nodes. A mapper would do the same, but it takes longer to start than the whole
 * catalogue takes to read, and every report waits for it.
 */
final class CatalogueYaml {

  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private CatalogueYaml() {}

  static JsonNode read(byte[] content) throws IOException {
    try (var parser = new YAMLFactory().createParser(content)) {
      return parser.nextToken() == null ? NODES.missingNode() : node(parser);
    }
  }

  private static JsonNode node(JsonParser parser) throws IOException {
    return switch (parser.currentToken()) {
      case START_OBJECT -> fields(parser);
      case START_ARRAY -> items(parser);
      case VALUE_TRUE -> NODES.booleanNode(true);
      case VALUE_FALSE -> NODES.booleanNode(false);
      case VALUE_NULL -> NODES.nullNode();
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> NODES.numberNode(parser.getDoubleValue());
      default -> NODES.textNode(parser.getText());
    };
  }

  private static ObjectNode fields(JsonParser parser) throws IOException {
    var fields = NODES.objectNode();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      var name = parser.currentName();
      parser.nextToken();
      if (fields.replace(name, node(parser)) != null) {
        throw new JsonParseException(parser, "\"" + name + "\" is written twice.");
      }
    }
    return fields;
  }

  private static ArrayNode items(JsonParser parser) throws IOException {
    var items = NODES.arrayNode();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      items.add(node(parser));
    }
    return items;
  }
}

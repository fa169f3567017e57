package org.seafettle.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.seafettle.problem.Place;
import org.seafettle.problem.Problem;
import org.seafettle.problem.Refused;

/** Reads JSON and keeps the line of every field. */
final class DocumentParser {

  /** Deeper than a survey goes. */
  private static final int DEEPEST = 40;

  /** Beyond it a number is no reading, and printing it in full would fill the memory. */
  private static final int MOST_DIGITS = 40;

  private static final JsonFactory FACTORY =
      JsonFactory.builder()
          .streamReadConstraints(
              StreamReadConstraints.builder()
                  .maxNestingDepth(DEEPEST)
                  .maxNumberLength(MOST_DIGITS)
                  .build())
          .build();

  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private final String file;
  private final Map<String, Integer> lines = new LinkedHashMap<>();
  private final Map<String, List<Integer>> again = new LinkedHashMap<>();
  private final List<Problem> faults = new ArrayList<>();

  private DocumentParser(String file) {
    this.file = file;
  }

  /**
   * @throws Refused with a single fault where it is no JSON
   */
  static JsonDocument parse(String file, byte[] bytes) {
    return parse(file, JsonText.decode(file, bytes));
  }

  static JsonDocument parse(String file, String text) {
    return new DocumentParser(file).document(text);
  }

  private JsonDocument document(String text) {
    try (var parser = FACTORY.createParser(text)) {
      return document(parser);
    } catch (JsonProcessingException e) {
      throw new Refused(SyntaxFault.of(file, text, e));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private JsonDocument document(JsonParser parser) throws IOException {
    try {
      if (parser.nextToken() == null) {
        throw new Refused(SyntaxFault.empty(file));
      }
      var root = value(parser, "");
      if (parser.nextToken() != null) {
        throw new Refused(SyntaxFault.more(file, parser.currentTokenLocation()));
      }
      again.forEach(this::writtenAgain);
      return new JsonDocument(file, root, lines, faults);
    } catch (StreamConstraintsException e) {
      throw new Refused(SyntaxFault.beyond(file, parser.currentLocation(), e));
    }
  }

  private JsonNode value(JsonParser parser, String path) throws IOException {
    lines.putIfAbsent(path, parser.currentTokenLocation().getLineNr());
    return switch (parser.currentToken()) {
      case START_OBJECT -> object(parser, path);
      case START_ARRAY -> array(parser, path);
      case VALUE_STRING -> NODES.textNode(parser.getText());
      case VALUE_NUMBER_INT -> NODES.numberNode(parser.getBigIntegerValue());
      case VALUE_NUMBER_FLOAT -> decimal(parser, path);
      case VALUE_TRUE -> NODES.booleanNode(true);
      case VALUE_FALSE -> NODES.booleanNode(false);
      case VALUE_NULL -> NODES.nullNode();
      default -> throw new IllegalStateException("a token that is no value: " + parser.getText());
    };
  }

  private ObjectNode object(JsonParser parser, String path) throws IOException {
    var object = NODES.objectNode();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      var name = parser.currentName();
      var child = FieldPath.child(path, name);
      int line = parser.currentTokenLocation().getLineNr();
      if (object.has(name)) {
        again.computeIfAbsent(child, c -> new ArrayList<>(List.of(lines.get(c)))).add(line);
        parser.nextToken();
        parser.skipChildren();
      } else {
        lines.put(child, line);
        parser.nextToken();
        object.set(name, value(parser, child));
      }
    }
    return object;
  }

  private ArrayNode array(JsonParser parser, String path) throws IOException {
    var array = NODES.arrayNode();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      array.add(value(parser, FieldPath.item(path, array.size())));
    }
    return array;
  }

  private JsonNode decimal(JsonParser parser, String path) throws IOException {
    var number = parser.getDecimalValue();
    if (Math.abs((long) number.scale()) > MOST_DIGITS) {
      faults.add(
          new Problem(
              Place.line(file, path, lines.get(path)),
              "The number " + parser.getText() + " is beyond all measure.",
              "Write the number that was read, in full."));
      return NODES.numberNode(1);
    }
    return DecimalNode.valueOf(number);
  }

  private void writtenAgain(String path, List<Integer> at) {
    var all = at.stream().distinct().map(String::valueOf).collect(Collectors.joining(" and line "));
    faults.add(
        new Problem(
            Place.line(file, path, at.get(1)),
            "The key is written "
                + (at.size() == 2 ? "twice" : at.size() + " times")
                + ": line "
                + all
                + ".",
            "Keep one of them."));
  }
}

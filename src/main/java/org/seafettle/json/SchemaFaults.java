package org.seafettle.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Error;
import com.networknt.schema.path.NodePath;
import java.util.ArrayList;

/** Says in plain words what the schema does not allow. */
final class SchemaFaults {

  private static final String NULL = "null says nothing.";

  private final JsonNode schema;
  private final Faults faults;

  SchemaFaults(JsonNode schema, Faults faults) {
    this.schema = schema;
    this.faults = faults;
  }

  void blame(Error error) {
    var path = path(error.getInstanceLocation());
    var rule = rule(error.getEvaluationPath());
    var value = error.getInstanceNode();
    switch (error.getKeyword()) {
      case "additionalProperties" -> unknown(path, error.getProperty(), rule);
      case "required" -> missing(path, error.getProperty(), rule);
      case "type" -> faults.add(path, ofType(value, rule), likeThis(value, rule));
      case "enum" -> word(path, value, rule);
      case "const" ->
          faults.add(
              path,
              value + " is not a format that can be read here.",
              "Write " + rule.path("const") + ".");
      case "minimum", "maximum" ->
          faults.add(path, value.asText() + " cannot be.", "Write " + range(rule) + ".");
      case "pattern", "minLength" -> written(path, value, rule);
      case "maxLength" ->
          faults.add(
              path,
              "The text has " + value.asText().length() + " characters.",
              "Shorten it to " + rule.path("maxLength").asText() + ".");
      case "minItems", "maxItems", "minProperties" -> counted(path, value, rule);
      case "uniqueItems" ->
          faults.add(path, "The list names something twice.", "Name each only once.");
      default -> faults.add(path, "The schema does not allow this: " + error + ".", example(rule));
    }
  }

  private void unknown(String path, String name, JsonNode rule) {
    var known = new ArrayList<String>();
    rule.path("properties").fieldNames().forEachRemaining(known::add);
    known.remove("$schema");
    faults.add(
        FieldPath.child(path, name),
        "There is no field \"" + name + "\" here.",
        Hints.words(name, known));
  }

  private void missing(String path, String name, JsonNode rule) {
    var example = example(withReference(rule.path("properties").path(name)));
    faults.add(
        FieldPath.child(path, name),
        "\"" + name + "\" is missing.",
        example.isEmpty() ? "Add it." : "Add it, such as \"" + name + "\": " + example + ".");
  }

  private static String ofType(JsonNode value, JsonNode rule) {
    if (value.isNull()) {
      return NULL;
    }
    var wanted = rule.path("type");
    var first = wanted.isArray() ? wanted.get(0).asText() : wanted.asText();
    return "Here stands " + noun(value) + " where " + noun(first) + " is wanted.";
  }

  private String likeThis(JsonNode value, JsonNode rule) {
    var example = example(rule);
    if (value.isNull()) {
      return "Leave the field out, or write what is known.";
    }
    return example.isEmpty() ? "Write a list, in [ ]." : "Write it such as " + example + ".";
  }

  private void word(String path, JsonNode value, JsonNode rule) {
    var known = new ArrayList<String>();
    rule.path("enum").forEach(w -> known.add(w.asText()));
    if (!value.isTextual()) {
      faults.add(
          path,
          value.isNull() ? NULL : "Here stands " + noun(value) + " where a word is wanted.",
          "Write one of: " + String.join(", ", known) + ".");
      return;
    }
    var title = rule.path("title").asText("word");
    faults.add(
        path,
        "There is no " + title + " \"" + value.asText() + "\".",
        Hints.words(value.asText(), known));
  }

  private void written(String path, JsonNode value, JsonNode rule) {
    if (value.asText().isBlank()) {
      faults.add(path, "The text is empty.", "Write it such as " + example(rule) + ".");
      return;
    }
    if (rule.path("title").asText().equals("name")) {
      faults.add(
          path,
          value + " cannot be a name here.",
          "Write at most 40 letters, digits and hyphens, such as " + example(rule) + ".");
      return;
    }
    faults.add(
        path,
        value + " is not written as it has to be.",
        "Write it such as " + example(rule) + ".");
  }

  private void counted(String path, JsonNode value, JsonNode rule) {
    if (value.isEmpty()) {
      faults.add(path, "There is nothing in it.", "Write it such as " + example(rule) + ".");
      return;
    }
    var least = rule.path("minItems").asInt(0);
    faults.add(
        path,
        "The list has " + value.size() + (value.size() == 1 ? " entry." : " entries."),
        value.size() < least
            ? "Write " + least + "."
            : "Write at most " + rule.path("maxItems").asText() + ".");
  }

  private static String range(JsonNode rule) {
    return "a number from "
        + rule.path("minimum").asText()
        + " to "
        + rule.path("maximum").asText();
  }

  private static String noun(JsonNode value) {
    if (value.isNumber()) {
      return value.isIntegralNumber() ? "a whole number" : "a number with decimals";
    }
    return noun(
        value.isTextual()
            ? "string"
            : value.isBoolean() ? "boolean" : value.isArray() ? "array" : "object");
  }

  private static String noun(String type) {
    return switch (type) {
      case "string" -> "text";
      case "integer" -> "a whole number";
      case "number" -> "a number";
      case "boolean" -> "true or false";
      case "array" -> "a list";
      default -> "an object in { }";
    };
  }

  /** As a person would write it. */
  private static String example(JsonNode rule) {
    var example = rule.path("examples").path(0);
    return example.isMissingNode() ? "" : example.toString();
  }

  /**
   * The rule that a keyword belongs to. Where it was referred to, the examples of the referring
   * place are the better ones.
   */
  private JsonNode rule(NodePath keyword) {
    var rule = schema;
    for (int i = 0; i < keyword.getNameCount() - 1; i++) {
      var element = keyword.getElement(i);
      rule = element instanceof Integer n ? rule.path(n) : resolved(rule, element.toString());
    }
    return rule;
  }

  private JsonNode withReference(JsonNode rule) {
    return rule.has("$ref") ? resolved(rule, "$ref") : rule;
  }

  private JsonNode resolved(JsonNode rule, String element) {
    if (!element.equals("$ref")) {
      return rule.path(element);
    }
    var target = schema.at(rule.path("$ref").asText().substring(1));
    if (!rule.has("examples") || !target.isObject()) {
      return target;
    }
    return ((ObjectNode) target.deepCopy()).set("examples", rule.get("examples"));
  }

  private static String path(NodePath location) {
    var path = "";
    for (int i = 0; i < location.getNameCount(); i++) {
      var element = location.getElement(i);
      path =
          element instanceof Integer n
              ? FieldPath.item(path, n)
              : FieldPath.child(path, element.toString());
    }
    return path;
  }
}

package org.seafettle.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.seafettle.problem.Spelling;
import org.seafettle.survey.Word;

/**
 * One mapping of the catalogue's data. What is wrong with a field is noted and something harmless
 * is returned in its place, so that reading goes on and finds the next fault.
 *
 * @param faults where faults are noted
 * @param file the file it stands in
 * @param path where it stands in the file
 * @param node its fields
 */
record CatalogueEntry(CatalogueFaults faults, String file, String path, ObjectNode node) {

  private static final String NUMBER = "Write a number.";

  /** Notes every field that is none of these. */
  CatalogueEntry only(String... fields) {
    var known = Set.of(fields);
    node.fieldNames()
        .forEachRemaining(
            name -> {
              if (!known.contains(name)) {
                fault("There is no field \"" + name + "\" here.", Spelling.hint(name, known));
              }
            });
    return this;
  }

  boolean has(String field) {
    return node.hasNonNull(field);
  }

  JsonNode raw(String field) {
    return node.path(field);
  }

  String text(String field) {
    if (!has(field)) {
      fault("\"" + field + "\" is missing.", "Add it.");
    }
    return text(field, "");
  }

  String text(String field, String otherwise) {
    return has(field) ? scalar(field, node.get(field)) : otherwise;
  }

  /** A list of texts, or a single one. */
  List<String> texts(String field) {
    var texts = new ArrayList<String>();
    listed(field).forEach(item -> texts.add(scalar(field, item)));
    return texts;
  }

  double number(String field) {
    return maybe(field)
        .orElseGet(
            () -> {
              fault("\"" + field + "\" is missing.", NUMBER);
              return 1;
            });
  }

  OptionalDouble maybe(String field) {
    if (!has(field)) {
      return OptionalDouble.empty();
    }
    if (!node.get(field).isNumber()) {
      fault("\"" + field + "\" is no number.", NUMBER);
    }
    return OptionalDouble.of(node.get(field).asDouble());
  }

  /** Two numbers, the lower first. */
  double[] range(String field) {
    var list = node.path(field);
    if (list.size() == 2 && list.get(0).isNumber() && list.get(1).isNumber()) {
      return new double[] {list.get(0).asDouble(), list.get(1).asDouble()};
    }
    fault("\"" + field + "\" is no range.", "Write two numbers, the lower first: [0, 10].");
    return new double[] {Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY};
  }

  Optional<Boolean> flag(String field) {
    if (!has(field)) {
      return Optional.empty();
    }
    if (!node.get(field).isBoolean()) {
      fault("\"" + field + "\" is neither true nor false.", "Write true or false.");
    }
    return Optional.of(node.get(field).asBoolean());
  }

  <E extends Enum<E> & Word> Optional<E> word(Class<E> words, String field) {
    return has(field) ? word(words, field, scalar(field, node.get(field))) : Optional.empty();
  }

  <E extends Enum<E> & Word> List<E> words(Class<E> words, String field) {
    return texts(field).stream().flatMap(t -> word(words, field, t).stream()).toList();
  }

  private <E extends Enum<E> & Word> Optional<E> word(Class<E> words, String field, String text) {
    var found = Word.find(words, text);
    if (found.isEmpty()) {
      fault(
          "\"" + text + "\" is no word for \"" + field + "\".",
          Spelling.hint(text, Word.all(words)));
    }
    return found;
  }

  Optional<CatalogueEntry> entry(String field) {
    return has(field) ? under(field, node.get(field)) : Optional.empty();
  }

  /** A list of mappings, or a single one. */
  List<CatalogueEntry> entries(String field) {
    var entries = new ArrayList<CatalogueEntry>();
    int i = 0;
    for (var item : listed(field)) {
      under(field + "[" + i++ + "]", item).ifPresent(entries::add);
    }
    return entries;
  }

  /** Mappings by their names. */
  Map<String, CatalogueEntry> named(String field) {
    var entries = new LinkedHashMap<String, CatalogueEntry>();
    entry(field)
        .ifPresent(
            all ->
                all.node
                    .fieldNames()
                    .forEachRemaining(n -> all.entry(n).ifPresent(e -> entries.put(n, e))));
    return entries;
  }

  /** The same entry under a name that a reader of the data finds more easily. */
  CatalogueEntry called(String name) {
    return new CatalogueEntry(faults, file, name, node);
  }

  void fault(String fault, String remedy) {
    faults.note(file, path, fault, remedy);
  }

  private List<JsonNode> listed(String field) {
    var items = new ArrayList<JsonNode>();
    if (node.path(field).isArray()) {
      node.get(field).forEach(items::add);
    } else if (has(field)) {
      items.add(node.get(field));
    }
    return items;
  }

  private Optional<CatalogueEntry> under(String field, JsonNode child) {
    if (child instanceof ObjectNode fields) {
      return Optional.of(
          new CatalogueEntry(faults, file, path.isEmpty() ? field : path + "." + field, fields));
    }
    fault("\"" + field + "\" has no fields.", "Write it as fields with values.");
    return Optional.empty();
  }

  private String scalar(String field, JsonNode value) {
    if (!value.isTextual()) {
      fault("\"" + field + "\" is no text.", "Put it in quotation marks.");
    }
    return value.asText();
  }
}

package org.seafettle.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Collection;
import java.util.List;
import org.seafettle.catalogue.Catalogue;
import org.seafettle.catalogue.Check;
import org.seafettle.catalogue.Condition;
import org.seafettle.catalogue.Interval;
import org.seafettle.catalogue.ReadingSpec;

/** Puts the words of a catalogue into the schema of survey files. */
final class SchemaWords {

  private SchemaWords() {}

  /** The checks and the parts. */
  static void put(ObjectNode schema, Catalogue catalogue) {
    var checks = schema.withObject("/$defs/check");
    fill(checks.putArray("enum"), catalogue.byId().keySet());
    catalogue.checks().stream().findFirst().ifPresent(c -> checks.putArray("examples").add(c.id()));
    var parts = schema.withObject("/properties/prices/properties/items/properties");
    parts.removeAll();
    for (var part : RecordBinder.parts(catalogue)) {
      parts
          .putObject(part)
          .put("description", "The price of " + part.replace('-', ' ') + ", such as 14.50.")
          .put("type", "number")
          .put("minimum", 0)
          .put("maximum", 1_000_000)
          .putArray("examples")
          .add(14.5);
    }
  }

  /** What a finding may say, check by check, so that an editor can complete it. */
  static void putBranches(ObjectNode schema, Catalogue catalogue) {
    var branches = schema.withObject("/$defs/finding").putArray("allOf");
    for (var check : catalogue.checks()) {
      var branch = branches.addObject();
      branch.withObject("/if").putArray("required").add("check");
      branch.withObject("/if/properties/check").put("const", check.id());
      says(branch.withObject("/then/properties"), check);
    }
  }

  private static void says(ObjectNode fields, Check check) {
    words(fields, "is", check.words());
    var readings = check.criterion().readings();
    names(fields, "readings", readings.stream().map(ReadingSpec::name).toList());
    var conditions =
        readings.stream().flatMap(r -> r.condition().stream()).map(Condition::word).toList();
    if (conditions.isEmpty()) {
      fields.put("conditions", false);
    } else {
      fill(fields.withObject("/conditions/items").putArray("enum"), conditions);
    }
    if (!(check.criterion() instanceof Interval)) {
      fields.put("last", false);
    }
  }

  private static void words(ObjectNode fields, String field, List<String> words) {
    if (words.isEmpty()) {
      fields.put(field, false);
      return;
    }
    var either = fields.withObject("/" + field).putArray("anyOf");
    fill(either.addObject().putArray("enum"), words);
    var list = either.addObject();
    list.put("type", "array");
    fill(list.withObject("/items").putArray("enum"), words);
  }

  private static void names(ObjectNode fields, String field, List<String> names) {
    if (names.isEmpty()) {
      fields.put(field, false);
    } else {
      fill(fields.withObject("/" + field + "/propertyNames").putArray("enum"), names);
    }
  }

  private static void fill(ArrayNode array, Collection<String> words) {
    words.forEach(array::add);
  }
}

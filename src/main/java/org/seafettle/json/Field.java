package org.seafettle.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import java.text.Normalizer;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import org.seafettle.problem.Refused;
import org.seafettle.quantity.Kind;
import org.seafettle.quantity.Quantity;
import org.seafettle.survey.Word;

/**
 * A field of a survey file, there or not. What has the wrong shape reads as absent: the schema
 * blames it. What has the right shape and cannot be true is blamed here.
 *
 * @param faults where to blame
 * @param path of the field
 * @param node its content
 */
record Field(Faults faults, String path, JsonNode node) {

  private static final Pattern DATE = Pattern.compile("\\d{4}-\\d{2}-\\d{2}");

  static Field root(Faults faults, JsonNode root) {
    return new Field(faults, "", root);
  }

  boolean present() {
    return !node.isMissingNode();
  }

  Field child(String name) {
    var child = node.isObject() ? node.path(name) : MissingNode.getInstance();
    return new Field(faults, FieldPath.child(path, name), child);
  }

  /** The fields of an object, in the order of the file. */
  List<String> names() {
    var names = new ArrayList<String>();
    node.fieldNames().forEachRemaining(names::add);
    return node.isObject() ? names : List.of();
  }

  /** The entries of a list; none where it is no list. */
  List<Field> items() {
    var items = new ArrayList<Field>();
    if (node.isArray()) {
      for (int i = 0; i < node.size(); i++) {
        items.add(new Field(faults, FieldPath.item(path, i), node.get(i)));
      }
    }
    return items;
  }

  /** The entries of a list, or the value itself where it stands alone. */
  List<Field> oneOrMore() {
    return node.isArray() ? items() : present() ? List.of(this) : List.of();
  }

  void blame(String fault, String remedy) {
    faults.add(path, fault, remedy);
  }

  /** A text that says something, in Unicode's composed form (NFC). */
  Optional<String> text() {
    return node.isTextual()
        ? Optional.of(Normalizer.normalize(node.textValue(), Normalizer.Form.NFC).strip())
            .filter(t -> !t.isEmpty())
        : Optional.empty();
  }

  Optional<Boolean> flag() {
    return node.isBoolean() ? Optional.of(node.booleanValue()) : Optional.empty();
  }

  /** A whole number within its range. */
  OptionalInt whole(int least, int most) {
    if (!node.isNumber() || !node.canConvertToExactIntegral() || !node.canConvertToInt()) {
      return OptionalInt.empty();
    }
    int value = node.intValue();
    return value < least || value > most ? OptionalInt.empty() : OptionalInt.of(value);
  }

  <E extends Enum<E> & Word> Optional<E> word(Class<E> words) {
    return text().flatMap(t -> Word.find(words, t));
  }

  /** A day as ISO 8601 writes it. */
  Optional<LocalDate> date() {
    return text().flatMap(this::date);
  }

  private Optional<LocalDate> date(String written) {
    if (!DATE.matcher(written).matches()) {
      blame("\"" + written + "\" is not a date.", "Write year-month-day, such as 2026-10-17.");
      return Optional.empty();
    }
    try {
      return Optional.of(LocalDate.parse(written));
    } catch (DateTimeException e) {
      blame("There is no day " + written + ".", "Write a day that the calendar has.");
      return Optional.empty();
    }
  }

  /** A quantity of a kind. */
  Optional<Quantity> quantity(Kind kind) {
    if (node.isNumber()) {
      blame(
          node.asText() + " has no unit.",
          "Write "
              + kind.phrase()
              + " here, in quotation marks: \""
              + kind.example().replace(" or ", "\" or \"")
              + "\".");
      return Optional.empty();
    }
    return text().flatMap(t -> parsed(t, kind));
  }

  /** A quantity of a kind that is more than nothing. */
  Optional<Quantity> positive(Kind kind) {
    return quantity(kind).filter(q -> signedAs(q, q.amount().signum() > 0, "more than 0"));
  }

  /** A quantity of a kind that is not negative. */
  Optional<Quantity> notNegative(Kind kind) {
    return quantity(kind).filter(q -> signedAs(q, q.amount().signum() >= 0, "0 or more"));
  }

  private boolean signedAs(Quantity quantity, boolean holds, String wanted) {
    if (!holds) {
      blame("\"" + quantity.written() + "\" cannot be.", "Write a value of " + wanted + ".");
    }
    return holds;
  }

  private Optional<Quantity> parsed(String written, Kind kind) {
    try {
      return Optional.of(Quantity.parse(written).as(kind));
    } catch (Refused e) {
      var problem = e.problems().get(0);
      blame(problem.fault(), problem.remedy());
      return Optional.empty();
    }
  }
}

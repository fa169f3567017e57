package org.seafettle.json;

import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.seafettle.quantity.Quantity;

/** An object of a result file, written field by field in a fixed order. */
final class JsonRecord {

  /**
   * Digits that a double keeps for certain; beyond them lies only the noise of the arithmetic,
   * which may differ between machines.
   */
  private static final MathContext CERTAIN = new MathContext(15);

  private final ObjectNode node = JsonNodeFactory.instance.objectNode();

  ObjectNode node() {
    return node;
  }

  JsonRecord text(String name, String value) {
    node.put(name, value);
    return this;
  }

  JsonRecord text(String name, Optional<String> value) {
    value.ifPresent(v -> node.put(name, v));
    return this;
  }

  JsonRecord texts(String name, List<String> values) {
    var array = node.putArray(name);
    values.forEach(array::add);
    return this;
  }

  JsonRecord flag(String name, boolean value) {
    node.put(name, value);
    return this;
  }

  JsonRecord flag(String name, Optional<Boolean> value) {
    value.ifPresent(v -> node.put(name, v));
    return this;
  }

  JsonRecord whole(String name, int value) {
    node.put(name, value);
    return this;
  }

  JsonRecord whole(String name, OptionalInt value) {
    value.ifPresent(v -> node.put(name, v));
    return this;
  }

  JsonRecord number(String name, double value) {
    node.set(name, decimal(value));
    return this;
  }

  JsonRecord number(String name, OptionalDouble value) {
    value.ifPresent(v -> number(name, v));
    return this;
  }

  JsonRecord number(String name, BigDecimal value) {
    node.set(name, DecimalNode.valueOf(value));
    return this;
  }

  JsonRecord numbers(String name, List<Double> values) {
    var array = node.putArray(name);
    values.forEach(v -> array.add(decimal(v)));
    return this;
  }

  JsonRecord quantity(String name, Optional<Quantity> value) {
    value.ifPresent(q -> object(name, quantity(q)));
    return this;
  }

  /** The number and its UCUM code, and as it was written. */
  static JsonRecord quantity(Quantity quantity) {
    var record =
        new JsonRecord().number("value", quantity.amount()).text("unit", quantity.unit().code());
    quantity.plusMinus().ifPresent(u -> record.number("uncertainty", u));
    return record.text("written", quantity.written());
  }

  JsonRecord object(String name, JsonRecord value) {
    node.set(name, value.node);
    return this;
  }

  JsonRecord object(String name, Optional<JsonRecord> value) {
    value.ifPresent(v -> object(name, v));
    return this;
  }

  JsonRecord list(String name, Stream<JsonRecord> values) {
    var array = node.putArray(name);
    values.forEach(v -> array.add(v.node));
    return this;
  }

  private static DecimalNode decimal(double value) {
    var digits = new BigDecimal(value).round(CERTAIN).stripTrailingZeros();
    return DecimalNode.valueOf(digits.scale() < 0 ? digits.setScale(0) : digits);
  }
}

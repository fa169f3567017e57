package org.seafettle.formula;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * The inputs of one check value: {@code name=value;name=value}, the units in the names. A name
 * alone names data.
 */
final class Inputs {

  private final Map<String, String> values;
  private final Set<String> used = new TreeSet<>();

  private final String formula;

  private Inputs(Map<String, String> values, String formula) {
    this.values = values;
    this.formula = formula;
  }

  static Inputs read(String written, String formula) {
    var values = new LinkedHashMap<String, String>();
    for (var pair : written.equals("-") ? new String[0] : written.split(";")) {
      var parts = pair.split("=", 2);
      values.put(parts[0], parts.length == 1 ? "" : parts[1]);
    }
    return new Inputs(values, formula);
  }

  double number(String name) {
    return Double.parseDouble(text(name));
  }

  String text(String name) {
    used.add(name);
    var value = values.get(name);
    if (value == null) {
      throw new AssertionError("no input " + name + " in " + values);
    }
    return value;
  }

  boolean has(String name) {
    return values.containsKey(name);
  }

  /** Whether the row's formula has these words in it. */
  boolean asks(String words) {
    return formula.contains(words);
  }

  boolean yes(String name) {
    return text(name).equals("yes");
  }

  /** A formula that leaves an input unread would pass for the wrong reason. */
  void assertAllUsed() {
    assertThat(used).containsAll(values.keySet());
  }
}

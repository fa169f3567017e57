package org.seafettle.formula;

import java.util.List;
import java.util.Locale;
import org.seafettle.problem.Problem;
import org.seafettle.problem.Refused;

/**
 * A formula does not hold for what it was given. Beside the sentence for a terminal it carries what
 * a report needs to say the same in another language.
 */
public final class DoesNotHold extends Refused {

  private static final long serialVersionUID = 1L;

  private final String rule;
  private final String quantity;
  private final transient List<Value> values;

  /**
   * A value that the rule speaks of.
   *
   * @param number finite
   * @param unit as printed after it, empty for a plain number
   */
  public record Value(double number, String unit) {}

  private DoesNotHold(String rule, String quantity, List<Value> values, Problem problem) {
    super(problem);
    this.rule = rule;
    this.quantity = quantity;
    this.values = List.copyOf(values);
  }

  /**
   * A rule of one formula was not met.
   *
   * @param rule the word for it, in lower case with hyphens
   * @param fault the same as a sentence
   */
  public static DoesNotHold because(String rule, String fault, String remedy) {
    return new DoesNotHold(rule, "", List.of(), Problem.of(fault, remedy));
  }

  /**
   * A quantity lies where no formula of its kind holds.
   *
   * @param what the quantity with its article, such as {@code A water temperature}
   */
  static DoesNotHold of(String rule, String what, List<Value> values, String fault) {
    return new DoesNotHold(
        rule, word(what), values, Problem.of(fault, "Check the reading and its unit."));
  }

  /** {@code A cell's voltage} is called {@code cells-voltage}. */
  private static String word(String what) {
    return what.toLowerCase(Locale.ROOT)
        .replaceFirst("^(an?|the) ", "")
        .replace("'", "")
        .replaceAll("[^a-z0-9]+", "-");
  }

  /** The word for the rule, such as {@code outside}. */
  public String rule() {
    return rule;
  }

  /** The word for the quantity that the rule speaks of; empty where the rule says it all. */
  public String quantity() {
    return quantity;
  }

  /** Of {@code outside} the value and both ends of the range; else at most the value. */
  public List<Value> values() {
    return values;
  }
}

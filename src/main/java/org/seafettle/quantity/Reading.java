package org.seafettle.quantity;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.seafettle.problem.Refused;

/** Reads a quantity as people write it. */
final class Reading {

  /** More digits than any instrument aboard has. */
  private static final int MOST_DIGITS = 15;

  private static final String NUMBER = "\\d+(?:\\.\\d+)?";

  private static final String UNIT = "[^\\d\\s.,±+'’_-][^±]*|['’]";

  private static final Pattern QUANTITY =
      Pattern.compile("([+-]?" + NUMBER + ")\\s*(?:±\\s*(" + NUMBER + "))?\\s*(" + UNIT + ")?");

  private static final Pattern COMMA = Pattern.compile("\\d,\\d");
  private static final Pattern GROUPS = Pattern.compile("\\d[ '’_]\\d");
  private static final Pattern HALF_DECIMAL = Pattern.compile("(?:^|[^\\d])\\.\\d|\\d\\.(?:\\D|$)");
  private static final Pattern POWER_OF_TEN = Pattern.compile("[+-]?[\\d.]+[eE][+-]?\\d.*");
  private static final Pattern UNIT_BEFORE_PLUS_MINUS = Pattern.compile("\\d\\s*[^\\d\\s±.]+\\s*±");
  private static final Pattern NO_NUMBER = Pattern.compile("(?i)[+-]?(nan|inf|infinity|∞)?\\D*");

  private Reading() {}

  static Quantity parse(String written) {
    var tidy = tidy(written);
    var parts = QUANTITY.matcher(tidy);
    if (!parts.matches() || POWER_OF_TEN.matcher(tidy).matches()) {
      throw unreadable(tidy);
    }
    if (parts.group(1).length() > MOST_DIGITS) {
      throw Refused.because(
          "\"" + tidy + "\" has more digits than an instrument shows.",
          "Write the digits that were read.");
    }
    return quantity(parts);
  }

  private static Quantity quantity(Matcher parts) {
    var unit =
        Optional.ofNullable(parts.group(3))
            .map(name -> UnitNames.find(name, parts.group(1)))
            .orElse(MeasuredUnit.ONE);
    return new Quantity(
        new BigDecimal(parts.group(1)),
        Optional.ofNullable(parts.group(2)).map(BigDecimal::new),
        unit);
  }

  /** One sign for minus, one for plus-minus, one kind of space. */
  private static String tidy(String written) {
    return written
        .replaceAll("[\\u00A0\\u2007\\u2009\\u202F]", " ")
        .replaceAll("[\\u2212\\u2013]", "-")
        .replaceAll("\\+\\s?/?\\s?-", "±")
        .strip();
  }

  private static Refused unreadable(String tidy) {
    if (COMMA.matcher(tidy).find()) {
      return refused(
          tidy,
          "has a comma in its number",
          "Write decimals with a point, such as "
              + tidy.replaceFirst(",", ".")
              + ", and thousands without a sign between.");
    }
    if (POWER_OF_TEN.matcher(tidy).matches()) {
      return refused(tidy, "has a power of ten", "Write the number in full, such as 1200 rpm.");
    }
    if (UNIT_BEFORE_PLUS_MINUS.matcher(tidy).find()) {
      return refused(
          tidy, "has its unit in the middle", "Write the unit once, last: 12.42 ± 0.05 V.");
    }
    if (GROUPS.matcher(tidy).find()) {
      return refused(
          tidy,
          "has a gap in its number",
          "Write thousands without a sign between, such as 1250 h.");
    }
    if (HALF_DECIMAL.matcher(tidy).find()) {
      return refused(
          tidy, "has a decimal point without a digit on both sides", "Write 0.5 V or 12.0 V.");
    }
    if (NO_NUMBER.matcher(tidy).matches()) {
      return refused(tidy, "has no number", "Write a number and its unit, such as 12.4 V.");
    }
    return refused(
        tidy,
        "is not a quantity",
        "Write a number and its unit, such as 12.4 V or 12.42 ± 0.05 V.");
  }

  private static Refused refused(String tidy, String fault, String remedy) {
    return Refused.because("\"" + tidy + "\" " + fault + ".", remedy);
  }
}

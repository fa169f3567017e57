package org.seafettle.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.seafettle.quantity.MeasuredUnit;
import org.seafettle.quantity.Quantity;
import org.seafettle.survey.Component;
import org.seafettle.survey.Survey;

/** The small pieces that sentences are made of: numbers, dates, names and lists. */
final class Phrases {

  private static final char NO_BREAK_SPACE = '\u00A0';

  /** More digits than that no reading has, and no computed number deserves. */
  private static final MathContext DIGITS = new MathContext(4, RoundingMode.HALF_EVEN);

  private final Words words;
  private final Units units;
  private final Survey survey;

  Phrases(Words words, Units units, Survey survey) {
    this.words = words;
    this.units = units;
    this.survey = survey;
  }

  Words words() {
    return words;
  }

  String date(LocalDate date) {
    var pattern = DateTimeFormatter.ofPattern(words.say("format.date"), words.locale());
    return pattern.format(date).replace(' ', NO_BREAK_SPACE);
  }

  /** As narrow as a column of a table. */
  String shortDate(LocalDate date) {
    return DateTimeFormatter.ofPattern(words.say("format.date-short"), words.locale())
        .format(date)
        .replace(' ', NO_BREAK_SPACE);
  }

  String time(LocalDateTime time) {
    return date(time.toLocalDate())
        + NO_BREAK_SPACE
        + DateTimeFormatter.ofPattern(words.say("format.time"), words.locale()).format(time);
  }

  /** A quantity in the units asked for, with the digits that it was recorded with. */
  String quantity(Quantity quantity) {
    return recorded(quantity.to(units.instead(quantity.unit())));
  }

  /** The same without its uncertainty, for a narrow column. */
  String amount(Quantity quantity) {
    return quantity(new Quantity(quantity.amount(), Optional.empty(), quantity.unit()));
  }

  /**
   * A quantity as it was recorded; years and months in words, since their symbols are not known.
   */
  String recorded(Quantity quantity) {
    return switch (quantity.unit()) {
      case YEAR -> spelled("unit.year", quantity);
      case MONTH -> spelled("unit.month", quantity);
      default -> digits(quantity.written());
    };
  }

  private String spelled(String key, Quantity quantity) {
    var number = new Quantity(quantity.amount(), quantity.plusMinus(), MeasuredUnit.ONE).written();
    return digits(words.say(key + (number.equals("1") ? ".one" : ".other"), number));
  }

  /** A computed value in the units asked for, rounded to what it deserves. */
  String value(double value, MeasuredUnit unit) {
    var told = Quantity.of(value, unit);
    var instead = units.instead(unit);
    return recorded(
        new Quantity(plain(instead == unit ? value : told.in(instead)), Optional.empty(), instead));
  }

  /** A chance, 0 to 1; never told as certain. */
  String chance(double chance) {
    if (chance < 0.01) {
      return words.say("chance.least", percent(0.01));
    }
    return chance > 0.99 ? words.say("chance.most", percent(0.99)) : percent(chance);
  }

  /** A value with its uncertainty, which is told to two digits, and the value no finer. */
  String uncertain(double value, double uncertainty, MeasuredUnit unit) {
    var instead = units.instead(unit);
    var half = Quantity.of(uncertainty, unit).differenceIn(instead);
    var told = BigDecimal.valueOf(half).round(new MathContext(2, RoundingMode.HALF_UP));
    int decimals = Math.max(0, told.scale());
    var at =
        BigDecimal.valueOf(Quantity.of(value, unit).in(instead))
            .setScale(decimals, RoundingMode.HALF_EVEN);
    return recorded(new Quantity(at, Optional.of(told.setScale(decimals)), instead));
  }

  String percent(double share) {
    return digits(Math.round(share * 100) + " %");
  }

  /** An index as it is printed: rounded down. */
  static String index(double index) {
    return Integer.toString((int) Math.floor(index));
  }

  /** A number of the ledger, exact. */
  String exact(double number) {
    return digits(BigDecimal.valueOf(number).stripTrailingZeros().toPlainString());
  }

  /** An amount, or a range of amounts, in whole units of the currency. */
  String money(BigDecimal least, BigDecimal most, String currency) {
    var from = digits(currency + " " + whole(least));
    return whole(least).equals(whole(most))
        ? from
        : words.say("cost.from-to", from, digits(whole(most)));
  }

  private static String whole(BigDecimal amount) {
    return amount.setScale(0, RoundingMode.HALF_UP).toPlainString();
  }

  /** What a component is called in a sentence: {@code the port engine}. */
  String the(Component component) {
    return words.say("the." + kind(component), name(component));
  }

  /** What it is called in a table or a heading: {@code port engine}. */
  String title(Component component) {
    return words.say("title." + kind(component), name(component));
  }

  /** A name that already says what it is, such as {@code main-engine}, is not told so again. */
  private static String kind(Component component) {
    var kind = component.kind().name().toLowerCase(Locale.ROOT);
    return component.id().contains(kind) && component.kind() != Component.Kind.BOAT
        ? "named"
        : kind;
  }

  private String name(Component component) {
    return component.kind() == Component.Kind.BOAT ? survey.boat().name() : component.id();
  }

  /** A word of the survey or the catalogue as a reader reads it. */
  static String spaced(String word) {
    return word.replace('-', ' ');
  }

  String list(List<String> items) {
    return items.size() < 2
        ? String.join("", items)
        : words.say(
            "list.last",
            String.join(words.say("list.between"), items.subList(0, items.size() - 1)),
            items.get(items.size() - 1));
  }

  static String capital(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, text.offsetByCodePoints(0, 1)).toUpperCase(Locale.ROOT)
            + text.substring(text.offsetByCodePoints(0, 1));
  }

  static String small(String text) {
    boolean abbreviation = text.length() > 1 && Character.isUpperCase(text.charAt(1));
    return text.isEmpty() || abbreviation
        ? text
        : text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1);
  }

  private static BigDecimal plain(double value) {
    var rounded = BigDecimal.valueOf(value).round(DIGITS).stripTrailingZeros();
    return rounded.scale() < 0 ? rounded.setScale(0) : rounded;
  }

  private String digits(String written) {
    return written
        .replace(' ', NO_BREAK_SPACE)
        .replaceAll("(?<=\\d)\\.(?=\\d)", words.say("format.decimal"));
  }
}

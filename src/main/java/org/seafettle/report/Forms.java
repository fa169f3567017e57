package org.seafettle.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import org.seafettle.assessment.ConditionWord;
import org.seafettle.assessment.Grade;

/** How a language writes numbers, dates, money, grades and lists. */
public sealed class Forms permits Phrases {

  private static final char NO_BREAK_SPACE = '\u00A0';

  private final Words words;

  public Forms(Words words) {
    this.words = words;
  }

  public final Words words() {
    return words;
  }

  /** {@code {0}} the day, {@code {1}} the month's name, {@code {2}} the year, then as digits. */
  String date(LocalDate date) {
    return date("format.date", "format.months", date);
  }

  /** As narrow as a column of a table. */
  public String shortDate(LocalDate date) {
    return date("format.date-short", "format.months-short", date);
  }

  private String date(String form, String months, LocalDate date) {
    return words
        .say(
            form,
            Integer.toString(date.getDayOfMonth()),
            words.months(months).get(date.getMonthValue() - 1),
            Integer.toString(date.getYear()),
            two(date.getMonthValue()),
            two(date.getDayOfMonth()))
        .replace(' ', NO_BREAK_SPACE);
  }

  String time(LocalDateTime time) {
    return date(time.toLocalDate())
        + NO_BREAK_SPACE
        + words.say("format.time", two(time.getHour()), two(time.getMinute()));
  }

  private static String two(int number) {
    return number < 10 ? "0" + number : Integer.toString(number);
  }

  String percent(double share) {
    return digits(words.say("format.percent", Long.toString(Math.round(share * 100))));
  }

  /** An index as it is printed: rounded down. */
  static String index(double index) {
    return Integer.toString((int) Math.floor(index));
  }

  /** A number of the ledger, exact. */
  String exact(double number) {
    return exact(BigDecimal.valueOf(number));
  }

  /** A number without zeros behind it. */
  public String exact(BigDecimal number) {
    return digits(number.stripTrailingZeros().toPlainString());
  }

  /** An amount, or a range of amounts, in whole units of the currency. */
  public String money(BigDecimal least, BigDecimal most, String currency) {
    var from = whole(least);
    var to = whole(most);
    return digits(
        from.equals(to)
            ? words.say("format.money", currency, from)
            : words.say("format.money-range", currency, from, to));
  }

  private static String whole(BigDecimal amount) {
    return amount.setScale(0, RoundingMode.HALF_UP).toPlainString();
  }

  String list(List<String> items) {
    return items.size() < 2
        ? String.join("", items)
        : words.say(
            "list.last",
            String.join(words.say("list.between"), items.subList(0, items.size() - 1)),
            items.get(items.size() - 1));
  }

  /** All of them; where one has a comma or an "and" within, they are kept well apart. */
  String listApart(List<String> items) {
    var and = words.say("list.last", "", "").strip();
    boolean joined = items.stream().anyMatch(i -> i.contains(",") || i.contains(" " + and + " "));
    return joined ? series(items) : list(items);
  }

  /** Things of which one is enough; things that have commas within are kept well apart. */
  String oneOf(List<String> items) {
    if (items.size() < 2) {
      return String.join("", items);
    }
    var last = items.get(items.size() - 1);
    var others = items.subList(0, items.size() - 1);
    return items.stream().anyMatch(i -> i.contains(","))
        ? words.say("list.last-or-apart", series(others), last)
        : words.say("list.last-or", String.join(words.say("list.between"), others), last);
  }

  public static String capital(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, text.offsetByCodePoints(0, 1)).toUpperCase(Locale.ROOT)
            + text.substring(text.offsetByCodePoints(0, 1));
  }

  /** A title within a sentence, which in many languages begins with a small letter there. */
  String within(String title) {
    boolean abbreviation = title.length() > 1 && Character.isUpperCase(title.charAt(1));
    boolean small = words.say("format.title-within").equals("small");
    return title.isEmpty() || abbreviation || !small
        ? title
        : title.substring(0, 1).toLowerCase(words.locale()) + title.substring(1);
  }

  /** Things told one after the other that may have commas within. */
  String series(List<String> items) {
    return String.join(words.say("list.apart"), items);
  }

  /** The word of a grade, or that it has none. */
  public String condition(Grade grade) {
    return grade.graded() ? words.of("condition", grade.word()) : words.say("not-graded");
  }

  /** An index with its word. */
  String indexAndWord(double index) {
    return words.say(
        "index-and-word", index(index), words.of("condition", ConditionWord.of(index)));
  }

  /** An index that would be, with its word unless too little was seen to give one. */
  String indexInSentence(Grade grade, double index) {
    return grade.graded()
        ? words.say(
            "index-in-sentence", index(index), words.of("condition", ConditionWord.of(index)))
        : index(index);
  }

  /**
   * A citation in which no line ends between {@code p.} and the page, {@code TM} and its number.
   */
  static String pagesKept(String citation) {
    return citation.replaceAll("(?<=\\b(?:pp?\\.|TM)) (?=\\d)", String.valueOf(NO_BREAK_SPACE));
  }

  /** The index at worst with its word; empty where all was seen. */
  public String atWorst(Grade grade) {
    return grade.certain() ? "" : indexAndWord(grade.low());
  }

  final String digits(String written) {
    return written
        .replace(' ', NO_BREAK_SPACE)
        .replaceAll("(?<=\\d)\\.(?=\\d)", Matcher.quoteReplacement(words.say("format.decimal")));
  }
}

package org.seafettle.yard;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.stream.Collectors;
import org.seafettle.assessment.ConditionWord;
import org.seafettle.assessment.Grade;
import org.seafettle.report.Words;

/** Dates, hours and money as the overview tells them. */
record Figures(Words words) {

  private static final char NO_BREAK_SPACE = '\u00A0';

  String date(LocalDate date) {
    var months = words.say("format.months-short").split("\\s*,\\s*");
    return words
        .say(
            "format.date-short",
            Integer.toString(date.getDayOfMonth()),
            months[date.getMonthValue() - 1],
            Integer.toString(date.getYear()),
            two(date.getMonthValue()),
            two(date.getDayOfMonth()))
        .replace(' ', NO_BREAK_SPACE);
  }

  private static String two(int number) {
    return (number < 10 ? "0" : "") + number;
  }

  /** Empty where there are none. */
  String hours(Span hours) {
    var least = decimal(hours.least());
    var most = decimal(hours.most());
    if (hours.none()) {
      return "";
    }
    return least.equals(most)
        ? least
        : words.say("season.from-to", least, most).replace(' ', NO_BREAK_SPACE);
  }

  /** Each currency after the other, in whole units; empty where nothing is priced. */
  String money(Amounts amounts) {
    return amounts.byCurrency().entrySet().stream()
        .map(e -> money(e.getKey(), whole(e.getValue().least()), whole(e.getValue().most())))
        .collect(Collectors.joining(words.say("list.between")));
  }

  private String money(String currency, String least, String most) {
    var told =
        least.equals(most)
            ? words.say("format.money", currency, least)
            : words.say("format.money-range", currency, least, most);
    return told.replace(' ', NO_BREAK_SPACE);
  }

  private String decimal(BigDecimal number) {
    var plain = number.setScale(1, RoundingMode.HALF_UP).stripTrailingZeros();
    return (plain.scale() < 0 ? plain.setScale(0) : plain)
        .toPlainString()
        .replace(".", words.say("format.decimal"));
  }

  private static String whole(BigDecimal amount) {
    return amount.setScale(0, RoundingMode.HALF_UP).toPlainString();
  }

  String condition(Grade grade) {
    return grade.graded() ? words.of("condition", grade.word()) : words.say("not-graded");
  }

  /** The index at worst with its word; empty where all was seen. */
  String atWorst(Grade grade) {
    return grade.certain()
        ? ""
        : words.say(
            "index-and-word",
            Integer.toString(grade.printedAtWorst()),
            words.of("condition", ConditionWord.of(grade.low())));
  }
}

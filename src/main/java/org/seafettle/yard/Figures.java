package org.seafettle.yard;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.stream.Collectors;
import org.seafettle.assessment.ConditionWord;
import org.seafettle.assessment.Grade;
import org.seafettle.report.Words;

/** Dates, hours and money as the overview tells them. */
record Figures(Words words) {

  private static final char NO_BREAK_SPACE = '\u00A0';

  String date(LocalDate date) {
    return DateTimeFormatter.ofPattern(words.say("format.date-short"), words.locale())
        .format(date)
        .replace(' ', NO_BREAK_SPACE);
  }

  /** Empty where there are none. */
  String hours(Span hours) {
    return hours.none() ? "" : fromTo("", decimal(hours.least()), decimal(hours.most()));
  }

  /** Each currency after the other, in whole units; empty where nothing is priced. */
  String money(Amounts amounts) {
    return amounts.byCurrency().entrySet().stream()
        .map(
            e ->
                fromTo(
                    e.getKey() + NO_BREAK_SPACE,
                    whole(e.getValue().least()),
                    whole(e.getValue().most())))
        .collect(Collectors.joining(words.say("list.between")));
  }

  private String fromTo(String before, String least, String most) {
    return least.equals(most)
        ? before + least
        : before + words.say("cost.from-to", least, most).replace(' ', NO_BREAK_SPACE);
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

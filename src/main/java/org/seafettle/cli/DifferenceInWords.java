package org.seafettle.cli;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.seafettle.assessment.Grade;
import org.seafettle.assessment.Result;
import org.seafettle.difference.Change;
import org.seafettle.difference.Difference;
import org.seafettle.difference.GradeChange;
import org.seafettle.difference.ReadingChange;
import org.seafettle.json.SurveySource;
import org.seafettle.quantity.Quantity;
import org.seafettle.survey.Component;
import org.seafettle.survey.Survey;
import org.seafettle.survey.Word;

/** Two surveys side by side in words, for a terminal. */
final class DifferenceInWords {

  private static final int NAME = 20;
  private static final int CELL = 21;

  private final Difference difference;
  private final SurveySource then;
  private final SurveySource now;
  private final List<String> lines = new ArrayList<>();

  DifferenceInWords(Difference difference, SurveySource then, SurveySource now) {
    this.difference = difference;
    this.then = then;
    this.now = now;
  }

  List<String> lines() {
    head("then", then);
    head("now", now);
    paragraph(
        "Both are judged by the catalogue of today, version "
            + difference.now().catalogue().version()
            + ", so that what differs is the boat and not the rules.");
    for (var kind : Change.Kind.values()) {
      changes(kind);
    }
    grades();
    readings();
    return lines;
  }

  private void head(String when, SurveySource surveyed) {
    var boat = surveyed.survey().boat();
    lines.add(
        Layout.line(
            Layout.pad(when, 4),
            surveyed.day().toString(),
            boat.name() + boat.hin().map(hin -> " (" + hin + ")").orElse(""),
            surveyed.survey().occasion().id()));
  }

  private void changes(Change.Kind kind) {
    var of = difference.of(kind);
    var title = title(kind);
    if (of.isEmpty() || title.isEmpty()) {
      return;
    }
    heading(title.get() + " (" + of.size() + ")");
    of.forEach(change -> lines.addAll(Layout.paragraph("  ", told(change))));
  }

  /** What is well and was not open is not worth a line. */
  private static Optional<String> title(Change.Kind kind) {
    return switch (kind) {
      case WORSE -> Optional.of("Worse");
      case NEW -> Optional.of("New");
      case FIRST_SEEN -> Optional.of("Seen for the first time, it may have been there then");
      case STILL_OPEN -> Optional.of("Open as before");
      case BETTER -> Optional.of("Better, still open");
      case PUT_RIGHT -> Optional.of("Put right");
      case OPEN_NOT_SEEN -> Optional.of("Open then and not seen this time");
      case GONE -> Optional.of("Open then and no longer on board");
      case WELL_NOT_SEEN -> Optional.of("Well then and not seen this time");
      case WELL -> Optional.empty();
    };
  }

  private String told(Change change) {
    var result = change.result();
    var on = component(difference.now().survey(), result.component());
    var title = on + ": " + result.check().guidance().title();
    return switch (change.kind()) {
      case STILL_OPEN, FIRST_SEEN -> title + ": " + state(change.now());
      case OPEN_NOT_SEEN, GONE -> title + ": " + state(change.then()) + " then";
      case WELL_NOT_SEEN, WELL -> title;
      case WORSE, NEW, BETTER, PUT_RIGHT ->
          title + ": " + state(change.then()) + " then, " + state(change.now()) + " now";
    };
  }

  private static String state(Optional<Result> result) {
    return result
        .flatMap(Result::seen)
        .map(
            seen ->
                seen.outcome().saying().brief()
                    + " ("
                    + (seen.settled() ? "put right on the spot" : Spoken.word(seen.counts()))
                    + ")")
        .orElse("not seen");
  }

  private void grades() {
    heading("Index as far as seen, to that at worst");
    lines.add(row("", then.day().toString(), now.day().toString(), ""));
    for (var grade : difference.grades()) {
      lines.add(
          row(
              name(grade),
              grade.then().map(DifferenceInWords::grade).orElse("–"),
              grade(grade.now()),
              proof(grade)));
      printed(grade, then, now);
    }
    paragraph(
        "A change is proven only where the ranges do not overlap and what is open was looked at"
            + " both times.");
  }

  /** What a report printed when it was made, by the rules of that day. */
  private void printed(GradeChange grade, SurveySource then, SurveySource now) {
    var before = printed(grade, then);
    var today = printed(grade, now);
    if (before.isPresent() || today.isPresent()) {
      lines.add(row("    as printed", before.orElse(""), today.orElse(""), ""));
    }
  }

  private static Optional<String> printed(GradeChange grade, SurveySource surveyed) {
    return surveyed
        .printed()
        .flatMap(p -> p.grade(grade.engine().id(), grade.subsystem().map(Word::word)))
        .map(g -> index(g.index(), g.atWorst(), g.word().map(w -> w.replace('-', ' '))));
  }

  private String name(GradeChange grade) {
    return grade
        .subsystem()
        .map(s -> "  " + Spoken.word(s))
        .orElse(component(difference.now().survey(), grade.engine()));
  }

  private static String grade(Grade grade) {
    return index(
        grade.printed(),
        grade.printedAtWorst(),
        grade.graded() ? Optional.of(Spoken.word(grade.word())) : Optional.empty());
  }

  private static String index(int index, int atWorst, Optional<String> word) {
    return index + (index == atWorst ? "" : " to " + atWorst) + " " + word.orElse("not graded");
  }

  private static String proof(GradeChange grade) {
    return switch (grade.proof()) {
      case BETTER -> "better, proven";
      case WORSE -> "worse, proven";
      case SAME -> "the same";
      case NOT_PROVEN -> "no proven change";
      case SEEN_ONCE -> "not the same was looked at";
      case NOTHING_BEFORE -> "nothing to compare";
    };
  }

  private void readings() {
    var telling = difference.readings().stream().filter(ReadingChange::first).toList();
    if (telling.isEmpty()) {
      return;
    }
    heading("Readings");
    for (var reading : telling) {
      lines.add(
          "  "
              + component(difference.now().survey(), reading.component())
              + ": "
              + reading.check().guidance().title());
      lines.add(
          row("", value(reading, reading.then()), value(reading, reading.now()), proof(reading)));
    }
    paragraph(
        "A reading has changed where the difference is larger than its uncertainty (k = 2), that of"
            + " both readings together.");
  }

  private static String value(ReadingChange reading, ReadingChange.Value value) {
    var recorded = value.recorded();
    return recorded.plusMinus().isPresent() || value.uncertainty().isEmpty()
        ? recorded.written()
        : recorded.written() + " (± " + usual(value.uncertainty().getAsDouble(), reading) + ")";
  }

  private static String usual(double uncertainty, ReadingChange reading) {
    var rounded = new BigDecimal(uncertainty).round(new MathContext(2));
    return new Quantity(
            new BigDecimal(Spoken.number(rounded.doubleValue())),
            Optional.empty(),
            reading.spec().unit())
        .written();
  }

  private static String proof(ReadingChange reading) {
    return switch (reading.proof()) {
      case RISEN -> "risen";
      case FALLEN -> "fallen";
      case NOT_PROVEN -> "no proven change";
      case UNKNOWN -> "uncertainty not known";
    };
  }

  /** A name that already says what it is, such as {@code main-engine}, is not told so again. */
  private static String component(Survey survey, Component component) {
    var kind =
        switch (component.kind()) {
          case BOAT -> "";
          case ENGINE -> "engine";
          case BATTERY -> "battery";
          case PUMP -> "pump";
        };
    if (kind.isEmpty()) {
      return survey.boat().name();
    }
    return component.id().contains(kind) ? component.id() : component.id() + " " + kind;
  }

  private static String row(String name, String then, String now, String change) {
    return Layout.line(
        Layout.pad(name, NAME), Layout.pad(then, CELL), Layout.pad(now, CELL), change);
  }

  private void heading(String text) {
    lines.add("");
    lines.add(text);
  }

  private void paragraph(String text) {
    lines.addAll(Layout.paragraph("", text));
  }
}

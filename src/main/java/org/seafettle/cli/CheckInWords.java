package org.seafettle.cli;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.seafettle.catalogue.Caution;
import org.seafettle.catalogue.Check;
import org.seafettle.catalogue.Criterion;
import org.seafettle.catalogue.FindingClass;
import org.seafettle.catalogue.Interval;
import org.seafettle.catalogue.Outcome;
import org.seafettle.catalogue.ReadingSpec;
import org.seafettle.catalogue.Steps;
import org.seafettle.survey.Component;
import org.seafettle.survey.Word;

/** A check in words, for whoever lays them out. */
record CheckInWords(Check check) {

  /**
   * A line of its own, with what it is about.
   *
   * @param about what it is about
   * @param text what is said of it
   */
  record Line(String about, String text) {}

  /** What it is on, and for what. */
  String place() {
    return Spoken.word(check.subsystem())
        + ", on "
        + (check.on() == Component.Kind.BOAT ? "the " : "each ")
        + check.on().name().toLowerCase(Locale.ROOT)
        + Spoken.scope(check.scope());
  }

  /** The purposes of the surveys that have to cover it; empty where none has to. */
  String expected() {
    return check.expected().stream().map(Word::word).collect(Collectors.joining(", "));
  }

  /** The gravest class that it can reveal. */
  String gravest() {
    return Spoken.word(
        check.outcomes().stream()
            .map(Outcome::findingClass)
            .reduce(FindingClass.OK, FindingClass::worse));
  }

  List<Line> readings() {
    return check.criterion().readings().stream()
        .map(reading -> new Line(reading.name(), reading(reading)))
        .toList();
  }

  private static String reading(ReadingSpec spec) {
    var unit = spec.unit().symbol();
    var text = new StringBuilder();
    text.append(unit.isEmpty() ? "a plain number" : "in " + unit);
    text.append(spec.many() ? ", one for each" : "");
    text.append(", plausible from ").append(Spoken.number(spec.least()));
    text.append(" to ").append(Spoken.number(spec.most()));
    spec.usualUncertainty()
        .ifPresent(u -> text.append("; usually within ±" + Spoken.number(u) + " (k = 2)"));
    spec.condition()
        .ifPresent(
            c ->
                text.append("; ")
                    .append(c.says())
                    .append(" (condition \"" + c.word() + "\"), otherwise within ±")
                    .append(Spoken.number(c.otherwise())));
    return text.toString();
  }

  /** When it falls due; nothing where it is no matter of time. */
  List<String> due() {
    if (check.criterion() instanceof Interval interval) {
      return interval.due().cases().stream()
          .map(c -> "due " + due(c.value()) + Spoken.scope(c.scope()))
          .toList();
    }
    return check.guidance().again().stream()
        .mapToObj(months -> "to be looked at again after " + months + " months (common practice)")
        .toList();
  }

  private static String due(Interval.Due due) {
    var parts =
        Stream.of(
                due.hours().stream().mapToObj(h -> Spoken.number(h) + " h"),
                due.months().stream().mapToObj(m -> Spoken.number(m) + " months"))
            .flatMap(part -> part)
            .toList();
    return "after "
        + String.join(" or ", parts)
        + (parts.size() > 1 ? ", whichever comes first" : "");
  }

  /** The number line by case, each about the number that is held against it. */
  List<Line> limits() {
    var criterion = check.criterion();
    if (criterion instanceof Interval interval) {
      return List.of(new Line("share used up", steps(interval.steps())));
    }
    return criterion instanceof Criterion.Numbered numbered
        ? numbered.limits().steps().cases().stream()
            .map(c -> new Line(number(numbered), steps(c.value()) + Spoken.scope(c.scope())))
            .toList()
        : List.of();
  }

  private static String number(Criterion.Numbered criterion) {
    var name = criterion.readings().get(0).name();
    if (criterion instanceof Criterion.Derived derived) {
      name = Spoken.word(derived.derivation());
    } else if (criterion instanceof Criterion.Spread) {
      name = "highest less lowest " + name;
    }
    var unit = criterion.unit().symbol();
    return unit.isEmpty() ? name : name + " in " + unit;
  }

  private static String steps(Steps steps) {
    var text = new StringBuilder(steps.names().get(0));
    for (int i = 0; i < steps.edges().size(); i++) {
      text.append(" | ").append(Spoken.number(steps.edges().get(i)));
      text.append(" | ").append(steps.names().get(i + 1));
    }
    return text.toString();
  }

  /** Whether a limit of the engine maker, given in the survey, comes before the catalogue's. */
  boolean makerComesFirst() {
    return check.criterion() instanceof Criterion.Numbered numbered
        && numbered.limits().withinMaker().isPresent();
  }

  List<OutcomeInWords> outcomes() {
    return check.outcomes().stream().map(OutcomeInWords::of).toList();
  }

  /** The cautions of all that may have to be done. */
  List<Caution> cautions() {
    return check.outcomes().stream()
        .flatMap(o -> o.advice().stream())
        .flatMap(a -> a.action().cautions().stream())
        .distinct()
        .toList();
  }
}

package org.seafettle.cli;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.seafettle.catalogue.Catalogue;
import org.seafettle.catalogue.Check;
import org.seafettle.catalogue.Criterion;
import org.seafettle.catalogue.Interval;
import org.seafettle.catalogue.Outcome;
import org.seafettle.catalogue.Pattern;
import org.seafettle.catalogue.ReadingSpec;
import org.seafettle.catalogue.Scope;
import org.seafettle.catalogue.Steps;
import org.seafettle.survey.Word;

/** A check in words, for a terminal. */
final class Explanation {

  private final Catalogue catalogue;
  private final Check check;
  private final List<String> lines = new ArrayList<>();

  Explanation(Catalogue catalogue, Check check) {
    this.catalogue = catalogue;
    this.check = check;
  }

  List<String> lines() {
    lines.add(check.guidance().title() + " (" + check.id() + ")");
    lines.add(
        Layout.spoken(check.subsystem())
            + ", on "
            + (check.on() == org.seafettle.survey.Component.Kind.BOAT ? "the " : "each ")
            + check.on().name().toLowerCase(Locale.ROOT)
            + scope(check.scope()));
    howAndWhy();
    readings();
    limits();
    outcomes();
    cautions();
    patterns();
    return lines;
  }

  private void howAndWhy() {
    heading("How");
    int n = 1;
    for (var step : check.guidance().how()) {
      lines.addAll(Layout.paragraph("  " + n++ + " ", step));
    }
    if (!check.guidance().instrument().isEmpty()) {
      lines.addAll(Layout.paragraph("  with ", check.guidance().instrument()));
    }
    heading("Why");
    lines.addAll(Layout.paragraph("  ", check.guidance().why()));
    if (!check.expected().isEmpty()) {
      lines.addAll(
          Layout.paragraph(
              "  expected for ",
              check.expected().stream().map(Word::word).collect(Collectors.joining(", "))));
    }
  }

  private void readings() {
    if (check.criterion().readings().isEmpty()) {
      return;
    }
    heading("Readings");
    for (var reading : check.criterion().readings()) {
      lines.addAll(Layout.paragraph("  " + reading.name() + ": ", reading(reading)));
    }
  }

  private static String reading(ReadingSpec spec) {
    var unit = spec.unit().symbol();
    var text = new StringBuilder();
    text.append(unit.isEmpty() ? "a plain number" : "in " + unit);
    text.append(spec.many() ? ", one for each" : "");
    text.append(", plausible from ").append(number(spec.least()));
    text.append(" to ").append(number(spec.most()));
    spec.usualUncertainty()
        .ifPresent(u -> text.append("; usually within ±").append(number(u)).append(" (k = 2)"));
    spec.condition()
        .ifPresent(
            c ->
                text.append("; ")
                    .append(c.says())
                    .append(" (condition \"")
                    .append(c.word())
                    .append("\"), otherwise within ±")
                    .append(number(c.otherwise())));
    return text.toString();
  }

  private void limits() {
    var criterion = check.criterion();
    if (criterion instanceof Criterion.Choice) {
      return;
    }
    heading("Limits");
    if (criterion instanceof Interval interval) {
      for (var due : interval.due().cases()) {
        lines.add("  due " + due(due.value()) + scope(due.scope()));
      }
      lines.addAll(Layout.paragraph("  share used up: ", steps(interval.steps())));
      return;
    }
    var limits = ((Criterion.Numbered) criterion).limits();
    for (var steps : limits.steps().cases()) {
      lines.addAll(Layout.paragraph("  ", steps(steps.value()) + scope(steps.scope())));
    }
    if (limits.withinMaker().isPresent()) {
      lines.add("  A limit from the engine maker's manual, given in the survey, comes first.");
    }
  }

  private static String due(Interval.Due due) {
    var hours = due.hours().isPresent() ? number(due.hours().getAsDouble()) + " h" : "";
    var months = due.months().isPresent() ? number(due.months().getAsDouble()) + " months" : "";
    return hours.isEmpty() || months.isEmpty()
        ? "after " + hours + months
        : "after " + hours + " or " + months + ", whichever comes first";
  }

  private static String steps(Steps steps) {
    var text = new StringBuilder(steps.names().get(0));
    for (int i = 0; i < steps.edges().size(); i++) {
      text.append(" | ")
          .append(number(steps.edges().get(i)))
          .append(" | ")
          .append(steps.names().get(i + 1));
    }
    return text.toString();
  }

  private void outcomes() {
    heading("What it can find");
    for (var outcome : check.outcomes()) {
      lines.addAll(
          Layout.paragraph(
              "  ",
              outcome.name()
                  + " ("
                  + Layout.spoken(outcome.findingClass())
                  + scope(outcome.scope())
                  + "): "
                  + outcome.saying().observed()
                  + (outcome.saying().means().isEmpty() ? "" : " " + outcome.saying().means())));
      outcome.advice().ifPresent(advice -> advice(advice));
      lines.addAll(Layout.paragraph("      limit: ", source(outcome)));
    }
  }

  private void advice(Outcome.Advice advice) {
    advice.stop().ifPresent(stop -> lines.add("      " + upper(Layout.spoken(stop)) + "."));
    var who =
        advice.action().who().stream().map(Layout::spoken).collect(Collectors.joining(" or "));
    lines.addAll(
        Layout.paragraph(
            "      do: ",
            advice.action().does()
                + " ("
                + who
                + "; "
                + Layout.spoken(advice.by())
                + (advice.requiredByLaw() ? "; required by law where that law applies" : "")
                + ")"));
  }

  private void cautions() {
    var cautions =
        check.outcomes().stream()
            .flatMap(o -> o.advice().stream())
            .flatMap(a -> a.action().cautions().stream())
            .distinct()
            .toList();
    if (!cautions.isEmpty()) {
      heading("Cautions");
      cautions.forEach(c -> lines.addAll(Layout.paragraph("  ", c.text())));
    }
  }

  private static String source(Outcome outcome) {
    var citation = outcome.citation();
    var rank = Layout.spoken(citation.source().rank());
    return switch (citation.source().rank()) {
      case COMMON_PRACTICE, PROGRAM_DEFAULT -> rank;
      default -> citation.text() + " (" + rank + ")";
    };
  }

  private void patterns() {
    var own =
        catalogue.patterns().stream()
            .filter(p -> p.needs().stream().anyMatch(this::needs))
            .toList();
    if (own.isEmpty()) {
      return;
    }
    heading("Together with other findings");
    own.forEach(p -> lines.addAll(Layout.paragraph("  ", p.cause() + " " + p.reasoning())));
  }

  private boolean needs(Pattern.Need need) {
    return need.anyOf().stream().anyMatch(sign -> sign.check().equals(check.id()));
  }

  private static String scope(Scope scope) {
    var words = new ArrayList<String>();
    scope.engines().stream().sorted().map(Layout::spoken).forEach(words::add);
    scope.circuits().stream().sorted().map(Layout::spoken).forEach(words::add);
    scope.waters().stream().sorted().map(w -> Layout.spoken(w) + " water").forEach(words::add);
    scope.chemistries().stream().sorted().map(Layout::spoken).forEach(words::add);
    scope.afloat().ifPresent(afloat -> words.add(afloat ? "afloat" : "ashore"));
    scope
        .features()
        .forEach((f, has) -> words.add((has ? "with " : "without ") + Layout.spoken(f)));
    return words.isEmpty() ? "" : "; for " + String.join(", ", words);
  }

  private void heading(String text) {
    lines.add("");
    lines.add(text);
  }

  private static String upper(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  private static String number(double value) {
    return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }
}

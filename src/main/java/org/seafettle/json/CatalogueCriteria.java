package org.seafettle.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.seafettle.catalogue.Cases;
import org.seafettle.catalogue.Condition;
import org.seafettle.catalogue.Criterion;
import org.seafettle.catalogue.Derivation;
import org.seafettle.catalogue.Interval;
import org.seafettle.catalogue.Limits;
import org.seafettle.catalogue.ReadingSpec;
import org.seafettle.catalogue.Steps;
import org.seafettle.problem.Refused;
import org.seafettle.quantity.MeasuredUnit;
import org.seafettle.survey.Word;

/** Reads how a check is judged. */
final class CatalogueCriteria {

  private static final List<String> KINDS =
      List.of("choice", "scale", "derived", "spread", "interval");
  private static final Steps NO_STEPS = new Steps(List.of(""), List.of());

  private CatalogueCriteria() {}

  static Criterion of(CatalogueEntry check) {
    var entry = check.entry("criterion");
    if (entry.isEmpty()) {
      check.fault("It is not said how it is judged.", "Add a criterion.");
      return new Criterion.Choice();
    }
    return read(entry.get());
  }

  private static Criterion read(CatalogueEntry entry) {
    var kind = entry.text("kind");
    switch (kind) {
      case "choice":
        entry.only("kind");
        return new Criterion.Choice();
      case "scale":
        entry.only("kind", "reading", "steps", "maker");
        return new Criterion.Scale(reading(entry), limits(entry));
      case "derived":
        entry.only("kind", "derive", "unit", "readings", "steps", "maker");
        return derived(entry);
      case "spread":
        entry.only("kind", "relative", "unit", "reading", "steps", "maker");
        return new Criterion.Spread(
            reading(entry), entry.flag("relative").orElse(false), unit(entry), limits(entry));
      case "interval":
        entry.only("kind", "due", "steps");
        return interval(entry);
      default:
        entry.fault(
            "\"" + kind + "\" is no kind of criterion.",
            "Write one of: " + String.join(", ", KINDS) + ".");
        return new Criterion.Choice();
    }
  }

  private static Criterion derived(CatalogueEntry entry) {
    var derivation = entry.word(Derivation.class, "derive");
    if (!entry.has("derive")) {
      entry.fault(
          "It is not said what is computed.",
          "Add \"derive\" with one of: " + String.join(", ", Word.all(Derivation.class)) + ".");
    }
    var readings = entry.entries("readings").stream().map(r -> reading(r, false)).toList();
    return derivation
        .<Criterion>map(d -> new Criterion.Derived(d, readings, unit(entry), limits(entry)))
        .orElseGet(Criterion.Choice::new);
  }

  private static Criterion interval(CatalogueEntry entry) {
    var cases = new ArrayList<Cases.Case<Interval.Due>>();
    for (var due : entry.entries("due")) {
      due.only("for", "hours", "months");
      if (due.has("hours") || due.has("months")) {
        cases.add(
            new Cases.Case<>(
                CatalogueScopes.of(due),
                new Interval.Due(due.maybe("hours"), due.maybe("months"))));
      } else {
        due.fault("The interval has no end.", "Give hours, months, or both.");
      }
    }
    return new Interval(new Cases<>(cases), steps(entry));
  }

  private static ReadingSpec reading(CatalogueEntry criterion) {
    return criterion
        .entry("reading")
        .map(r -> reading(r, true))
        .orElseGet(
            () -> {
              criterion.fault("It is not said what is read.", "Add \"reading\".");
              return new ReadingSpec(
                  "",
                  MeasuredUnit.ONE,
                  0,
                  1,
                  false,
                  false,
                  java.util.OptionalDouble.empty(),
                  Optional.empty());
            });
  }

  private static ReadingSpec reading(CatalogueEntry entry, boolean required) {
    entry.only("name", "unit", "plausible", "required", "many", "usual-uncertainty", "condition");
    var plausible = entry.range("plausible");
    if (!(plausible[0] < plausible[1])) {
      entry.fault("No value is plausible.", "Write the lower value first.");
      plausible = new double[] {0, 1};
    }
    return new ReadingSpec(
        entry.text("name"),
        unit(entry),
        plausible[0],
        plausible[1],
        entry.flag("required").orElse(required),
        entry.flag("many").orElse(false),
        entry.maybe("usual-uncertainty"),
        entry.entry("condition").map(CatalogueCriteria::condition));
  }

  private static Condition condition(CatalogueEntry entry) {
    entry.only("word", "says", "otherwise");
    return new Condition(entry.text("word"), entry.text("says"), entry.number("otherwise"));
  }

  private static MeasuredUnit unit(CatalogueEntry entry) {
    try {
      return MeasuredUnit.of(entry.text("unit"));
    } catch (Refused unknown) {
      unknown.problems().forEach(p -> entry.fault(p.fault(), p.remedy()));
      return MeasuredUnit.ONE;
    }
  }

  private static Limits limits(CatalogueEntry entry) {
    var maker = entry.entry("maker").map(m -> m.only("below", "within", "above"));
    Function<String, Optional<String>> name =
        field -> maker.filter(m -> m.has(field)).map(m -> m.text(field));
    return new Limits(
        byCase(entry), name.apply("below"), name.apply("within"), name.apply("above"));
  }

  /** One list of steps, or several, each with what it is for; none where only makers know. */
  private static Cases<Steps> byCase(CatalogueEntry entry) {
    if (!entry.has("steps") && entry.has("maker")) {
      return new Cases<>(List.of());
    }
    if (!entry.raw("steps").path(0).isObject()) {
      return Cases.always(steps(entry));
    }
    var cases = new ArrayList<Cases.Case<Steps>>();
    for (var one : entry.entries("steps")) {
      one.only("for", "steps");
      cases.add(new Cases.Case<>(CatalogueScopes.of(one), steps(one)));
    }
    return new Cases<>(cases);
  }

  /** Outcomes and the edges between them, by turns. */
  private static Steps steps(CatalogueEntry entry) {
    var names = new ArrayList<String>();
    var edges = new ArrayList<Double>();
    boolean byTurns = true;
    for (JsonNode item : entry.raw("steps")) {
      boolean wantsName = (names.size() + edges.size()) % 2 == 0;
      byTurns &= wantsName ? item.isTextual() : item.isNumber();
      if (wantsName) {
        names.add(item.asText());
      } else {
        edges.add(item.asDouble());
      }
    }
    if (!byTurns || names.size() != edges.size() + 1) {
      entry.fault(
          "The steps are not outcomes and edges by turns.",
          "Begin and end with an outcome, with one number between each two.");
      return NO_STEPS;
    }
    return rising(entry, names, edges);
  }

  private static Steps rising(CatalogueEntry entry, List<String> names, List<Double> edges) {
    try {
      return new Steps(names, edges);
    } catch (IllegalArgumentException e) {
      entry.fault("The edges do not rise: " + edges + ".", "Order them from low to high.");
      return NO_STEPS;
    }
  }
}

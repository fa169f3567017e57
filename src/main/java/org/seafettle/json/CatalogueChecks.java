package org.seafettle.json;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.seafettle.catalogue.Check;
import org.seafettle.catalogue.Criterion;
import org.seafettle.catalogue.Deadline;
import org.seafettle.catalogue.FindingClass;
import org.seafettle.catalogue.Outcome;
import org.seafettle.catalogue.StopOrder;
import org.seafettle.catalogue.Subsystem;
import org.seafettle.problem.Spelling;
import org.seafettle.survey.Component;
import org.seafettle.survey.Purpose;

/** Reads checks with their outcomes. */
final class CatalogueChecks {

  private static final Map<String, Component.Kind> KINDS =
      Map.of(
          "engine", Component.Kind.ENGINE,
          "battery", Component.Kind.BATTERY,
          "pump", Component.Kind.PUMP,
          "boat", Component.Kind.BOAT);

  private final CatalogueVocabulary vocabulary;

  CatalogueChecks(CatalogueVocabulary vocabulary) {
    this.vocabulary = vocabulary;
  }

  Check read(CatalogueEntry entry, Subsystem subsystem) {
    entry.only(
        "id",
        "on",
        "for",
        "title",
        "how",
        "why",
        "instrument",
        "since",
        "again",
        "expected",
        "criterion",
        "outcomes");
    var criterion = CatalogueCriteria.of(entry);
    return new Check(
        entry.text("id"),
        subsystem,
        kind(entry),
        CatalogueScopes.of(entry),
        guidance(entry),
        criterion,
        outcomes(entry, criterion instanceof Criterion.Choice),
        expected(entry));
  }

  private static EnumSet<Purpose> expected(CatalogueEntry entry) {
    var expected = EnumSet.noneOf(Purpose.class);
    expected.addAll(entry.words(Purpose.class, "expected"));
    return expected;
  }

  private static Component.Kind kind(CatalogueEntry entry) {
    var word = entry.text("on");
    var kind = Optional.ofNullable(KINDS.get(word));
    if (kind.isEmpty()) {
      entry.fault("\"" + word + "\" is no kind of component.", Spelling.hint(word, KINDS.keySet()));
    }
    return kind.orElse(Component.Kind.BOAT);
  }

  private static Check.Guidance guidance(CatalogueEntry entry) {
    var how = entry.texts("how");
    if (how.isEmpty()) {
      entry.fault("It is not said how it is done.", "Add \"how\", one sentence a step.");
    }
    return new Check.Guidance(
        entry.text("title"),
        how,
        entry.text("why"),
        entry.text("instrument"),
        entry.text("since"),
        again(entry));
  }

  private static OptionalInt again(CatalogueEntry entry) {
    var months = entry.maybe("again");
    months.stream()
        .filter(n -> n < 1 || n != Math.rint(n))
        .forEach(n -> entry.fault("\"again\" is no number of months.", "Write 12 for a year."));
    return months.isPresent() ? OptionalInt.of((int) months.getAsDouble()) : OptionalInt.empty();
  }

  private List<Outcome> outcomes(CatalogueEntry check, boolean sayable) {
    var outcomes = new ArrayList<Outcome>();
    for (var entry : check.entries("outcomes")) {
      var named = entry.has("is") ? entry.called(check.path() + ", " + entry.text("is")) : entry;
      outcome(named, sayable).ifPresent(outcomes::add);
    }
    return outcomes;
  }

  private Optional<Outcome> outcome(CatalogueEntry entry, boolean sayable) {
    entry.only(
        "is",
        "for",
        "sayable",
        "class",
        "observed",
        "brief",
        "means",
        "stop",
        "do",
        "by",
        "law",
        "source");
    var findingClass = findingClass(entry);
    var saying =
        new Outcome.Saying(entry.text("observed"), entry.text("brief"), entry.text("means", ""));
    var advice = advice(entry);
    try {
      return Optional.of(
          new Outcome(
              entry.text("is"),
              CatalogueScopes.of(entry),
              findingClass,
              saying,
              advice,
              vocabulary.citation(entry),
              entry.flag("sayable").orElse(sayable)));
    } catch (IllegalArgumentException contradiction) {
      contradiction(entry, findingClass, advice);
      return Optional.empty();
    }
  }

  private static void contradiction(
      CatalogueEntry entry, FindingClass findingClass, Optional<Outcome.Advice> advice) {
    boolean stops = findingClass == FindingClass.STOP;
    if (advice.isEmpty()) {
      entry.fault("It says that something is wrong, not what to do.", "Add \"do\" and \"by\".");
    } else if (stops) {
      entry.fault("A stop has to say what must not be done.", "Add \"stop\".");
    } else {
      entry.fault("Only a stop says what must not be done.", "Remove \"stop\".");
    }
  }

  private static FindingClass findingClass(CatalogueEntry entry) {
    if (!entry.has("class")) {
      entry.fault("It is not said how grave it is.", "Add \"class\".");
    }
    return entry.word(FindingClass.class, "class").orElse(FindingClass.OK);
  }

  private Optional<Outcome.Advice> advice(CatalogueEntry entry) {
    var stop = entry.word(StopOrder.class, "stop");
    var by = entry.word(Deadline.class, "by");
    if (!entry.has("do")) {
      if (by.isPresent() || stop.isPresent() || entry.has("law")) {
        entry.fault("It says by when, not what to do.", "Add \"do\".");
      }
      return Optional.empty();
    }
    if (!entry.has("by")) {
      entry.fault("It is not said by when.", "Add \"by\".");
    }
    return vocabulary
        .action(entry)
        .map(
            action ->
                new Outcome.Advice(
                    action,
                    by.orElse(Deadline.AS_CONVENIENT),
                    stop,
                    entry.flag("law").orElse(false)));
  }
}

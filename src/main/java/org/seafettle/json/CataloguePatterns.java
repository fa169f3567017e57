package org.seafettle.json;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.seafettle.catalogue.Check;
import org.seafettle.catalogue.Deadline;
import org.seafettle.catalogue.FindingClass;
import org.seafettle.catalogue.Pattern;
import org.seafettle.catalogue.StopOrder;
import org.seafettle.problem.Spelling;

/** Reads patterns, and holds their signs against the checks. */
final class CataloguePatterns {

  private final Map<String, Check> checks;

  CataloguePatterns(Map<String, Check> checks) {
    this.checks = checks;
  }

  Optional<Pattern> read(CatalogueEntry entry) {
    entry.only(
        "id",
        "for",
        "needs",
        "cause",
        "reasoning",
        "confirms",
        "rules-out",
        "explains",
        "only-settled",
        "raise");
    var needs = entry.entries("needs").stream().map(this::need).toList();
    if (needs.size() < 2) {
      entry.fault("One finding alone is no pattern.", "Name at least two needs.");
      return Optional.empty();
    }
    return Optional.of(
        new Pattern(
            entry.text("id"),
            CatalogueScopes.of(entry),
            needs,
            entry.text("cause"),
            entry.text("reasoning"),
            entry.text("confirms"),
            entry.text("rules-out"),
            explains(entry, needs),
            entry.flag("only-settled").orElse(false),
            entry.entry("raise").flatMap(this::raise)));
  }

  /** A cause is told only where its signs are. */
  private static Set<String> explains(CatalogueEntry entry, List<Pattern.Need> needs) {
    var signs =
        needs.stream()
            .flatMap(need -> need.anyOf().stream())
            .map(Pattern.Sign::check)
            .collect(Collectors.toSet());
    var explains = Set.copyOf(entry.texts("explains"));
    explains.stream()
        .filter(check -> !signs.contains(check))
        .sorted()
        .forEach(
            check ->
                entry.fault(
                    "\"" + check + "\" is none of its signs.", Spelling.hint(check, signs)));
    return explains;
  }

  private Pattern.Need need(CatalogueEntry entry) {
    entry.only("any", "only-if-seen");
    var signs = entry.entries("any").stream().map(this::sign).toList();
    if (signs.isEmpty()) {
      entry.fault("The need names no sign.", "Add \"any\" with at least one sign.");
    }
    return new Pattern.Need(signs, entry.flag("only-if-seen").orElse(false));
  }

  private Pattern.Sign sign(CatalogueEntry entry) {
    entry.only("check", "is");
    var outcomes = Set.copyOf(entry.texts("is"));
    check(entry).ifPresent(check -> outcomesOf(check, outcomes, entry));
    return new Pattern.Sign(entry.text("check"), outcomes);
  }

  private static void outcomesOf(Check check, Set<String> outcomes, CatalogueEntry entry) {
    var known = new HashSet<>(check.outcomes().stream().map(o -> o.name()).toList());
    if (outcomes.isEmpty()) {
      entry.fault("The sign names no outcome.", "Add \"is\".");
    }
    List.copyOf(outcomes).stream()
        .sorted()
        .filter(o -> !known.contains(o))
        .forEach(
            o ->
                entry.fault(
                    "\"" + check.id() + "\" has no outcome \"" + o + "\".",
                    Spelling.hint(o, known)));
  }

  private Optional<Check> check(CatalogueEntry entry) {
    var id = entry.text("check");
    var check = Optional.ofNullable(checks.get(id));
    if (check.isEmpty()) {
      entry.fault(
          "There is no check \"" + id + "\".",
          Spelling.nearest(id, checks.keySet())
              .map(near -> "Did you mean \"" + near + "\"?")
              .orElse("Name a check of the catalogue."));
    }
    return check;
  }

  private Optional<Pattern.Raise> raise(CatalogueEntry entry) {
    entry.only("check", "to", "stop", "by");
    check(entry);
    var to = entry.word(FindingClass.class, "to");
    var stop = entry.word(StopOrder.class, "stop");
    if (to.isEmpty()) {
      entry.fault("It is not said to what it is raised.", "Add \"to\" with a class.");
      return Optional.empty();
    }
    if ((to.get() == FindingClass.STOP) != stop.isPresent()) {
      entry.fault("A stop, and only a stop, says what must not be done.", "Mend \"stop\".");
      return Optional.empty();
    }
    return Optional.of(
        new Pattern.Raise(entry.text("check"), to.get(), stop, entry.word(Deadline.class, "by")));
  }
}

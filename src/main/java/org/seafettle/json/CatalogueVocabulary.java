package org.seafettle.json;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import org.seafettle.catalogue.Action;
import org.seafettle.catalogue.Caution;
import org.seafettle.catalogue.Citation;
import org.seafettle.catalogue.Scope;
import org.seafettle.catalogue.Source;
import org.seafettle.catalogue.Who;
import org.seafettle.problem.Spelling;

/** Sources, cautions and actions, which every file of the catalogue may refer to. */
final class CatalogueVocabulary {

  private static final Source NOWHERE = new Source("", "", Source.Rank.PROGRAM_DEFAULT);

  private final Map<String, Source> sources;
  private final Map<String, List<Caution>> cautions = new LinkedHashMap<>();
  private final Map<String, Action> actions;

  private CatalogueVocabulary(List<CatalogueEntry> files) {
    sources = all(files, "sources", CatalogueVocabulary::source);
    for (var file : files) {
      file.entry("cautions").ifPresent(this::cautions);
    }
    actions = all(files, "actions", this::action);
  }

  static CatalogueVocabulary of(List<CatalogueEntry> files) {
    return new CatalogueVocabulary(files);
  }

  List<Source> sources() {
    return List.copyOf(sources.values());
  }

  /** The action that an entry names as {@code do}. */
  Optional<Action> action(CatalogueEntry entry) {
    return find(entry, "action", entry.text("do"), actions);
  }

  /** The place that an entry names as {@code source}: a source, or a source and a place in it. */
  Citation citation(CatalogueEntry entry) {
    if (!entry.raw("source").isObject()) {
      return cite(entry, entry.text("source"), "");
    }
    var place = entry.entry("source").orElseThrow().only("of", "at");
    return cite(place, place.text("of"), place.text("at", ""));
  }

  private Citation cite(CatalogueEntry entry, String source, String at) {
    return new Citation(find(entry, "source", source, sources).orElse(NOWHERE), at);
  }

  private static Source source(String id, CatalogueEntry entry) {
    entry.only("rank", "title");
    if (!entry.has("rank")) {
      entry.fault("The source has no rank.", "Say what kind of authority it is.");
    }
    var rank = entry.word(Source.Rank.class, "rank").orElse(Source.Rank.PROGRAM_DEFAULT);
    var title = entry.text("title", "");
    if (rank.published() && title.isBlank()) {
      entry.fault("A published source without title cannot be looked up.", "Add its title.");
    }
    return new Source(id, title, rank);
  }

  private void cautions(CatalogueEntry all) {
    all.node()
        .fieldNames()
        .forEachRemaining(
            id -> {
              if (cautions.put(id, caution(id, all)) != null) {
                twice(all, id);
              }
            });
  }

  /** One text for all, or several, each for some. */
  private static List<Caution> caution(String id, CatalogueEntry all) {
    if (all.raw(id).isTextual()) {
      return List.of(new Caution(id, Scope.ANY, all.text(id)));
    }
    return all.entries(id).stream()
        .map(one -> one.only("for", "text"))
        .map(one -> new Caution(id, CatalogueScopes.of(one), one.text("text")))
        .toList();
  }

  private Action action(String id, CatalogueEntry entry) {
    entry.only("does", "who", "parts", "hours", "cautions");
    var who = new ArrayList<>(entry.words(Who.class, "who"));
    if (who.isEmpty()) {
      entry.fault("Nobody may do it.", "Say who may, the usual one first.");
      who.add(Who.MECHANIC);
    }
    var found = new ArrayList<Caution>();
    entry
        .texts("cautions")
        .forEach(c -> find(entry, "caution", c, cautions).ifPresent(found::addAll));
    return new Action(id, entry.text("does"), who, entry.texts("parts"), hours(entry), found);
  }

  private static Optional<Action.Hours> hours(CatalogueEntry entry) {
    if (!entry.has("hours")) {
      return Optional.empty();
    }
    var range = entry.range("hours");
    if (range[0] > 0 && range[1] >= range[0]) {
      return Optional.of(new Action.Hours(range[0], range[1]));
    }
    entry.fault("Such hours of work do not exist.", "Write the fewest and the most: [0.5, 1.5].");
    return Optional.empty();
  }

  private static <T> Map<String, T> all(
      List<CatalogueEntry> files, String field, BiFunction<String, CatalogueEntry, T> reader) {
    var all = new LinkedHashMap<String, T>();
    for (var file : files) {
      file.named(field)
          .forEach(
              (id, entry) -> {
                if (all.put(id, reader.apply(id, entry)) != null) {
                  twice(entry, id);
                }
              });
    }
    return all;
  }

  private static void twice(CatalogueEntry entry, String id) {
    entry.fault("\"" + id + "\" stands in another file too.", "Keep one of the two.");
  }

  private static <T> Optional<T> find(
      CatalogueEntry entry, String kind, String id, Map<String, T> known) {
    var found = Optional.ofNullable(known.get(id));
    if (found.isEmpty() && !id.isEmpty()) {
      entry.fault(
          "There is no " + kind + " called \"" + id + "\".",
          Spelling.nearest(id, known.keySet())
              .map(near -> "Did you mean \"" + near + "\"?")
              .orElse("Add the " + kind + "."));
    }
    return found;
  }
}

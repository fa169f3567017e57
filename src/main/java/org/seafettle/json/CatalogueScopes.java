package org.seafettle.json;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.seafettle.catalogue.Scope;
import org.seafettle.problem.Spelling;
import org.seafettle.survey.Chemistry;
import org.seafettle.survey.Circuit;
import org.seafettle.survey.EngineType;
import org.seafettle.survey.Feature;
import org.seafettle.survey.Water;
import org.seafettle.survey.Word;

/** Reads for what a check, a limit or an outcome is true. */
final class CatalogueScopes {

  /** Words that stand for several kinds of engine. */
  private static final Map<String, Set<EngineType>> FAMILIES =
      Map.of(
          "outboard",
              EnumSet.of(
                  EngineType.OUTBOARD_4_STROKE,
                  EngineType.OUTBOARD_2_STROKE_PREMIX,
                  EngineType.OUTBOARD_2_STROKE_INJECTED),
          "two-stroke",
              EnumSet.of(
                  EngineType.OUTBOARD_2_STROKE_PREMIX, EngineType.OUTBOARD_2_STROKE_INJECTED),
          "four-stroke",
              EnumSet.complementOf(
                  EnumSet.of(
                      EngineType.OUTBOARD_2_STROKE_PREMIX, EngineType.OUTBOARD_2_STROKE_INJECTED)),
          "sterndrive", EnumSet.of(EngineType.STERNDRIVE_GASOLINE, EngineType.STERNDRIVE_DIESEL),
          "inboard", EnumSet.of(EngineType.INBOARD_GASOLINE, EngineType.INBOARD_DIESEL),
          "diesel", EnumSet.of(EngineType.STERNDRIVE_DIESEL, EngineType.INBOARD_DIESEL),
          "gasoline",
              EnumSet.complementOf(
                  EnumSet.of(EngineType.STERNDRIVE_DIESEL, EngineType.INBOARD_DIESEL)));

  private CatalogueScopes() {}

  /** The scope that an entry states as {@code for}; everything where it states none. */
  static Scope of(CatalogueEntry entry) {
    return entry.entry("for").map(CatalogueScopes::read).orElse(Scope.ANY);
  }

  private static Scope read(CatalogueEntry scope) {
    scope.only("engines", "circuit", "water", "chemistry", "afloat", "with", "without");
    var features = new EnumMap<Feature, Boolean>(Feature.class);
    scope.words(Feature.class, "with").forEach(f -> features.put(f, true));
    scope.words(Feature.class, "without").forEach(f -> features.put(f, false));
    return new Scope(
        engines(scope),
        Set.copyOf(scope.words(Circuit.class, "circuit")),
        Set.copyOf(scope.words(Water.class, "water")),
        Set.copyOf(scope.words(Chemistry.class, "chemistry")),
        scope.flag("afloat"),
        features);
  }

  private static Set<EngineType> engines(CatalogueEntry scope) {
    var engines = EnumSet.noneOf(EngineType.class);
    for (var word : scope.texts("engines")) {
      var one = Word.find(EngineType.class, word);
      if (one.isPresent()) {
        engines.add(one.get());
      } else if (FAMILIES.containsKey(word)) {
        engines.addAll(FAMILIES.get(word));
      } else {
        var known = new TreeSet<>(FAMILIES.keySet());
        known.addAll(Word.all(EngineType.class));
        scope.fault("\"" + word + "\" is no kind of engine.", Spelling.hint(word, known));
      }
    }
    return engines;
  }
}

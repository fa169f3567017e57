package org.seafettle.report;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.seafettle.assessment.Result;
import org.seafettle.catalogue.ReadingSpec;
import org.seafettle.quantity.Quantity;

/**
 * An instrument, and how certain what it showed is.
 *
 * @param instrument what the check asks for
 * @param uncertainty of the readings taken with it, and whether it was stated or is the usual one
 * @param checks for which it was used
 */
public record InstrumentRow(String instrument, String uncertainty, String checks) {

  private record Used(String instrument, String uncertainty) {}

  static List<InstrumentRow> all(Manuscript m) {
    Map<Used, Map<String, Set<String>>> used = new LinkedHashMap<>();
    for (var result : m.assessment().results()) {
      result
          .finding()
          .ifPresent(
              f ->
                  f.evidence()
                      .readings()
                      .forEach(
                          (name, values) ->
                              used.computeIfAbsent(
                                      of(m, result, name, values), u -> new LinkedHashMap<>())
                                  .computeIfAbsent(
                                      result.check().guidance().title(), c -> new LinkedHashSet<>())
                                  .add(name)));
    }
    return used.entrySet().stream()
        .map(
            e ->
                new InstrumentRow(
                    e.getKey().instrument(),
                    e.getKey().uncertainty(),
                    checks(m, used, e.getValue())))
        .toList();
  }

  /** Where readings of one check are not equally certain, each row says which it means. */
  private static String checks(
      Manuscript m, Map<Used, Map<String, Set<String>>> used, Map<String, Set<String>> row) {
    return m.phrases()
        .series(
            row.entrySet().stream()
                .map(
                    e ->
                        used.values().stream().filter(r -> r.containsKey(e.getKey())).count() == 1
                            ? e.getKey()
                            : m.words().say("look.grouped", e.getKey(), names(m, e.getValue())))
                .toList());
  }

  private static String names(Manuscript m, Set<String> readings) {
    return String.join(
        m.words().say("list.between"), readings.stream().map(m::numberName).toList());
  }

  private static Used of(Manuscript m, Result result, String name, List<Quantity> values) {
    var spec =
        result.check().criterion().readings().stream()
            .filter(r -> r.name().equals(name))
            .findFirst();
    boolean stated = values.stream().allMatch(q -> q.plusMinus().isPresent());
    var certainty =
        stated
            ? m.words().say("instrument.stated")
            : spec.filter(r -> r.usualUncertainty().isPresent())
                .map(r -> usual(m, r))
                .orElse(m.words().say("instrument.unknown"));
    return new Used(Phrases.capital(result.check().guidance().instrument()), certainty);
  }

  private static String usual(Manuscript m, ReadingSpec spec) {
    double usual = spec.usualUncertainty().orElseThrow();
    return m.words().say("instrument.usual", m.phrases().difference(usual, spec.unit()));
  }
}

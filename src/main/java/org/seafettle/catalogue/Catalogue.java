package org.seafettle.catalogue;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Everything that can be looked for.
 *
 * @param version of the catalogue's data
 * @param digest SHA-256 of the catalogue's data, in hexadecimal
 * @param checks in the order in which a report tells them
 * @param patterns in the order in which a report tells them
 * @param sources of the limits
 * @param names of readings, computed numbers and spare parts, by kind and word, where the word
 *     itself is not meant
 */
public record Catalogue(
    String version,
    String digest,
    List<Check> checks,
    List<Pattern> patterns,
    List<Source> sources,
    Map<String, String> names) {

  public Catalogue(
      String version,
      String digest,
      List<Check> checks,
      List<Pattern> patterns,
      List<Source> sources) {
    this(version, digest, checks, patterns, sources, Map.of());
  }

  public Catalogue {
    names = Collections.unmodifiableMap(new LinkedHashMap<>(names));
    checks = List.copyOf(checks);
    patterns = List.copyOf(patterns);
    sources = List.copyOf(sources);
  }

  public Optional<Check> check(String id) {
    return checks.stream().filter(c -> c.id().equals(id)).findFirst();
  }

  /** What the data names by a word that a reader sees. */
  public enum Named {
    /** Readings and computed numbers. */
    NUMBER,
    /** Spare parts. */
    PART;

    String key(String word) {
      return name().toLowerCase(Locale.ROOT) + "." + word;
    }

    static String plain(String word) {
      return word.replace('-', ' ');
    }
  }

  /** What a reader calls something that the data names by a word. */
  public String name(Named kind, String word) {
    return names.getOrDefault(kind.key(word), Named.plain(word));
  }

  /** The checks by id, in the catalogue's order. */
  public Map<String, Check> byId() {
    var map = new LinkedHashMap<String, Check>();
    checks.forEach(c -> map.put(c.id(), c));
    return map;
  }
}

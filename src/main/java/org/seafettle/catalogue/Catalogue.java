package org.seafettle.catalogue;

import java.util.LinkedHashMap;
import java.util.List;
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
 */
public record Catalogue(
    String version,
    String digest,
    List<Check> checks,
    List<Pattern> patterns,
    List<Source> sources) {

  public Catalogue {
    checks = List.copyOf(checks);
    patterns = List.copyOf(patterns);
    sources = List.copyOf(sources);
  }

  public Optional<Check> check(String id) {
    return checks.stream().filter(c -> c.id().equals(id)).findFirst();
  }

  /** The checks by id, in the catalogue's order. */
  public Map<String, Check> byId() {
    var map = new LinkedHashMap<String, Check>();
    checks.forEach(c -> map.put(c.id(), c));
    return map;
  }
}

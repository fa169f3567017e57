package org.seafettle.survey;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What work and parts cost, from whoever wrote the survey. Where no price is given none is printed.
 *
 * @param currency ISO 4217 code
 * @param labour per hour
 * @param items by the catalogue's names of parts
 */
public record Prices(String currency, Optional<BigDecimal> labour, Map<String, BigDecimal> items) {

  public Prices {
    items = Collections.unmodifiableMap(new TreeMap<>(items));
  }

  public Optional<BigDecimal> item(String part) {
    return Optional.ofNullable(items.get(part));
  }
}

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
 * @param tax on both, where the price list names it
 */
public record Prices(
    String currency,
    Optional<BigDecimal> labour,
    Map<String, BigDecimal> items,
    Optional<Tax> tax) {

  /**
   * The tax on a sale.
   *
   * @param percent of the price without it, 0 to 100
   * @param included whether the prices hold it already
   */
  public record Tax(BigDecimal percent, boolean included) {

    /** An amount of the price list with the tax in it. */
    public BigDecimal with(BigDecimal amount) {
      return included ? amount : amount.add(amount.multiply(percent).movePointLeft(2));
    }
  }

  public Prices {
    items = Collections.unmodifiableMap(new TreeMap<>(items));
  }

  public Optional<BigDecimal> item(String part) {
    return Optional.ofNullable(items.get(part));
  }
}

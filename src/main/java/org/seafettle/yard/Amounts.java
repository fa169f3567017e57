package org.seafettle.yard;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * Money, each currency by itself: surveys of one season may be priced in several.
 *
 * @param byCurrency by ISO 4217 code; empty where nothing is priced
 */
public record Amounts(Map<String, Span> byCurrency) {

  public static final Amounts NONE = new Amounts(Map.of());

  public Amounts {
    byCurrency = Collections.unmodifiableMap(new TreeMap<>(byCurrency));
  }

  static Amounts of(String currency, BigDecimal least, BigDecimal most) {
    return new Amounts(Map.of(currency, new Span(least, most)));
  }

  public Amounts plus(Amounts other) {
    var sum = new TreeMap<>(byCurrency);
    other.byCurrency.forEach((currency, span) -> sum.merge(currency, span, Span::plus));
    return new Amounts(sum);
  }
}

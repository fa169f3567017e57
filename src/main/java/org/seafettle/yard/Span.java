package org.seafettle.yard;

import java.math.BigDecimal;

/**
 * From the least to the most, in hours or in a currency.
 *
 * @param least at least 0
 * @param most at least {@code least}
 */
public record Span(BigDecimal least, BigDecimal most) {

  public static final Span NOTHING = new Span(BigDecimal.ZERO, BigDecimal.ZERO);

  public Span {
    if (least.signum() < 0 || most.compareTo(least) < 0) {
      throw new IllegalArgumentException("from " + least + " to " + most);
    }
  }

  public Span plus(Span other) {
    return new Span(least.add(other.least), most.add(other.most));
  }

  public boolean none() {
    return most.signum() == 0;
  }
}

package org.seafettle.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.OptionalDouble;
import org.seafettle.problem.Refused;

/**
 * A reading as somebody wrote it: a number with a unit and, where it is known, its uncertainty. The
 * digits are kept, so that 12.40 V stays 12.40 V.
 *
 * @param amount the number, in the unit
 * @param plusMinus the expanded uncertainty U (coverage factor 2), in the unit, not negative
 * @param unit the unit
 */
public record Quantity(BigDecimal amount, Optional<BigDecimal> plusMinus, MeasuredUnit unit) {

  /** The sign that is printed before a negative number. */
  private static final String MINUS = "\u2212";

  public Quantity {
    if (plusMinus.isPresent() && plusMinus.get().signum() < 0) {
      throw new IllegalArgumentException("an uncertainty is not negative");
    }
  }

  /** A computed quantity without uncertainty. */
  public static Quantity of(double value, MeasuredUnit unit) {
    return new Quantity(BigDecimal.valueOf(value), Optional.empty(), unit);
  }

  /**
   * Reads {@code 12.42 ± 0.05 V}, {@code 55 psi}, {@code 18 °C} and the like. A number alone is a
   * plain number, such as a specific gravity.
   *
   * @throws Refused when it cannot be read in one way only, with the remedy
   */
  public static Quantity parse(String written) {
    return Reading.parse(written);
  }

  public double value() {
    return amount.doubleValue();
  }

  public OptionalDouble uncertainty() {
    return plusMinus.map(u -> OptionalDouble.of(u.doubleValue())).orElseGet(OptionalDouble::empty);
  }

  public Kind kind() {
    return unit.kind();
  }

  /** Whether one can be converted into the other. */
  public boolean comparable(Quantity other) {
    return kind() == other.kind();
  }

  /**
   * This quantity, if it is of the kind that is wanted.
   *
   * @throws Refused when it is of another kind
   */
  public Quantity as(Kind wanted) {
    if (kind() == wanted) {
      return this;
    }
    var fault =
        unit == MeasuredUnit.ONE
            ? "\"" + written() + "\" has no unit."
            : "\"" + written() + "\" is " + kind().phrase() + ".";
    throw Refused.because(
        fault, "Write " + wanted.phrase() + " here, such as " + wanted.example() + ".");
  }

  /**
   * The value in another unit of the same kind, read as a level: 10 °C is 50 °F.
   *
   * @throws Refused when the unit is of another kind
   */
  public double in(MeasuredUnit other) {
    as(other.kind());
    return other == unit ? value() : Definitions.convertLevel(value(), unit, other);
  }

  /**
   * The value in another unit of the same kind, read as a difference: 10 °C is 18 °F.
   *
   * @throws Refused when the unit is of another kind
   */
  public double differenceIn(MeasuredUnit other) {
    as(other.kind());
    return difference(value(), other);
  }

  /** The same reading with an uncertainty, which is given in any unit of its kind. */
  public Quantity withPlusMinus(Quantity uncertainty) {
    return new Quantity(
        amount, Optional.of(BigDecimal.valueOf(uncertainty.differenceIn(unit))), unit);
  }

  /** The uncertainty in another unit of the same kind: ±5 °C is ±9 °F. */
  public OptionalDouble uncertaintyIn(MeasuredUnit other) {
    as(other.kind());
    return plusMinus
        .map(u -> OptionalDouble.of(difference(u.doubleValue(), other)))
        .orElseGet(OptionalDouble::empty);
  }

  /** In another unit, rounded to about the resolution with which it was written. */
  public Quantity to(MeasuredUnit other) {
    if (other == unit) {
      return this;
    }
    var level = in(other);
    return new Quantity(
        rounded(level, amount, other),
        plusMinus.map(u -> rounded(difference(u.doubleValue(), other), u, other)),
        other);
  }

  /** The same read as a difference: 10 °C more is 18 °F more. */
  public Quantity toDifference(MeasuredUnit other) {
    if (other == unit) {
      return this;
    }
    return new Quantity(
        rounded(differenceIn(other), amount, other),
        plusMinus.map(u -> rounded(difference(u.doubleValue(), other), u, other)),
        other);
  }

  /** {@code 12.42 ± 0.05 V}, with the digits as they were written. */
  public String written() {
    var text = new StringBuilder(amount.signum() < 0 ? MINUS : "");
    text.append(amount.abs().toPlainString());
    plusMinus.ifPresent(u -> text.append(" ± ").append(u.toPlainString()));
    if (!unit.symbol().isEmpty()) {
      text.append(' ').append(unit.symbol());
    }
    return text.toString();
  }

  private double difference(double value, MeasuredUnit other) {
    return other == unit ? value : Definitions.convertDifference(value, unit, other);
  }

  private BigDecimal rounded(double converted, BigDecimal original, MeasuredUnit other) {
    double step = difference(Math.pow(10, -Math.max(0, original.scale())), other);
    int decimals = Math.max(0, (int) -Math.floor(Math.log10(step)));
    return BigDecimal.valueOf(converted).setScale(decimals, RoundingMode.HALF_EVEN);
  }
}

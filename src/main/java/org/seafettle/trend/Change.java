package org.seafettle.trend;

import java.util.OptionalDouble;
import org.seafettle.problem.Refused;
import org.seafettle.quantity.MeasuredUnit;
import org.seafettle.quantity.Quantity;

/**
 * The change from one reading to a later one, each with its range of plus or minus its uncertainty.
 *
 * @param before the earlier reading
 * @param now the later one, of the same kind
 */
public record Change(Quantity before, Quantity now) {

  /** Rounding of binary fractions, so that ranges which touch in decimals touch. */
  private static final double ROUNDING = 1e-9;

  public Change {
    before.as(now.kind());
  }

  /** What may be said of the change. */
  public enum Verdict {
    ROSE,
    FELL,
    /** The ranges touch or overlap. */
    NOT_PROVEN,
    /** One of the readings has no stated uncertainty. */
    UNCERTAINTY_NOT_STATED
  }

  /** How much more it is now, in the unit of the later reading. */
  public double amount() {
    return now.value() - before.in(unit());
  }

  /**
   * Whether the ranges lie apart: more is asked than of the uncertainty of a difference, since both
   * readings often share a gauge and its error. A program rule.
   */
  public Verdict verdict() {
    var reach = reach();
    if (reach.isEmpty()) {
      return Verdict.UNCERTAINTY_NOT_STATED;
    }
    double slack = ROUNDING * (Math.abs(now.value()) + Math.abs(before.in(unit())));
    if (Math.abs(amount()) <= reach.getAsDouble() + slack) {
      return Verdict.NOT_PROVEN;
    }
    return amount() > 0 ? Verdict.ROSE : Verdict.FELL;
  }

  /**
   * The change per hour of use, in the unit of the later reading per hour.
   *
   * @param hoursBefore on the meter then
   * @param hoursNow on the meter now
   * @throws Refused unless the engine ran in between; a meter that shows less was replaced or reset
   */
  public double perHour(double hoursBefore, double hoursNow) {
    double hours = hoursNow - hoursBefore;
    if (!(hours > 0 && Double.isFinite(hours))) {
      throw Refused.because(
          "The hour meter does not show more than before.",
          "Say whether the engine ran in between, or the meter was replaced or reset.");
    }
    return amount() / hours;
  }

  /** The two uncertainties together, in the unit of the later reading. */
  private OptionalDouble reach() {
    var then = before.uncertaintyIn(unit());
    return then.isPresent() && now.uncertainty().isPresent()
        ? OptionalDouble.of(then.getAsDouble() + now.uncertainty().getAsDouble())
        : OptionalDouble.empty();
  }

  private MeasuredUnit unit() {
    return now.unit();
  }
}

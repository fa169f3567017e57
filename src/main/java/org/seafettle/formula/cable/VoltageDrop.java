package org.seafettle.formula.cable;

import java.util.List;
import org.seafettle.formula.Validity;

/**
 * What a cable loses on the way to the load and back.
 *
 * <p>{@code E = 10.75 I L/CM}, with L the length there and back in feet: the rule of the Jamestown
 * wire size text and Holland Marine catalogue, pp. 52 and 53, for copper in use.
 */
public final class VoltageDrop {

  private static final double OHM_CIRCULAR_MIL_PER_FOOT = 10.75;

  private VoltageDrop() {}

  /** Volts lost over a round trip in feet through a wire of that many circular mils. */
  public static double volts(double amperes, double roundTripFeet, double circularMils) {
    return load(amperes, roundTripFeet) / Validity.positive("A wire's area", circularMils, "cmil");
  }

  /** The circular mils that keep the loss within an allowance; the inverse of {@link #volts}. */
  public static double requiredCircularMils(
      double amperes, double roundTripFeet, double allowedVolts) {
    return load(amperes, roundTripFeet) / Validity.positive("An allowed drop", allowedVolts, "V");
  }

  /** The loss in percent of the system's volts. */
  public static double percent(double lostVolts, double systemVolts) {
    return 100
        * Validity.notNegative("A drop", lostVolts, "V")
        / Validity.positive("A system voltage", systemVolts, "V");
  }

  /** Volts lost over a round trip in feet of a wire of known resistance, {@code I L R/1000}. */
  public static double cranking(double amperes, double roundTripFeet, double ohmsPer1000Feet) {
    Validity.notNegative("A current", amperes, "A");
    Validity.positive("A length there and back", roundTripFeet, "ft");
    return amperes
        * roundTripFeet
        * Validity.positive("A resistance", ohmsPer1000Feet, "ohm/1000 ft")
        / 1000;
  }

  /**
   * Volts left at the starter: those on the battery's posts less every drop on the way, which add
   * up. MerCruiser service manual, p. 306, wants at least 9.5 V there.
   */
  public static double atStarter(double postVolts, List<Double> drops) {
    drops.forEach(drop -> Validity.notNegative("A drop", drop, "V"));
    double left = postVolts - drops.stream().mapToDouble(Double::doubleValue).sum();
    return Validity.within("A voltage left at the starter", left, 0, 36, "V");
  }

  private static double load(double amperes, double roundTripFeet) {
    return OHM_CIRCULAR_MIL_PER_FOOT
        * Validity.notNegative("A current", amperes, "A")
        * Validity.positive("A length there and back", roundTripFeet, "ft");
  }
}

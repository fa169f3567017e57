package org.seafettle.formula.pump;

import java.util.OptionalInt;
import org.seafettle.formula.Validity;

/**
 * Bilge pumps that rules for commercial boats ask for. No US rule binds a private boat: these are
 * benchmarks, never requirements.
 *
 * @param fixedPumps number of fixed pumps
 * @param fixedGallonsPerMinute each, US gallons a minute
 * @param portablePumps number of portable hand pumps
 * @param portableGallonsPerMinute each; empty where the rule gives the pair one figure only
 */
public record CapacityBenchmark(
    int fixedPumps,
    int fixedGallonsPerMinute,
    int portablePumps,
    OptionalInt portableGallonsPerMinute) {

  /**
   * 46 CFR 182.520, table (a), annual edition 2015: small passenger vessels.
   *
   * @param lengthFeet above 0 to 200 ft
   * @param fixedByHand whether the fixed pump is worked by hand, where the rule leaves the choice
   */
  public static CapacityBenchmark smallPassengerVessel(
      double lengthFeet, int passengers, boolean ferry, boolean fixedByHand) {
    Validity.positive("A length", lengthFeet, "ft");
    Validity.within("A length", lengthFeet, 0, 200, "ft");
    Validity.within("A number of passengers", passengers, 0, 1000, "");
    if (lengthFeet > 65) {
      return new CapacityBenchmark(2, 50, 0, OptionalInt.of(0));
    }
    if (passengers > 49 || ferry) {
      return new CapacityBenchmark(1, 25, 1, OptionalInt.of(10));
    }
    if (lengthFeet < 26) {
      return new CapacityBenchmark(0, 0, 1, OptionalInt.of(5));
    }
    return new CapacityBenchmark(1, 10, 1, fixedByHand ? OptionalInt.of(5) : OptionalInt.empty());
  }

  /**
   * ISO 15083:2020, litres a minute for craft to 24 m (figures secondary, plusstd.com): 10 to 6 m,
   * 15 below 12 m, 30 from 12 m.
   */
  public static double iso15083LitresPerMinute(double hullMetres) {
    Validity.positive("A hull length", hullMetres, "m");
    Validity.within("A hull length", hullMetres, 0, 24, "m");
    if (hullMetres <= 6) {
      return 10;
    }
    return hullMetres < 12 ? 15 : 30;
  }

  /** The rule of thumb of 100 US gallons an hour for each foot of length; common practice. */
  public static double ruleOfThumbGallonsPerHour(double lengthFeet) {
    return 100 * Validity.within("A length", lengthFeet, 5, 200, "ft");
  }
}

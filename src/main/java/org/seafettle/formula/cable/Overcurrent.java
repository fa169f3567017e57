package org.seafettle.formula.cable;

import org.seafettle.formula.Validity;

/** The largest fuse or breaker, and how far from the source it may sit. */
public final class Overcurrent {

  private Overcurrent() {}

  /**
   * The largest device for a conductor, amperes: 150 % of table 5 below 50 V, else 100 % (where the
   * next standard size up may be taken, to 150 %). 33 CFR 183.455(c). The lower of this and the
   * device maker's own figure holds.
   *
   * @param tableAmperes of {@link Ampacity#amperes(Gauge, int)}
   * @param systemVolts 1 to 600 V
   */
  public static double largestAmperes(double tableAmperes, double systemVolts) {
    Validity.positive("A table's current", tableAmperes, "A");
    Validity.within("A system voltage", systemVolts, 1, 600, "V");
    return systemVolts < 50 ? 1.5 * tableAmperes : tableAmperes;
  }

  /**
   * The largest device in the output of an alternator or generator, amperes: 120 % of its maximum
   * rated current at 60 °C. Self-limiting machines need none. 33 CFR 183.460(b), 2015.
   */
  public static double largestAtGenerator(double ratedAmperes) {
    return 1.2 * Validity.positive("A rated current", ratedAmperes, "A");
  }

  /** What a conductor leaves. */
  public enum Source {
    /** 72 in along the conductor, in a sheath or not: 33 CFR 183.460(a), 2015. */
    BATTERY,
    /** 7 in, or 40 in where the whole length is in a sheath or enclosure: 33 CFR 183.455. */
    OTHER,
    /** The main feed of a cranking motor needs no device: 33 CFR 183.460(a), 2015. */
    CRANKING_FEED
  }

  /**
   * The farthest that the device may sit from the source along the conductor, inches; infinite
   * where none is needed.
   */
  public static double farthestInches(Source source, boolean sheathed) {
    return switch (source) {
      case BATTERY -> 72;
      case OTHER -> sheathed ? 40 : 7;
      case CRANKING_FEED -> Double.POSITIVE_INFINITY;
    };
  }
}

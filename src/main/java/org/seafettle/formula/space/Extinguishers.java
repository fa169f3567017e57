package org.seafettle.formula.space;

import java.time.LocalDate;
import org.seafettle.formula.Validity;

/** Fire extinguishers on US recreational boats. */
public final class Extinguishers {

  private Extinguishers() {}

  /**
   * The number of small (5-B, before 2022 B-I) extinguishers: 46 CFR 25.30-20(a)(1), annual edition
   * 2015; the same counts in 33 CFR 175.320(a)(1) (secondary). One large one stands for two small.
   *
   * @param lengthFeet above 0 to 65 ft
   * @param fixedSystem whether the machinery space has a fixed system
   */
  public static int required(double lengthFeet, boolean fixedSystem) {
    Validity.positive("A length", lengthFeet, "ft");
    Validity.within("A length", lengthFeet, 0, 65, "ft");
    int withoutSystem = lengthFeet < 26 ? 1 : lengthFeet < 40 ? 2 : 3;
    return fixedSystem ? withoutSystem - 1 : withoutSystem;
  }

  /**
   * The last day of a disposable extinguisher: 31 December of the twelfth year after it was made.
   * 33 CFR 175 subpart E; US Coast Guard ACN 002/22.
   *
   * @param yearMade 1950 to 2100
   */
  public static LocalDate lastDay(int yearMade) {
    Validity.within("A year of manufacture", yearMade, 1950, 2100, "");
    return LocalDate.of(yearMade + 12, 12, 31);
  }
}

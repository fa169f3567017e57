package org.seafettle.formula.battery;

import org.seafettle.formula.Rows;
import org.seafettle.formula.Validity;

/** The carbon-pile test: half the cold cranking amperes for 15 s, 12 V lead-acid. */
public final class LoadTest {

  private static final Rows MINIMUM_V =
      new Rows(
          "A battery temperature",
          "°C",
          -18,
          8.5,
          -12,
          8.7,
          -7,
          8.9,
          -1,
          9.1,
          4,
          9.3,
          10,
          9.4,
          16,
          9.5,
          20,
          9.6);

  private LoadTest() {}

  /**
   * The least volts after 15 s, straight lines between the rows of Kia Amanti 2009 service manual,
   * load test (the same in a Hyundai Accent manual); 9.6 V from 20 °C up.
   *
   * @param temperatureC of the battery, -18 to 60 °C; colder is refused
   */
  public static double minimumVolts(double temperatureC) {
    Validity.within("A battery temperature", temperatureC, -18, 60, "°C");
    return MINIMUM_V.at(Math.min(temperatureC, 20));
  }

  /** The load: half the rated cold cranking amperes, 50 to 2000 A. */
  public static double amperes(double coldCrankingAmperes) {
    return Validity.within("A cold cranking rating", coldCrankingAmperes, 50, 2000, "A") / 2;
  }

  /** The load as tables print it, rounded down to 10 A. GM service text, 2000. */
  public static double tabulatedAmperes(double coldCrankingAmperes) {
    return Math.floor(amperes(coldCrankingAmperes) / 10) * 10;
  }
}

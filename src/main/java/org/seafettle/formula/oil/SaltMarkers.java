package org.seafettle.formula.oil;

import org.seafettle.formula.Validity;

/**
 * Sea water or coolant in the oil, from its sodium and potassium. Salt stays when the water boils
 * out: sodium tells how much sea water has ever come in, not how much is there now.
 *
 * @param sodiumPpm above that of the new oil, 0 to 20 000 ppm
 * @param potassiumPpm 0 to 5000 ppm
 */
public record SaltMarkers(double sodiumPpm, double potassiumPpm) {

  /** Sodium in sea water, mg/kg; from memory (the reference composition has 10 781.45). */
  private static final double SEA_SODIUM = 10_784;

  /** Reference composition, Millero et al. 2008, in an open chemistry library (secondary). */
  private static final double SEA_POTASSIUM = 399;

  private static final double SEA_MAGNESIUM = 1284;

  /** Potassium above which coolant is suspected, ppm; a program default. */
  private static final double COOLANT_POTASSIUM = 20;

  public SaltMarkers {
    Validity.within("A sodium content above the new oil's", sodiumPpm, 0, 20_000, "ppm");
    Validity.within("A potassium content", potassiumPpm, 0, 5000, "ppm");
  }

  /** Where the salt came from. */
  public enum Origin {
    SEAWATER,
    COOLANT,
    UNDETERMINED
  }

  /** What the engine burns; diesels start from a lower sodium content. */
  public enum Engine {
    GASOLINE(50),
    DIESEL(25);

    private final double sodiumPpm;

    Engine(double sodiumPpm) {
      this.sodiumPpm = sodiumPpm;
    }
  }

  /** Sodium above the new oil's; never below zero. */
  public static double aboveNewOil(double sodiumPpm, double newOilPpm) {
    return Math.max(
        0,
        Validity.notNegative("A sodium content", sodiumPpm, "ppm")
            - Validity.notNegative("The new oil's sodium content", newOilPpm, "ppm"));
  }

  /** Sea water that the sodium stands for, percent by mass: {@code 100 Na/10784}. */
  public double seawaterPercent() {
    return 100 * sodiumPpm / SEA_SODIUM;
  }

  /** Potassium that so much sea water brings, ppm; more than that came from elsewhere. */
  public double expectedPotassiumPpm() {
    return sodiumPpm / SEA_SODIUM * SEA_POTASSIUM;
  }

  /** Magnesium that so much sea water brings, ppm. */
  public double expectedMagnesiumPpm() {
    return sodiumPpm / SEA_SODIUM * SEA_MAGNESIUM;
  }

  /** Sodium over potassium: 27.0 in sea water; infinite without potassium. */
  public double sodiumOverPotassium() {
    return sodiumPpm / potassiumPpm;
  }

  /** Whether either of them is above what an engine shows without any salt from outside. */
  public boolean raised(Engine engine) {
    return sodiumPpm > engine.sodiumPpm || potassiumPpm > COOLANT_POTASSIUM;
  }

  /**
   * Sea water where sodium is raised, at least twenty times the potassium, and there is no glycol;
   * coolant where there is glycol, or potassium above 20 ppm and more than a tenth of the sodium;
   * else undetermined. A program default on published signatures.
   */
  public Origin origin(boolean glycol, Engine engine) {
    if (glycol || (potassiumPpm > COOLANT_POTASSIUM && sodiumOverPotassium() < 10)) {
      return Origin.COOLANT;
    }
    return sodiumPpm > engine.sodiumPpm && sodiumOverPotassium() >= 20
        ? Origin.SEAWATER
        : Origin.UNDETERMINED;
  }
}

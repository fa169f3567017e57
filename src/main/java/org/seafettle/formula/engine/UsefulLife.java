package org.seafettle.formula.engine;

import org.seafettle.formula.Validity;

/**
 * How long US law lets an engine's exhaust count as clean, whichever comes first: 40 CFR
 * 1045.103(e) and 1045.105(e), annual edition 2015. Says nothing about how long the engine lasts.
 *
 * @param hours running hours
 * @param years calendar years
 */
public record UsefulLife(int hours, int years) {

  /** The kinds of marine gasoline engine that the rule tells apart. */
  public enum Type {
    OUTBOARD,
    PERSONAL_WATERCRAFT,
    STERNDRIVE_OR_INBOARD,
    HIGH_PERFORMANCE_STERNDRIVE_OR_INBOARD
  }

  /**
   * @param kilowatts rated power, above 0 to 2000 kW
   */
  public static UsefulLife of(Type type, double kilowatts) {
    Validity.positive("A power", kilowatts, "kW");
    Validity.within("A power", kilowatts, 0, 2000, "kW");
    return switch (type) {
      case OUTBOARD -> new UsefulLife(350, 10);
      case PERSONAL_WATERCRAFT -> new UsefulLife(350, 5);
      case STERNDRIVE_OR_INBOARD -> new UsefulLife(480, 10);
      case HIGH_PERFORMANCE_STERNDRIVE_OR_INBOARD ->
          kilowatts <= 485 ? new UsefulLife(150, 3) : new UsefulLife(50, 1);
    };
  }
}

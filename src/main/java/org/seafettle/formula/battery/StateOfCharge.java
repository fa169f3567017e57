package org.seafettle.formula.battery;

import org.seafettle.formula.DoesNotHold;
import org.seafettle.formula.Rows;
import org.seafettle.formula.Validity;
import org.seafettle.problem.Refused;

/**
 * How full a 12 V lead-acid battery is, from its open-circuit voltage at rest.
 *
 * <p>Straight lines between published rows. Flooded: US Army TM 5-3805-262-20, p. 5-142 (12.6 V 100
 * %, 12.4 V 75 %, 12.2 V 50 %, 12.0 V 25 %, 11.7 V 0 %). AGM: Polaris owner's manual, charging
 * table (from 12.8 V 100 %, 12.6 V 75 %, 12.3 V 50 %, 12.0 V 25 %; below 12.0 V the table says no
 * more than 0 to 25 %). Gel: two published charts disagree in the middle, so only full (from 12.85
 * V, secondary) and not full are told apart. Lithium iron phosphate is flat between about 20 and 90
 * % and is refused.
 *
 * <p>Holds after at least 1 h of rest (a program default; the makers ask for 6 h, better 24 h) and
 * between 0 and 40 °C (a program default). A rested reading above 13.5 V is refused: something is
 * still charging (a program default). A meter of 1 % is ±0.12 V, about ±15 % of charge.
 *
 * @param atLeastPercent the lower end of what the reading allows, 0 to 100
 * @param atMostPercent the upper end; the same where the table gives one figure
 */
public record StateOfCharge(double atLeastPercent, double atMostPercent) {

  private static final String VOLTS = "A rested voltage";

  private static final Rows FLOODED =
      new Rows(VOLTS, "V", 11.7, 0, 12.0, 25, 12.2, 50, 12.4, 75, 12.6, 100);
  private static final Rows AGM = new Rows(VOLTS, "V", 12.0, 25, 12.3, 50, 12.6, 75, 12.8, 100);
  private static final double GEL_FULL_V = 12.85;

  /**
   * @param volts of one 12 V battery, 0 to 13.5 V; a 24 V bank is read half by half
   * @param temperatureC of the battery, 0 to 40 °C
   * @param restedHours since the last charge or load, from 1 h
   * @throws Refused outside these ranges and for lithium batteries
   */
  public static StateOfCharge fromRestedVoltage(
      Chemistry chemistry, double volts, double temperatureC, double restedHours) {
    Validity.within("A battery temperature", temperatureC, 0, 40, "°C");
    Validity.within(VOLTS + " of a 12 V battery", volts, 0, 13.5, "V");
    if (!(restedHours >= 1)) {
      throw DoesNotHold.because(
          "not-rested",
          "The battery has rested for less than an hour; the surface charge still shows.",
          "Let it rest for at least 6 h, better 24 h, with everything off, and read it again.");
    }
    return switch (chemistry) {
      case FLOODED -> exactly(FLOODED.atOrNearestEnd(volts));
      case AGM -> volts < 12.0 ? new StateOfCharge(0, 25) : exactly(AGM.atOrNearestEnd(volts));
      case GEL -> volts >= GEL_FULL_V ? exactly(100) : new StateOfCharge(0, 100);
      case LITHIUM_IRON_PHOSPHATE ->
          throw DoesNotHold.because(
              "lithium-voltage",
              "The voltage of a lithium iron phosphate battery does not show its charge.",
              "Read the charge from the battery's own monitor.");
    };
  }

  /** Whether the table gives one figure and not a span. */
  public boolean isExact() {
    return atLeastPercent == atMostPercent;
  }

  private static StateOfCharge exactly(double percent) {
    return new StateOfCharge(percent, percent);
  }
}

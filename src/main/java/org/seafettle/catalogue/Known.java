package org.seafettle.catalogue;

import java.util.Optional;
import org.seafettle.formula.DoesNotHold;
import org.seafettle.formula.battery.Chemistry;
import org.seafettle.formula.battery.Electrolyte;
import org.seafettle.formula.battery.Endurance;
import org.seafettle.formula.battery.StateOfCharge;
import org.seafettle.quantity.MeasuredUnit;
import org.seafettle.quantity.Quantity;
import org.seafettle.survey.Battery;
import org.seafettle.survey.Component;
import org.seafettle.survey.Pump;

/** What derivations need to know of the component and the boat beside the readings. */
final class Known {

  /** Standard atmosphere. */
  static final double SEA_LEVEL_KPA = 101.325;

  /** Exponent of a battery whose own is not known: Xantrex Link 20 manual, p. 26. */
  private static final double USUAL_PEUKERT = 1.25;

  /** Capacities are stated at the 20-hour rate. */
  private static final double RATED_HOURS = 20;

  private Known() {}

  /** The battery that is judged, or that feeds the component. */
  static Battery battery(Inputs in) {
    var component = in.facts().component();
    var batteries = in.facts().survey().outfit().batteries();
    if (component instanceof Battery battery) {
      return battery;
    }
    if (component instanceof Pump pump && pump.fedBy().isPresent()) {
      return batteries.stream()
          .filter(b -> pump.fedBy().get().equals(b.id()))
          .findFirst()
          .orElseThrow(() -> missing("feeding-battery"));
    }
    if (batteries.size() == 1) {
      return batteries.get(0);
    }
    return batteries.stream()
        .filter(b -> b.serves().contains(component.id()))
        .findFirst()
        .orElseThrow(() -> missing("serving-battery"));
  }

  static double capacity(Battery battery) {
    return in(battery.capacity(), "Ah", "battery-capacity");
  }

  static double nominal(Inputs in) {
    return in(battery(in).nominal(), "V", "nominal-voltage");
  }

  static double perTwelveVolts(Inputs in, double volts) {
    return volts * 12 / nominal(in);
  }

  static double rated(Inputs in) {
    return in(battery(in).cranking(), "A", "cranking-rating");
  }

  static double lowestExpected(Inputs in) {
    return in(
        in.facts().survey().occasion().conditions().lowestExpected(), "Cel", "lowest-expected");
  }

  static double ratedFlow(Inputs in) {
    return in(pump(in).rated(), "L/min", "rated-flow");
  }

  static double plateCurrent(Inputs in) {
    return in(pump(in).draws(), "A", "plate-current");
  }

  static double stateOfCharge(Inputs in) {
    var charge =
        StateOfCharge.fromRestedVoltage(
            chemistry(battery(in)),
            perTwelveVolts(in, in.get("voltage")),
            in.get("temperature"),
            in.get("rested"));
    double from = charge.atLeastPercent();
    double to = charge.atMostPercent();
    if (to - from > 50) {
      throw DoesNotHold.because(
          "gel-not-full",
          "The rested voltage of a gel battery tells only whether it is full; this one is not.",
          "Charge it fully, let it rest and read it again.");
    }
    return (from + to) / 2;
  }

  static double weakestCell(Inputs in) {
    double temperature = in.get("temperature");
    return in.all("gravity").stream()
        .mapToDouble(cell -> Electrolyte.correctedTo80F(cell, temperature))
        .min()
        .orElseThrow(() -> missing("gravity"));
  }

  static double pumpEndurance(Inputs in) {
    double amperes = Derivation.either(in.find("current"), () -> plateCurrent(in));
    return Endurance.hours(
        capacity(battery(in)),
        RATED_HOURS,
        USUAL_PEUKERT,
        amperes,
        in.find("charge").orElse(100) / 100,
        Endurance.CRANKING_RESERVE);
  }

  static double batteryAge(Inputs in) {
    return Derivation.either(
        in.find("age"),
        () ->
            in.facts().survey().occasion().date().getYear()
                - (double) battery(in).installed().orElseThrow(() -> missing("year-fitted")));
  }

  private static Chemistry chemistry(Battery battery) {
    return switch (battery.chemistry().orElseThrow(() -> missing("battery-chemistry"))) {
      case FLOODED -> Chemistry.FLOODED;
      case AGM -> Chemistry.AGM;
      case GEL -> Chemistry.GEL;
      case LFP -> Chemistry.LITHIUM_IRON_PHOSPHATE;
    };
  }

  private static Pump pump(Inputs in) {
    Component component = in.facts().component();
    if (component instanceof Pump pump) {
      return pump;
    }
    throw missing("pump");
  }

  private static double in(Optional<Quantity> quantity, String unit, String what) {
    return quantity.orElseThrow(() -> missing(what)).in(MeasuredUnit.of(unit));
  }

  /**
   * @param what the word for a fact or a reading
   */
  private static Criterion.Unjudgeable missing(String what) {
    return new Criterion.Unjudgeable(new Reason(Reason.Kind.READING_MISSING, what));
  }
}

package org.seafettle.catalogue;

import java.util.Optional;
import org.seafettle.formula.DoesNotHold;
import org.seafettle.formula.battery.ChargingVoltage;
import org.seafettle.formula.battery.Chemistry;
import org.seafettle.formula.battery.Electrolyte;
import org.seafettle.formula.battery.Endurance;
import org.seafettle.formula.battery.LoadTest;
import org.seafettle.formula.battery.Ratings;
import org.seafettle.formula.battery.StateOfCharge;
import org.seafettle.formula.fuel.EthanolBlend;
import org.seafettle.formula.fuel.Tank;
import org.seafettle.formula.water.CoolingHeat;
import org.seafettle.formula.water.Glycol;
import org.seafettle.quantity.MeasuredUnit;
import org.seafettle.quantity.Quantity;
import org.seafettle.survey.Battery;
import org.seafettle.survey.Component;
import org.seafettle.survey.Engine;
import org.seafettle.survey.Pump;
import org.seafettle.survey.Water;

/** What derivations need to know of the component and the boat beside the readings. */
final class Known {

  /** Standard atmosphere. */
  static final double SEA_LEVEL_KPA = 101.325;

  /** Exponent of a battery whose own is not known: Xantrex Link 20 manual, p. 26. */
  private static final double USUAL_PEUKERT = 1.25;

  /** Capacities are stated at the 20-hour rate. */
  private static final double RATED_HOURS = 20;

  /** Rest after which a voltage is as certain as its meter, h: Trojan user guide 7.4. */
  private static final double FULL_REST = 6;

  /** What a shorter rest may leave on a 12 V battery, V, expanded; from experience. */
  private static final double SURFACE_CHARGE = 0.1;

  /** Gravity of a full starting battery, for which the limits are made: US Army TM 5-1185. */
  private static final double STARTING_BATTERY = 1.280;

  /** Salinity of the sea where nobody measured it; a program default. */
  private static final double OPEN_SEA = 35;

  /** Share of the fuel's power at the shaft; diesel from marinedieselbasics.com, secondary. */
  private static final double DIESEL_EFFICIENCY = 0.33;

  /** The same of gasoline; a program default. */
  private static final double GASOLINE_EFFICIENCY = 0.30;

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

  /**
   * Volts above the least of the load test, which holds for lead and acid only.
   *
   * @throws DoesNotHold for lithium
   */
  static double loadTestMargin(Inputs in) {
    if (chemistry(battery(in)) == Chemistry.LITHIUM_IRON_PHOSPHATE) {
      throw DoesNotHold.because(
          "lead-limits",
          "The limits of the load test are those of lead-acid batteries, not of lithium.",
          "Judge a lithium battery by what its maker and its own monitor say.");
    }
    return perTwelveVolts(in, in.get("voltage")) - LoadTest.minimumVolts(in.get("temperature"));
  }

  /** Measured over rated cranking amperes; what was measured as MCA is brought to CCA first. */
  static double crankingShare(Inputs in) {
    double measured =
        Derivation.either(
            in.find("measured"), () -> Ratings.coldFromMarine(in.get("measured-as-mca")));
    return measured / rated(in);
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

  /** A reading right after use still shows the surface charge: SoC by voltage wants six hours. */
  static Inputs shortRest(Inputs in) {
    return in.find("rested").orElse(FULL_REST) < FULL_REST
        ? in.atLeast("voltage", SURFACE_CHARGE * nominal(in) / 12)
        : in;
  }

  /** The weakest cell as of a battery that holds 1.280 when full; the maker's own is moved. */
  static double weakestCellAsOfAStartingBattery(Inputs in) {
    double full = in.find("full").orElse(STARTING_BATTERY);
    return weakestCell(in) + (STARTING_BATTERY - full);
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

  /** Years to the day of the survey, by the calendar where a year is printed. */
  static double age(Inputs in) {
    var given = in.find("age").isPresent() ? in.find("age") : in.find("oldest");
    return Derivation.either(
        given, () -> in.facts().survey().occasion().date().getYear() - in.get("year"));
  }

  /** Where ice begins in the coolant: as measured, else from its share of a glycol. */
  static double coolantFreezes(Inputs in) {
    return Derivation.either(
        in.find("freezes-at"),
        () ->
            in.find("ethylene-glycol").isPresent()
                ? Glycol.ETHYLENE.freezingPointC(in.get("ethylene-glycol"))
                : Glycol.PROPYLENE.freezingPointC(in.get("propylene-glycol")));
  }

  /** The share of the fuel's power that the raw water carries away. */
  static double heatShare(Inputs in) {
    var fresh = in.facts().survey().boat().water().filter(w -> w == Water.FRESH).isPresent();
    double heat =
        CoolingHeat.kilowatts(
            in.get("flow"),
            in.find("salinity").orElse(fresh ? 0 : OPEN_SEA),
            in.get("inlet"),
            in.get("outlet"));
    boolean diesel = in.facts().component() instanceof Engine e && e.type().burnsDiesel();
    return CoolingHeat.share(
        heat,
        CoolingHeat.fuelKilowatts(
            in.get("shaft-power"), diesel ? DIESEL_EFFICIENCY : GASOLINE_EFFICIENCY));
  }

  /** Volts by which a charger lies from its target: as given, else from what it was read at. */
  static double chargingDeviation(Inputs in) {
    return Derivation.either(
        in.find("deviation"),
        () ->
            in.get("voltage")
                - ChargingVoltage.target(
                    in.get("target"),
                    in.get("temperature"),
                    (int) Math.round(nominal(in) / 2),
                    ChargingVoltage.TROJAN_MILLIVOLTS));
  }

  /** Water at the bottom of a tank, in per cent of the fuel. */
  static double tankWater(Inputs in) {
    return Derivation.either(
        in.find("share"),
        () ->
            EthanolBlend.waterPercent(
                Derivation.either(in.find("water"), () -> layer(in)), in.get("fuel")));
  }

  /** The volume of a layer on the floor of a box, L; the tank stands level. */
  private static double layer(Inputs in) {
    double deep = in.get("layer");
    return new Tank.Box(in.get("tank-length"), in.get("tank-width"), Math.max(deep, 1))
        .litres(deep);
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
  static Criterion.Unjudgeable missing(String what) {
    return new Criterion.Unjudgeable(new Reason(Reason.Kind.READING_MISSING, what));
  }
}

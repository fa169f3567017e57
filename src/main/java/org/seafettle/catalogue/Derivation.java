package org.seafettle.catalogue;

import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import org.seafettle.formula.battery.Electrolyte;
import org.seafettle.formula.battery.Endurance;
import org.seafettle.formula.engine.SealedCase;
import org.seafettle.formula.fuel.EthanolBlend;
import org.seafettle.formula.galvanic.Anode;
import org.seafettle.formula.oil.Consumption;
import org.seafettle.formula.pump.Delivery;
import org.seafettle.survey.Word;

/**
 * The computations that the catalogue's data may name. Each takes readings in the units given here,
 * by the names given here; the formulas themselves stand in {@code org.seafettle.formula}.
 */
public enum Derivation implements Word {
  /**
   * Per cent of charge of a rested lead-acid battery from voltage [V], temperature [Cel], rested
   * [h].
   */
  STATE_OF_CHARGE(Known::stateOfCharge, Known::shortRest),

  /** Volts as of a 12 V battery, from voltage [V]: a 24 V bank is two of them. */
  TWELVE_VOLT_EQUIVALENT(in -> Known.perTwelveVolts(in, in.get("voltage"))),

  /** Volts above the least of the load test, from voltage [V] after 15 s and temperature [Cel]. */
  LOAD_TEST_MARGIN(Known::loadTestMargin),

  /**
   * Measured over rated cranking amperes, from measured [A] on the scale of the rating, else from
   * measured-as-mca [A] for a rating in CCA.
   */
  CRANKING_SHARE(Known::crankingShare),

  /**
   * Specific gravity of the weakest cell at 80 °F, from gravity [1], temperature [[degF]], as of a
   * battery of 1.280 when full; that of another by its full gravity [1].
   */
  WEAKEST_CELL_GRAVITY(Known::weakestCellAsOfAStartingBattery),

  /** Degrees Celsius between the lowest temperature expected and freezing acid, read alike. */
  ELECTROLYTE_FREEZE_MARGIN(
      in -> Electrolyte.freezeMarginC(Known.lowestExpected(in), Known.weakestCell(in))),

  /** Days until 40 % of the charge is gone, from draw [A]. */
  STORAGE_DAYS(
      in ->
          Endurance.storageDays(
              Known.capacity(Known.battery(in)), Endurance.CRANKING_RESERVE, in.get("draw"))),

  /**
   * Hours until the cranking reserve is gone if a pump sticks on, from current [A] (else the plate)
   * and charge [%] (else full).
   */
  PUMP_ENDURANCE(Known::pumpEndurance),

  /** Real over rated flow of a pump, from volume [L] in time [s]. */
  PUMP_FLOW_SHARE(
      in ->
          Delivery.shareOfRated(
              Delivery.litresPerMinute(in.get("volume"), in.get("time")), Known.ratedFlow(in))),

  /** Current of a running pump over that on its plate, from current [A]. */
  PUMP_CURRENT_SHARE(in -> in.get("current") / Known.plateCurrent(in)),

  /** Inflow over the flow the pump can move, from cycles [1], volume [L] each, period [h]. */
  INFLOW_SHARE(
      in ->
          Delivery.inflowLitresPerHour(in.get("cycles"), in.get("volume"), in.get("period"))
              / 60
              / Known.ratedFlow(in)),

  /** Voltage lost on the way, in per cent of the nominal voltage, from drop [V]. */
  VOLTAGE_DROP_SHARE(in -> 100 * in.get("drop") / Known.nominal(in)),

  /**
   * Degrees Celsius between the lowest temperature expected and freezing coolant, from freezes-at
   * [Cel], else ethylene-glycol or propylene-glycol [%] by volume.
   */
  FREEZE_MARGIN(in -> Known.lowestExpected(in) - Known.coolantFreezes(in)),

  /** Oil used, in per cent of the fuel burned, from added [L] and fuel [L]. */
  OIL_SHARE_OF_FUEL(in -> Consumption.percentOfFuel(in.get("added"), in.get("fuel"))),

  /**
   * Percentage points until water falls out of E10, from water [%] and the lowest temperature
   * expected.
   */
  ETHANOL_WATER_MARGIN(
      in -> EthanolBlend.marginPercent(in.get("water"), Known.lowestExpected(in) * 1.8 + 32)),

  /**
   * Kilopascal lost by a sealed case, from start, end [kPa], start-temperature, end-temperature
   * [Cel].
   */
  SEALED_CASE_DROP(
      in ->
          SealedCase.correctedDrop(
              in.get("start"),
              in.get("end"),
              in.get("start-temperature"),
              in.get("end-temperature"),
              Known.SEA_LEVEL_KPA)),

  /** Years since a battery was fitted, from age [a], else from the year in which it was fitted. */
  BATTERY_AGE(Known::batteryAge),

  /**
   * Per cent by which the lowest cylinder lies below the highest, from compression in any one unit
   * of pressure, a value a cylinder.
   */
  COMPRESSION_SPREAD(Cylinders::compressionSpread),

  /** Highest less lowest cylinder, in the unit of compression, a value a cylinder. */
  COMPRESSION_DIFFERENCE(Cylinders::compressionDifference),

  /** The lowest cylinder, in the unit of compression, a value a cylinder. */
  LOWEST_COMPRESSION(Cylinders::lowestCompression),

  /**
   * Per cent of the air that the worst cylinder loses, from leakage [%] a cylinder, else from
   * supply and cylinder-holds, a value a cylinder, in one unit of pressure.
   */
  LEAK_DOWN(Cylinders::leakDown),

  /** Per cent between the gap that is farthest off, from gap a plug, and specified, in one unit. */
  PLUG_GAP_ERROR(Cylinders::plugGapError),

  /**
   * Disagreement of two hour meters over the allowed one, from control-unit [h] and panel [h], else
   * from the engine's hours.
   */
  METER_DISAGREEMENT(Running::meterDisagreement),

  /**
   * Hours of running a year, from panel [h] (else the engine's hours), earlier [h] and
   * years-between [a]; without an earlier reading from the year of the engine.
   */
  HOURS_PER_YEAR(Running::hoursPerYear),

  /**
   * Years from the model year in the hull's number to engine-year (else that on the engine's
   * plate).
   */
  YEARS_AFTER_HULL(Running::yearsAfterHull),

  /**
   * Revolutions a minute beyond the maker's range at full throttle, from speed, range-from and
   * range-to [{rev}/min].
   */
  SPEED_OFF_RANGE(Running::speedOffRange),

  /** Years from age or oldest [a], else from the year [1] that is printed. */
  AGE(Known::age),

  /**
   * Current over what a wire may carry, from current [A], gauge [1] or area [mm2], insulation [Cel]
   * else 60, in-engine-space [m], bundled [1] else one.
   */
  WIRE_LOAD(Wires::share),

  /** Fuse over the largest for a wire, from fuse [A], the wire as above, system [V] else 12. */
  FUSE_LOAD(Wires::fuseShare),

  /**
   * Voltage lost in per cent, from drop [%], else lost [V], else current [A], length [m] one way
   * and gauge [1] or area [mm2]; of system [V], else the batteries' nominal voltage.
   */
  CIRCUIT_DROP(Wires::lossPercent),

  /** Pull held over pull to be held, from share [1], else held [[lbf_av]] and gauge [1]. */
  CRIMP_SHARE(Wires::crimpShare),

  /**
   * What the pumps really move over the benchmark for the length, from delivered [L/min], else the
   * pumps' plates.
   */
  PUMP_CAPACITY(Spaces::pumpCapacity),

  /** Air at the outlet over air asked for, from air-flow [ft3/min] and volume [ft3]. */
  BLOWER_SHARE(Spaces::blowerShare),

  /** Natural opening over the least, from opening [in2] and volume [ft3]. */
  OPENING_SHARE(Spaces::openingShare),

  /** A metal in used oil, from content [mg/kg] and oil-hours [h]. */
  METAL_IN_OIL(OilSamples::metal),

  /**
   * A metal's rate over the median of earlier rates, from content, fresh-oil, earlier-1 to
   * earlier-3 (for 100 h) [mg/kg], oil-hours [h], added and sump [L].
   */
  WEAR_OVER_EARLIER(OilSamples::wearOverEarlier),

  /** Place of viscosity [mm2/s] at 100 °C in the band of the labelled grade [1]: 0 to 1 in it. */
  GRADE_POSITION(OilSamples::gradePosition),

  /**
   * Base number left in per cent, from left [%], else used-by-d2896 and new-by-d2896, else
   * used-by-d4739 and new-by-d4739 [1, for mgKOH/g].
   */
  BASE_NUMBER_LEFT(OilSamples::baseNumberLeft),

  /** Sodium over potassium, from sodium, sodium-in-fresh-oil, potassium [mg/kg]. */
  SODIUM_OVER_POTASSIUM(OilSamples::sodiumOverPotassium),

  /** Per cent of an anode lost, from lost [%], else weight and weight-when-new [g]. */
  ANODE_LOST(
      in ->
          either(
              in.find("lost"),
              () -> Anode.lossPercent(in.get("weight"), in.get("weight-when-new")))),

  /** Per cent of an anode left, read alike from left [%]. */
  ANODE_LEFT(
      in ->
          either(
              in.find("left"),
              () -> 100 - Anode.lossPercent(in.get("weight"), in.get("weight-when-new")))),

  /** Kelvin by which water warms up, from rise [K], else inlet and outlet [Cel]. */
  TEMPERATURE_RISE(in -> either(in.find("rise"), () -> in.get("outlet") - in.get("inlet"))),

  /**
   * Heat in the raw water over the fuel's power, from flow [L/min], inlet, outlet [Cel], salinity
   * [1] else by the water she lies in, shaft-power [kW] at the load of the test.
   */
  HEAT_SHARE(Known::heatShare),

  /**
   * Volts above a charger's target, from deviation, else voltage, target [V], temperature [Cel].
   */
  CHARGING_DEVIATION(Known::chargingDeviation),

  /**
   * Water in a tank in per cent of its fuel, from share [%], else water and fuel [L], else layer,
   * tank-length, tank-width [cm] of a box that stands level, and fuel [L].
   */
  TANK_WATER(Known::tankWater);

  private final ToDoubleFunction<Inputs> formula;
  private final UnaryOperator<Inputs> taken;

  Derivation(ToDoubleFunction<Inputs> formula) {
    this(formula, UnaryOperator.identity());
  }

  Derivation(ToDoubleFunction<Inputs> formula, UnaryOperator<Inputs> taken) {
    this.formula = formula;
    this.taken = taken;
  }

  /** The readings with what the way they were taken adds to their uncertainty. */
  Inputs asTaken(Inputs inputs) {
    return taken.apply(inputs);
  }

  /** Whether the survey itself can know enough for it. */
  boolean knowsWithoutReading() {
    return switch (this) {
      case BATTERY_AGE, PUMP_CAPACITY, PUMP_ENDURANCE, HOURS_PER_YEAR, YEARS_AFTER_HULL -> true;
      default -> false;
    };
  }

  /**
   * The number, from the readings and from what is known of the component.
   *
   * @throws org.seafettle.problem.Refused outside the formula's validity
   * @throws Criterion.Unjudgeable where something is not known
   */
  double derive(Inputs inputs) {
    return formula.applyAsDouble(inputs);
  }

  /** A reading that may be missing, else something else that is known. */
  static double either(OptionalDouble reading, java.util.function.DoubleSupplier known) {
    return reading.isPresent() ? reading.getAsDouble() : known.getAsDouble();
  }

  @Override
  public String word() {
    return Word.of(this);
  }
}

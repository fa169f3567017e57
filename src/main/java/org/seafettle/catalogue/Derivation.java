package org.seafettle.catalogue;

import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.seafettle.formula.battery.Electrolyte;
import org.seafettle.formula.battery.Endurance;
import org.seafettle.formula.battery.LoadTest;
import org.seafettle.formula.engine.SealedCase;
import org.seafettle.formula.fuel.EthanolBlend;
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
  STATE_OF_CHARGE(Known::stateOfCharge),

  /** Volts as of a 12 V battery, from voltage [V]: a 24 V bank is two of them. */
  TWELVE_VOLT_EQUIVALENT(in -> Known.perTwelveVolts(in, in.get("voltage"))),

  /** Volts above the least of the load test, from voltage [V] after 15 s and temperature [Cel]. */
  LOAD_TEST_MARGIN(
      in ->
          Known.perTwelveVolts(in, in.get("voltage"))
              - LoadTest.minimumVolts(in.get("temperature"))),

  /** Measured over rated cranking amperes, from measured [A]. */
  CRANKING_SHARE(in -> in.get("measured") / Known.rated(in)),

  /** Specific gravity of the weakest cell at 80 °F, from gravity [1], temperature [[degF]]. */
  WEAKEST_CELL_GRAVITY(Known::weakestCell),

  /**
   * Degrees Celsius between the lowest temperature expected and freezing acid, as the row above.
   */
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
   * [Cel].
   */
  FREEZE_MARGIN(in -> Known.lowestExpected(in) - in.get("freezes-at")),

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
  BATTERY_AGE(Known::batteryAge);

  private final ToDoubleFunction<Inputs> formula;

  Derivation(ToDoubleFunction<Inputs> formula) {
    this.formula = formula;
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

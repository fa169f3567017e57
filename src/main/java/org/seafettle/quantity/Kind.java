package org.seafettle.quantity;

/** What a quantity measures. Quantities of one kind can be converted into each other. */
public enum Kind {
  RATIO("a plain number, a percentage or a share", "1.265, 5 % or 45 ppm"),
  VOLTAGE("a voltage", "12.4 V"),
  CURRENT("a current", "2.1 A"),
  RESISTANCE("a resistance", "0.3 Ohm"),
  CHARGE("a battery capacity", "90 Ah"),
  POWER("a power", "85 kW"),
  ENERGY("an energy", "1.2 kWh"),
  /** A level on a scale; a difference is asked for with {@link Quantity#differenceIn}. */
  TEMPERATURE("a temperature", "18 °C"),
  PRESSURE("a pressure", "0.7 bar"),
  LENGTH("a length", "7.6 m"),
  AREA("an area", "35 mm2"),
  VOLUME("a volume", "300 L"),
  MASS("a mass", "4.2 kg"),
  DENSITY("a density", "0.745 kg/L"),
  DURATION("a duration", "15 min or 612.4 h"),
  FREQUENCY("a number of times in a period", "4 /d or 650 rpm"),
  VOLUME_FLOW("a flow", "20 L/min"),
  KINEMATIC_VISCOSITY("a kinematic viscosity", "14.5 mm2/s"),
  FORCE("a force", "35 lbf"),
  TORQUE("a torque", "13.5 N.m"),
  SPEED("a speed", "6.5 kn"),
  ANGLE("an angle", "12 deg");

  private final String phrase;
  private final String example;

  Kind(String phrase, String example) {
    this.phrase = phrase;
    this.example = example;
  }

  /** With its article, for sentences: {@code a voltage}. */
  public String phrase() {
    return phrase;
  }

  /** As a person would write one: {@code 12.4 V}. */
  public String example() {
    return example;
  }
}

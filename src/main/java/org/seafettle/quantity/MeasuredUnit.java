package org.seafettle.quantity;

import java.util.List;
import org.seafettle.problem.Refused;

/**
 * The units in which a survey may be written. Each has its code in the Unified Code for Units of
 * Measure (UCUM 2.2, case sensitive), the symbol in which it is printed, and further spellings that
 * people use. A gallon is the US gallon. A month and a year are the mean Julian ones of UCUM: good
 * for display and for rough durations, never for a date, which is counted on the calendar.
 */
public enum MeasuredUnit {
  ONE(Kind.RATIO, "1", ""),
  PERCENT(Kind.RATIO, "%", "%", "percent", "pct"),
  PARTS_PER_MILLION(Kind.RATIO, "[ppm]", "ppm"),
  MILLIGRAM_PER_KILOGRAM(Kind.RATIO, "mg/kg", "mg/kg"),
  MILLIGRAM_PER_GRAM(Kind.RATIO, "mg/g", "mg/g", "mgKOH/g", "mg KOH/g"),
  GRAM_PER_KILOGRAM(Kind.RATIO, "g/kg", "g/kg"),
  VOLT(Kind.VOLTAGE, "V", "V", "volt", "volts"),
  MILLIVOLT(Kind.VOLTAGE, "mV", "mV", "millivolt", "millivolts"),
  AMPERE(Kind.CURRENT, "A", "A", "amp", "amps", "ampere", "amperes"),
  MILLIAMPERE(Kind.CURRENT, "mA", "mA", "milliamp", "milliamps"),
  OHM(Kind.RESISTANCE, "Ohm", "Ω", "ohm", "ohms"),
  MILLIOHM(Kind.RESISTANCE, "mOhm", "mΩ", "milliohm", "milliohms"),
  KILOOHM(Kind.RESISTANCE, "kOhm", "kΩ", "kilohm", "kilohms"),
  MEGAOHM(Kind.RESISTANCE, "MOhm", "MΩ", "megohm", "megohms"),
  AMPERE_HOUR(Kind.CHARGE, "A.h", "Ah", "A h", "A·h", "amp-hours"),
  WATT(Kind.POWER, "W", "W", "watt", "watts"),
  KILOWATT(Kind.POWER, "kW", "kW"),
  HORSEPOWER(Kind.POWER, "[HP]", "hp", "HP", "bhp"),
  WATT_HOUR(Kind.ENERGY, "W.h", "Wh", "W h", "W·h"),
  KILOWATT_HOUR(Kind.ENERGY, "kW.h", "kWh", "kW h", "kW·h"),
  CELSIUS(Kind.TEMPERATURE, "Cel", "°C", "℃", "° C", "degC", "deg C", "celsius"),
  FAHRENHEIT(Kind.TEMPERATURE, "[degF]", "°F", "℉", "° F", "degF", "deg F", "fahrenheit"),
  KELVIN(Kind.TEMPERATURE, "K", "K", "kelvin"),
  PASCAL(Kind.PRESSURE, "Pa", "Pa"),
  KILOPASCAL(Kind.PRESSURE, "kPa", "kPa"),
  MEGAPASCAL(Kind.PRESSURE, "MPa", "MPa"),
  BAR(Kind.PRESSURE, "bar", "bar", "barg", "bars"),
  MILLIBAR(Kind.PRESSURE, "mbar", "mbar"),
  POUND_PER_SQUARE_INCH(Kind.PRESSURE, "[psi]", "psi", "psig", "lbf/in2"),
  INCH_OF_MERCURY(Kind.PRESSURE, "[in_i'Hg]", "inHg", "in Hg"),
  MILLIMETRE_OF_MERCURY(Kind.PRESSURE, "mm[Hg]", "mmHg", "mm Hg"),
  INCH_OF_WATER(Kind.PRESSURE, "[in_i'H2O]", "inH2O", "in H2O"),
  METRE(Kind.LENGTH, "m", "m", "metre", "metres", "meter", "meters"),
  CENTIMETRE(Kind.LENGTH, "cm", "cm"),
  MILLIMETRE(Kind.LENGTH, "mm", "mm"),
  MICROMETRE(Kind.LENGTH, "um", "µm", "μm", "micron", "microns"),
  INCH(Kind.LENGTH, "[in_i]", "in", "inch", "inches", "\"", "″"),
  FOOT(Kind.LENGTH, "[ft_i]", "ft", "foot", "feet", "'", "′"),
  SQUARE_MILLIMETRE(Kind.AREA, "mm2", "mm²", "sq mm"),
  SQUARE_CENTIMETRE(Kind.AREA, "cm2", "cm²", "sq cm"),
  SQUARE_METRE(Kind.AREA, "m2", "m²", "sq m"),
  SQUARE_INCH(Kind.AREA, "[sin_i]", "in²", "in2", "sq in"),
  SQUARE_FOOT(Kind.AREA, "[sft_i]", "ft²", "ft2", "sq ft"),
  CIRCULAR_MIL(Kind.AREA, "[cml_i]", "cmil", "CM", "circular mil", "circular mils"),
  LITRE(Kind.VOLUME, "L", "L", "l", "litre", "litres", "liter", "liters"),
  MILLILITRE(Kind.VOLUME, "mL", "mL", "ml", "cm3", "cm³", "cc"),
  CUBIC_METRE(Kind.VOLUME, "m3", "m³"),
  GALLON(Kind.VOLUME, "[gal_us]", "gal", "US gal", "gallon", "gallons"),
  QUART(Kind.VOLUME, "[qt_us]", "qt", "US qt", "quart", "quarts"),
  FLUID_OUNCE(Kind.VOLUME, "[foz_us]", "fl oz", "fl. oz", "floz"),
  TEASPOON(Kind.VOLUME, "[tsp_us]", "tsp", "teaspoon", "teaspoons"),
  CUBIC_INCH(Kind.VOLUME, "[cin_i]", "in³", "in3", "cu in"),
  CUBIC_FOOT(Kind.VOLUME, "[cft_i]", "ft³", "ft3", "cu ft"),
  KILOGRAM(Kind.MASS, "kg", "kg"),
  GRAM(Kind.MASS, "g", "g"),
  POUND(Kind.MASS, "[lb_av]", "lb", "lbs", "pound", "pounds"),
  KILOGRAM_PER_CUBIC_METRE(Kind.DENSITY, "kg/m3", "kg/m³"),
  KILOGRAM_PER_LITRE(Kind.DENSITY, "kg/L", "kg/L", "kg/l"),
  GRAM_PER_MILLILITRE(Kind.DENSITY, "g/mL", "g/mL", "g/ml", "g/cm3", "g/cm³"),
  SECOND(Kind.DURATION, "s", "s", "sec", "second", "seconds"),
  MINUTE(Kind.DURATION, "min", "min", "mins", "minute", "minutes"),
  HOUR(Kind.DURATION, "h", "h", "hr", "hrs", "hour", "hours"),
  DAY(Kind.DURATION, "d", "d", "day", "days"),
  WEEK(Kind.DURATION, "wk", "wk", "week", "weeks"),
  MONTH(Kind.DURATION, "mo", "mo", "month", "months"),
  YEAR(Kind.DURATION, "a", "y", "yr", "yrs", "year", "years"),
  HERTZ(Kind.FREQUENCY, "Hz", "Hz", "/s"),
  PER_MINUTE(Kind.FREQUENCY, "/min", "/min", "per min", "per minute"),
  REVOLUTION_PER_MINUTE(Kind.FREQUENCY, "{rev}/min", "rpm", "RPM", "r/min"),
  PER_HOUR(Kind.FREQUENCY, "/h", "/h", "per h", "per hour", "/hour"),
  PER_DAY(Kind.FREQUENCY, "/d", "/d", "per d", "per day", "/day"),
  LITRE_PER_SECOND(Kind.VOLUME_FLOW, "L/s", "L/s", "l/s"),
  LITRE_PER_MINUTE(Kind.VOLUME_FLOW, "L/min", "L/min", "l/min", "lpm"),
  LITRE_PER_HOUR(Kind.VOLUME_FLOW, "L/h", "L/h", "l/h", "lph"),
  MILLILITRE_PER_HOUR(Kind.VOLUME_FLOW, "mL/h", "mL/h", "ml/h"),
  CUBIC_METRE_PER_HOUR(Kind.VOLUME_FLOW, "m3/h", "m³/h"),
  GALLON_PER_MINUTE(Kind.VOLUME_FLOW, "[gal_us]/min", "gal/min", "gpm", "GPM"),
  GALLON_PER_HOUR(Kind.VOLUME_FLOW, "[gal_us]/h", "gal/h", "gph", "GPH"),
  CUBIC_FOOT_PER_MINUTE(Kind.VOLUME_FLOW, "[cft_i]/min", "ft³/min", "ft3/min", "cfm", "CFM"),
  SQUARE_MILLIMETRE_PER_SECOND(Kind.KINEMATIC_VISCOSITY, "mm2/s", "mm²/s"),
  CENTISTOKES(Kind.KINEMATIC_VISCOSITY, "cSt", "cSt"),
  NEWTON(Kind.FORCE, "N", "N", "newton", "newtons"),
  POUND_FORCE(Kind.FORCE, "[lbf_av]", "lbf"),
  NEWTON_METRE(Kind.TORQUE, "N.m", "N·m", "N⋅m", "N m", "Nm"),
  POUND_FORCE_INCH(
      Kind.TORQUE, "[lbf_av].[in_i]", "lbf·in", "lbf.in", "lbf in", "in-lb", "in-lbf", "lb-in"),
  POUND_FORCE_FOOT(
      Kind.TORQUE, "[lbf_av].[ft_i]", "lbf·ft", "lbf.ft", "lbf ft", "ft-lb", "ft-lbf", "lb-ft"),
  KNOT(Kind.SPEED, "[kn_i]", "kn", "knot", "knots", "kt", "kts"),
  METRE_PER_SECOND(Kind.SPEED, "m/s", "m/s"),
  KILOMETRE_PER_HOUR(Kind.SPEED, "km/h", "km/h"),
  DEGREE(Kind.ANGLE, "deg", "°", "degree", "degrees");

  private final Kind kind;
  private final String code;
  private final String symbol;
  private final List<String> spellings;

  MeasuredUnit(Kind kind, String code, String symbol, String... spellings) {
    this.kind = kind;
    this.code = code;
    this.symbol = symbol;
    this.spellings = List.of(spellings);
  }

  /**
   * The unit of this UCUM code, symbol or spelling.
   *
   * @throws Refused when there is none, naming the nearest
   */
  public static MeasuredUnit of(String written) {
    return UnitNames.find(written, "");
  }

  public Kind kind() {
    return kind;
  }

  /** The UCUM code, such as {@code [gal_us]/h}. */
  public String code() {
    return code;
  }

  /** As it is printed, such as {@code gal/h}; empty for a plain number. */
  public String symbol() {
    return symbol;
  }

  /** What people write besides the code and the symbol. */
  public List<String> spellings() {
    return spellings;
  }
}

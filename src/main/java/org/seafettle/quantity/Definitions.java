package org.seafettle.quantity;

import static javax.measure.MetricPrefix.CENTI;
import static javax.measure.MetricPrefix.HECTO;
import static javax.measure.MetricPrefix.KILO;
import static javax.measure.MetricPrefix.MEGA;
import static javax.measure.MetricPrefix.MICRO;
import static javax.measure.MetricPrefix.MILLI;
import static tech.units.indriya.AbstractUnit.ONE;
import static tech.units.indriya.unit.Units.AMPERE;
import static tech.units.indriya.unit.Units.CELSIUS;
import static tech.units.indriya.unit.Units.CUBIC_METRE;
import static tech.units.indriya.unit.Units.DAY;
import static tech.units.indriya.unit.Units.GRAM;
import static tech.units.indriya.unit.Units.HERTZ;
import static tech.units.indriya.unit.Units.HOUR;
import static tech.units.indriya.unit.Units.KELVIN;
import static tech.units.indriya.unit.Units.KILOGRAM;
import static tech.units.indriya.unit.Units.LITRE;
import static tech.units.indriya.unit.Units.METRE;
import static tech.units.indriya.unit.Units.METRE_PER_SECOND;
import static tech.units.indriya.unit.Units.MINUTE;
import static tech.units.indriya.unit.Units.NEWTON;
import static tech.units.indriya.unit.Units.OHM;
import static tech.units.indriya.unit.Units.PASCAL;
import static tech.units.indriya.unit.Units.RADIAN;
import static tech.units.indriya.unit.Units.SECOND;
import static tech.units.indriya.unit.Units.SQUARE_METRE;
import static tech.units.indriya.unit.Units.VOLT;
import static tech.units.indriya.unit.Units.WATT;

import javax.measure.Unit;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Temperature;
import tech.units.indriya.function.MultiplyConverter;
import tech.units.indriya.function.RationalNumber;

/**
 * What each unit is, as UCUM 2.2 defines it. Apart from {@link MeasuredUnit}, because the units
 * library takes a tenth of a second to wake: it is touched only when one unit is turned into
 * another.
 */
final class Definitions {

  private static final Unit<Length> INCH = METRE.multiply(254).divide(10_000);
  private static final Unit<Length> FOOT = INCH.multiply(12);
  private static final Unit<Mass> POUND = KILOGRAM.multiply(45_359_237).divide(100_000_000);

  /** Pound times standard gravity, 9.80665 m/s2. */
  private static final Unit<?> POUND_FORCE =
      POUND.multiply(980_665).divide(100_000).multiply(METRE).divide(SECOND.pow(2));

  private static final Unit<?> GALLON = INCH.pow(3).multiply(231);

  /** UCUM: 133.3220 kPa for a metre of mercury. */
  private static final Unit<?> METRE_OF_MERCURY = PASCAL.multiply(133_322);

  /** UCUM: 9.80665 kPa for a metre of water. */
  private static final Unit<?> METRE_OF_WATER = PASCAL.multiply(980_665).divide(100);

  private static final Unit<Temperature> RANKINE = KELVIN.multiply(5).divide(9);

  private Definitions() {}

  static double convertLevel(double value, MeasuredUnit from, MeasuredUnit to) {
    return convert(value, of(from), of(to));
  }

  static double convertDifference(double value, MeasuredUnit from, MeasuredUnit to) {
    return convert(value, difference(from), difference(to));
  }

  private static double convert(double value, Unit<?> from, Unit<?> to) {
    try {
      return from.getConverterToAny(to).convert(value);
    } catch (javax.measure.IncommensurableException wrongKind) {
      throw new IllegalStateException(from + " and " + to + " are of one kind", wrongKind);
    }
  }

  private static Unit<?> difference(MeasuredUnit unit) {
    return switch (unit) {
      case CELSIUS -> KELVIN;
      case FAHRENHEIT -> RANKINE;
      default -> of(unit);
    };
  }

  static Unit<?> of(MeasuredUnit unit) {
    return switch (unit.kind()) {
      case RATIO, VOLTAGE, CURRENT, RESISTANCE, CHARGE, POWER, ENERGY -> electricalOrRatio(unit);
      case TEMPERATURE, PRESSURE, MASS, DENSITY, FORCE, TORQUE -> mechanical(unit);
      case LENGTH, AREA, VOLUME, ANGLE -> geometric(unit);
      case DURATION, FREQUENCY, VOLUME_FLOW, KINEMATIC_VISCOSITY, SPEED -> timed(unit);
    };
  }

  private static Unit<?> electricalOrRatio(MeasuredUnit unit) {
    return switch (unit) {
      case ONE -> ONE;
      case PERCENT -> ONE.divide(100);
      case PARTS_PER_MILLION, MILLIGRAM_PER_KILOGRAM -> ONE.divide(1_000_000);
      case MILLIGRAM_PER_GRAM, GRAM_PER_KILOGRAM -> ONE.divide(1000);
      case VOLT -> VOLT;
      case MILLIVOLT -> MILLI(VOLT);
      case AMPERE -> AMPERE;
      case MILLIAMPERE -> MILLI(AMPERE);
      case OHM -> OHM;
      case MILLIOHM -> MILLI(OHM);
      case KILOOHM -> KILO(OHM);
      case MEGAOHM -> MEGA(OHM);
      case AMPERE_HOUR -> AMPERE.multiply(HOUR);
      case WATT -> WATT;
      case KILOWATT -> KILO(WATT);
      case HORSEPOWER -> POUND_FORCE.multiply(FOOT).multiply(550).divide(SECOND);
      case WATT_HOUR -> WATT.multiply(HOUR);
      case KILOWATT_HOUR -> KILO(WATT).multiply(HOUR);
      default -> throw undefined(unit);
    };
  }

  private static Unit<?> mechanical(MeasuredUnit unit) {
    return switch (unit) {
      case CELSIUS -> CELSIUS;
      case FAHRENHEIT -> RANKINE.shift(RationalNumber.of(45_967, 100));
      case KELVIN -> KELVIN;
      case PASCAL -> PASCAL;
      case KILOPASCAL -> KILO(PASCAL);
      case MEGAPASCAL -> MEGA(PASCAL);
      case BAR -> PASCAL.multiply(100_000);
      case MILLIBAR -> HECTO(PASCAL);
      case POUND_PER_SQUARE_INCH -> POUND_FORCE.divide(INCH.pow(2));
      case INCH_OF_MERCURY -> METRE_OF_MERCURY.multiply(254).divide(10_000);
      case MILLIMETRE_OF_MERCURY -> METRE_OF_MERCURY.divide(1000);
      case INCH_OF_WATER -> METRE_OF_WATER.multiply(254).divide(10_000);
      case KILOGRAM -> KILOGRAM;
      case GRAM -> GRAM;
      case POUND -> POUND;
      case KILOGRAM_PER_CUBIC_METRE -> KILOGRAM.divide(CUBIC_METRE);
      case KILOGRAM_PER_LITRE -> KILOGRAM.divide(LITRE);
      case GRAM_PER_MILLILITRE -> GRAM.divide(MILLI(LITRE));
      case NEWTON -> NEWTON;
      case POUND_FORCE -> POUND_FORCE;
      case NEWTON_METRE -> NEWTON.multiply(METRE);
      case POUND_FORCE_INCH -> POUND_FORCE.multiply(INCH);
      case POUND_FORCE_FOOT -> POUND_FORCE.multiply(FOOT);
      default -> throw undefined(unit);
    };
  }

  private static Unit<?> geometric(MeasuredUnit unit) {
    return switch (unit) {
      case METRE -> METRE;
      case CENTIMETRE -> CENTI(METRE);
      case MILLIMETRE -> MILLI(METRE);
      case MICROMETRE -> MICRO(METRE);
      case INCH -> INCH;
      case FOOT -> FOOT;
      case SQUARE_MILLIMETRE -> MILLI(METRE).pow(2);
      case SQUARE_CENTIMETRE -> CENTI(METRE).pow(2);
      case SQUARE_METRE -> SQUARE_METRE;
      case SQUARE_INCH -> INCH.pow(2);
      case SQUARE_FOOT -> FOOT.pow(2);
      case CIRCULAR_MIL -> INCH.divide(1000).pow(2).transform(MultiplyConverter.of(Math.PI / 4));
      case LITRE -> LITRE;
      case MILLILITRE -> MILLI(LITRE);
      case CUBIC_METRE -> CUBIC_METRE;
      case GALLON -> GALLON;
      case QUART -> GALLON.divide(4);
      case FLUID_OUNCE -> GALLON.divide(128);
      case TEASPOON -> GALLON.divide(768);
      case CUBIC_INCH -> INCH.pow(3);
      case CUBIC_FOOT -> FOOT.pow(3);
      case DEGREE -> RADIAN.transform(MultiplyConverter.of(Math.PI / 180));
      default -> throw undefined(unit);
    };
  }

  private static Unit<?> timed(MeasuredUnit unit) {
    return switch (unit) {
      case SECOND -> SECOND;
      case MINUTE -> MINUTE;
      case HOUR -> HOUR;
      case DAY -> DAY;
      case WEEK -> DAY.multiply(7);
      case MONTH -> DAY.multiply(36_525).divide(1200);
      case YEAR -> DAY.multiply(36_525).divide(100);
      case HERTZ -> HERTZ;
      case PER_MINUTE, REVOLUTION_PER_MINUTE -> ONE.divide(MINUTE);
      case PER_HOUR -> ONE.divide(HOUR);
      case PER_DAY -> ONE.divide(DAY);
      case LITRE_PER_SECOND -> LITRE.divide(SECOND);
      case LITRE_PER_MINUTE -> LITRE.divide(MINUTE);
      case LITRE_PER_HOUR -> LITRE.divide(HOUR);
      case MILLILITRE_PER_HOUR -> MILLI(LITRE).divide(HOUR);
      case CUBIC_METRE_PER_HOUR -> CUBIC_METRE.divide(HOUR);
      case GALLON_PER_MINUTE -> GALLON.divide(MINUTE);
      case GALLON_PER_HOUR -> GALLON.divide(HOUR);
      case CUBIC_FOOT_PER_MINUTE -> FOOT.pow(3).divide(MINUTE);
      case SQUARE_MILLIMETRE_PER_SECOND, CENTISTOKES -> MILLI(METRE).pow(2).divide(SECOND);
      case KNOT -> METRE.multiply(1852).divide(HOUR);
      case METRE_PER_SECOND -> METRE_PER_SECOND;
      case KILOMETRE_PER_HOUR -> KILO(METRE).divide(HOUR);
      default -> throw undefined(unit);
    };
  }

  private static IllegalStateException undefined(MeasuredUnit unit) {
    return new IllegalStateException(unit + " has no definition");
  }
}

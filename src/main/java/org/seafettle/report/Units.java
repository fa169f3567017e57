package org.seafettle.report;

import static org.seafettle.quantity.MeasuredUnit.*;

import java.util.Map;
import org.seafettle.quantity.MeasuredUnit;
import org.seafettle.quantity.Quantity;
import org.seafettle.survey.Word;

/** In which units a report tells its numbers. Of a reading it also tells how it was recorded. */
public enum Units implements Word {
  AS_RECORDED(Map.of()),
  METRIC(
      Map.ofEntries(
          Map.entry(FAHRENHEIT, CELSIUS),
          Map.entry(POUND_PER_SQUARE_INCH, BAR),
          Map.entry(INCH_OF_MERCURY, KILOPASCAL),
          Map.entry(INCH_OF_WATER, KILOPASCAL),
          Map.entry(FOOT, METRE),
          Map.entry(INCH, MILLIMETRE),
          Map.entry(SQUARE_INCH, SQUARE_CENTIMETRE),
          Map.entry(SQUARE_FOOT, SQUARE_METRE),
          Map.entry(CIRCULAR_MIL, SQUARE_MILLIMETRE),
          Map.entry(GALLON, LITRE),
          Map.entry(QUART, LITRE),
          Map.entry(FLUID_OUNCE, MILLILITRE),
          Map.entry(TEASPOON, MILLILITRE),
          Map.entry(CUBIC_INCH, MILLILITRE),
          Map.entry(CUBIC_FOOT, CUBIC_METRE),
          Map.entry(GALLON_PER_MINUTE, LITRE_PER_MINUTE),
          Map.entry(GALLON_PER_HOUR, LITRE_PER_HOUR),
          Map.entry(CUBIC_FOOT_PER_MINUTE, CUBIC_METRE_PER_HOUR),
          Map.entry(HORSEPOWER, KILOWATT),
          Map.entry(POUND, KILOGRAM),
          Map.entry(POUND_FORCE, NEWTON),
          Map.entry(POUND_FORCE_INCH, NEWTON_METRE),
          Map.entry(POUND_FORCE_FOOT, NEWTON_METRE))),
  US(
      Map.ofEntries(
          Map.entry(CELSIUS, FAHRENHEIT),
          Map.entry(KELVIN, FAHRENHEIT),
          Map.entry(BAR, POUND_PER_SQUARE_INCH),
          Map.entry(KILOPASCAL, POUND_PER_SQUARE_INCH),
          Map.entry(MEGAPASCAL, POUND_PER_SQUARE_INCH),
          Map.entry(MILLIBAR, INCH_OF_WATER),
          Map.entry(METRE, FOOT),
          Map.entry(CENTIMETRE, INCH),
          Map.entry(MILLIMETRE, INCH),
          Map.entry(SQUARE_CENTIMETRE, SQUARE_INCH),
          Map.entry(SQUARE_METRE, SQUARE_FOOT),
          Map.entry(SQUARE_MILLIMETRE, CIRCULAR_MIL),
          Map.entry(LITRE, GALLON),
          Map.entry(MILLILITRE, FLUID_OUNCE),
          Map.entry(CUBIC_METRE, CUBIC_FOOT),
          Map.entry(LITRE_PER_SECOND, GALLON_PER_MINUTE),
          Map.entry(LITRE_PER_MINUTE, GALLON_PER_MINUTE),
          Map.entry(LITRE_PER_HOUR, GALLON_PER_HOUR),
          Map.entry(CUBIC_METRE_PER_HOUR, CUBIC_FOOT_PER_MINUTE),
          Map.entry(KILOWATT, HORSEPOWER),
          Map.entry(KILOGRAM, POUND),
          Map.entry(NEWTON, POUND_FORCE),
          Map.entry(NEWTON_METRE, POUND_FORCE_FOOT)));

  private final Map<MeasuredUnit, MeasuredUnit> instead;

  Units(Map<MeasuredUnit, MeasuredUnit> instead) {
    this.instead = instead;
  }

  @Override
  public String word() {
    return Word.of(this);
  }

  /** The unit in which a quantity is told that has this one. */
  MeasuredUnit instead(MeasuredUnit unit) {
    return instead.getOrDefault(unit, unit);
  }

  /** A quantity as it is told, with about the resolution that it was written with. */
  Quantity told(Quantity quantity) {
    var unit = instead(quantity.unit());
    return isDifference(quantity.unit()) ? quantity.toDifference(unit) : quantity.to(unit);
  }

  /** A value in the unit in which it is told. */
  double told(double value, MeasuredUnit unit) {
    var quantity = Quantity.of(value, unit);
    return isDifference(unit) ? quantity.differenceIn(instead(unit)) : quantity.in(instead(unit));
  }

  /** Nobody aboard reads a thermometer in kelvin: what is in kelvin lies between two readings. */
  static boolean isDifference(MeasuredUnit unit) {
    return unit == KELVIN;
  }
}

package org.seafettle.report;

import static org.seafettle.quantity.MeasuredUnit.*;

import java.util.Map;
import org.seafettle.quantity.MeasuredUnit;

/** In which units a report tells its numbers. The readings annexe keeps those of the survey. */
public enum Units {
  AS_RECORDED(Map.of()),
  METRIC(
      Map.ofEntries(
          Map.entry(FAHRENHEIT, CELSIUS),
          Map.entry(POUND_PER_SQUARE_INCH, BAR),
          Map.entry(FOOT, METRE),
          Map.entry(INCH, MILLIMETRE),
          Map.entry(GALLON, LITRE),
          Map.entry(QUART, LITRE),
          Map.entry(GALLON_PER_MINUTE, LITRE_PER_MINUTE),
          Map.entry(GALLON_PER_HOUR, LITRE_PER_HOUR),
          Map.entry(HORSEPOWER, KILOWATT),
          Map.entry(POUND, KILOGRAM),
          Map.entry(POUND_FORCE_FOOT, NEWTON_METRE))),
  US(
      Map.ofEntries(
          Map.entry(CELSIUS, FAHRENHEIT),
          Map.entry(BAR, POUND_PER_SQUARE_INCH),
          Map.entry(KILOPASCAL, POUND_PER_SQUARE_INCH),
          Map.entry(METRE, FOOT),
          Map.entry(CENTIMETRE, INCH),
          Map.entry(LITRE, GALLON),
          Map.entry(LITRE_PER_MINUTE, GALLON_PER_MINUTE),
          Map.entry(LITRE_PER_HOUR, GALLON_PER_HOUR),
          Map.entry(KILOWATT, HORSEPOWER),
          Map.entry(KILOGRAM, POUND),
          Map.entry(NEWTON_METRE, POUND_FORCE_FOOT)));

  private final Map<MeasuredUnit, MeasuredUnit> instead;

  Units(Map<MeasuredUnit, MeasuredUnit> instead) {
    this.instead = instead;
  }

  /** The unit in which a quantity is told that has this one. */
  MeasuredUnit instead(MeasuredUnit unit) {
    return instead.getOrDefault(unit, unit);
  }
}

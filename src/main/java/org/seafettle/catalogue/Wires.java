package org.seafettle.catalogue;

import org.seafettle.formula.cable.Ampacity;
import org.seafettle.formula.cable.Gauge;
import org.seafettle.formula.cable.Overcurrent;
import org.seafettle.formula.cable.Terminal;
import org.seafettle.formula.cable.VoltageDrop;
import org.seafettle.quantity.MeasuredUnit;

/** What derivations compute of wires, from a gauge [1] or an area [mm2]. */
final class Wires {

  /** Insulation whose rating nobody can read, °C: the first column of the table. */
  private static final double UNREADABLE = 60;

  private static final double METRES_PER_FOOT = 0.3048;

  private Wires() {}

  /** Current over what the wire may carry where it runs. */
  static double share(Inputs in) {
    var bundled = (int) in.find("bundled").orElse(1);
    boolean engineSpace = in.get("in-engine-space") > 0;
    return in.get("current") / Ampacity.amperes(gauge(in), insulation(in), bundled, engineSpace);
  }

  /** A fuse over the largest that the wire admits; below 50 V where the system is not given. */
  static double fuseShare(Inputs in) {
    var table = Ampacity.amperes(gauge(in), insulation(in));
    return in.get("fuse") / Overcurrent.largestAmperes(table, in.find("system").orElse(12));
  }

  /** Voltage lost, in per cent: as measured, else from current, length one way and wire. */
  static double lossPercent(Inputs in) {
    return Derivation.either(
        in.find("drop"),
        () ->
            VoltageDrop.percent(
                Derivation.either(in.find("lost"), () -> computedDrop(in)),
                Derivation.either(in.find("system"), () -> nominal(in))));
  }

  /** What a crimp held over what its size has to hold: as given, else from held [[lbf_av]]. */
  static double crimpShare(Inputs in) {
    return Derivation.either(
        in.find("share"), () -> in.get("held") / Terminal.crimpPounds(gauge(in)));
  }

  private static double computedDrop(Inputs in) {
    double circularMils =
        in.find("area").isPresent() ? Gauge.circularMils(in.get("area")) : gauge(in).circularMils();
    double thereAndBack = 2 * in.get("length") / METRES_PER_FOOT;
    return VoltageDrop.volts(in.get("current"), thereAndBack, circularMils);
  }

  /** The one nominal voltage of all batteries aboard. */
  private static double nominal(Inputs in) {
    var all =
        in.facts().survey().outfit().batteries().stream()
            .flatMap(b -> b.nominal().stream())
            .map(q -> q.in(MeasuredUnit.VOLT))
            .distinct()
            .toList();
    if (all.size() != 1) {
      throw Known.missing("system-voltage");
    }
    return all.get(0);
  }

  private static Gauge gauge(Inputs in) {
    var number = in.find("gauge");
    if (number.isPresent()) {
      return Gauge.ofNumber(number.getAsDouble());
    }
    return Gauge.notAbove(in.find("area").orElseThrow(() -> Known.missing("wire-size")));
  }

  private static int insulation(Inputs in) {
    return (int) in.find("insulation").orElse(UNREADABLE);
  }
}

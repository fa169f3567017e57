package org.seafettle.formula;

import static org.seafettle.quantity.MeasuredUnit.FOOT;
import static org.seafettle.quantity.MeasuredUnit.GALLON_PER_HOUR;
import static org.seafettle.quantity.MeasuredUnit.GALLON_PER_MINUTE;
import static org.seafettle.quantity.MeasuredUnit.INCH;
import static org.seafettle.quantity.MeasuredUnit.LITRE_PER_MINUTE;
import static org.seafettle.quantity.MeasuredUnit.METRE;
import static org.seafettle.quantity.MeasuredUnit.MILLIMETRE;

import org.seafettle.formula.pump.CapacityBenchmark;
import org.seafettle.formula.pump.Delivery;
import org.seafettle.formula.pump.Ingress;
import org.seafettle.formula.space.Extinguishers;
import org.seafettle.formula.space.Ventilation;

/** BI: flooding, pumps, ventilation and extinguishers. */
final class BilgeFamilies {

  private BilgeFamilies() {}

  static void addTo(Families f) {
    f.number("BI-K", in -> in.asks("576") ? gallons(1, 1, 1) : squareFoot());
    f.number("BI-ORI", in -> gallons(in.number("D_in"), in.number("h_ft"), in.number("Cd")));
    f.number("BI-ORM", BilgeFamilies::metricHole);
    f.number("BI-FILL", in -> Ingress.fillingSeconds(in.number("V_gal"), in.number("Q_gpm")));
    f.number("BI-GAIN", in -> Ingress.poundsPerMinute(in.number("Q_gpm")));
    f.number("BI-BRK", BilgeFamilies::balancedHole);
    f.number("BI-PLUG", in -> Ingress.plugPounds(in.number("D_in"), in.number("h_ft")));
    f.number("BI-PUMP", in -> Delivery.shareOfRated(in.number("real_gph"), in.number("rated_gph")));
    f.number("BI-GPM", in -> Families.converted(in, "gpm", "L/min"));
    f.words("BI-CAP", BilgeFamilies::benchmark);
    f.words("BI-BLO", BilgeFamilies::blower);
    f.number("BI-NAT", in -> Ventilation.naturalOpeningSquareInches(in.number("V_ft3")));
    f.words("BI-EXT", in -> Extinguishers.lastDay((int) in.number("made")).toString());
    f.number("BI-EXN", in -> Extinguishers.required(in.number("LOA_ft"), in.yes("fixed_system")));
  }

  /** Four holes of a quarter of a square foot each, as one would be larger than the formula's. */
  private static double squareFoot() {
    return 4 * gallons(6 * Math.sqrt(4 / Math.PI), 1, 1);
  }

  private static double gallons(double inches, double feet, double coefficient) {
    double litres =
        Ingress.litresPerMinute(
            Families.converted(inches, INCH, MILLIMETRE),
            Families.converted(feet, FOOT, METRE),
            coefficient);
    return Families.converted(litres, LITRE_PER_MINUTE, GALLON_PER_MINUTE);
  }

  private static double metricHole(Inputs in) {
    double litres = Ingress.litresPerMinute(in.number("d_mm"), in.number("h_m"), in.number("Cd"));
    return in.asks("m3/s") ? litres / 60_000 : litres;
  }

  private static double balancedHole(Inputs in) {
    double millimetres =
        Ingress.balancedMillimetres(
            Families.converted(in.number("real_gph"), GALLON_PER_HOUR, LITRE_PER_MINUTE),
            Families.converted(in.number("h_ft"), FOOT, METRE),
            Ingress.TYPICAL);
    return Families.converted(millimetres, MILLIMETRE, INCH);
  }

  private static String benchmark(Inputs in) {
    boolean byHand = in.has("fixed") && in.text("fixed").equals("hand");
    var benchmark =
        CapacityBenchmark.smallPassengerVessel(
            in.number("LOA_ft"), (int) in.number("passengers"), in.yes("ferry"), byHand);
    return "%d %d %d %d"
        .formatted(
            benchmark.fixedPumps(),
            benchmark.fixedGallonsPerMinute(),
            benchmark.portablePumps(),
            benchmark.portableGallonsPerMinute().orElseThrow());
  }

  private static String blower(Inputs in) {
    var blower = Ventilation.blower(in.number("V_ft3"));
    return blower.ratedCubicFeetPerMinute() + " " + blower.outputCubicFeetPerMinute();
  }
}

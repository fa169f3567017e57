package org.seafettle.formula;

import java.util.Locale;
import org.seafettle.formula.battery.ChargingVoltage;
import org.seafettle.formula.battery.Chemistry;
import org.seafettle.formula.battery.Electrolyte;
import org.seafettle.formula.battery.Endurance;
import org.seafettle.formula.battery.LoadTest;
import org.seafettle.formula.battery.Peukert;
import org.seafettle.formula.battery.Ratings;
import org.seafettle.formula.battery.StateOfCharge;
import org.seafettle.formula.cable.Ampacity;
import org.seafettle.formula.cable.Gauge;
import org.seafettle.formula.cable.Overcurrent;
import org.seafettle.formula.cable.Overcurrent.Source;
import org.seafettle.formula.cable.Terminal;
import org.seafettle.formula.cable.VoltageDrop;
import org.seafettle.formula.cable.WireTable;
import org.seafettle.formula.galvanic.DrivePotential;
import org.seafettle.formula.galvanic.DrivePotential.Water;

/** EL: batteries, wires and drives. */
final class ElectricalFamilies {

  private ElectricalFamilies() {}

  static void addTo(Families families) {
    electrolyte(families);
    charge(families);
    endurance(families);
    ampacity(families);
    protection(families);
    drop(families);
    gauge(families);
  }

  private static void electrolyte(Families f) {
    f.number("EL-SG", in -> Electrolyte.correctedTo80F(in.number("sg"), in.number("T_F")));
    f.number("EL-SGR", in -> Electrolyte.readingAt(in.number("sg80"), in.number("T_F")));
    f.number("EL-SGM", ElectricalFamilies::metricCorrectionOverTenDegreesF);
    f.number(
        "EL-OCVSG",
        in ->
            in.has("sg")
                ? Electrolyte.restedVolts(in.number("sg"))
                : Electrolyte.fromCellVolts(in.number("cell_V")));
    f.number("EL-SGSOC", in -> Electrolyte.chargePercent(in.number("sg"), 1.280));
    f.number("EL-FRZ", in -> Electrolyte.freezingPointF(in.number("sg")));
    f.words("EL-SPR", in -> Electrolyte.spreadRejects(in.number("spread")) ? "reject" : "accept");
  }

  private static double metricCorrectionOverTenDegreesF(Inputs in) {
    double perDegree = Electrolyte.correctedTo20C(1.25, 21) - 1.25;
    if (Math.abs(perDegree - in.number("c_per_C")) > 1e-9) {
      throw new AssertionError("the coefficient is not the formula's");
    }
    return Electrolyte.correctedTo20C(1.25, 20 + 10 / 1.8) - 1.25;
  }

  private static void charge(Families f) {
    f.number(
        "EL-OCV",
        in ->
            StateOfCharge.fromRestedVoltage(Chemistry.FLOODED, in.number("ocv"), 20, 12)
                .atLeastPercent());
    f.number("EL-LOAD", in -> LoadTest.minimumVolts(in.number("T_C")));
    f.number("EL-HCCA", in -> LoadTest.amperes(in.number("CCA")));
    f.number("EL-GML", in -> LoadTest.tabulatedAmperes(in.number("CCA")));
    f.number(
        "EL-MCA",
        in ->
            in.has("CCA")
                ? Ratings.marineFromCold(in.number("CCA"))
                : Ratings.coldFromMarine(in.number("MCA")));
    f.number(
        "EL-RC",
        in ->
            in.asks("planning")
                ? Ratings.planningAmpereHours(in.number("RC_min"))
                : Ratings.ampereHoursAt25A(in.number("RC_min")));
    f.number("EL-AH", in -> Ratings.ampereHoursAt20Hours(in.number("I_A")));
    f.number("EL-CHG", ElectricalFamilies::chargingVoltage);
    f.number(
        "EL-MC",
        in -> ChargingVoltage.correctedDischargeMinutes(in.number("Mr_min"), in.number("T_C")));
  }

  private static double chargingVoltage(Inputs in) {
    if (in.has("mV_per_C")) {
      double perC = in.number("mV_per_C");
      double warmer = ChargingVoltage.target(2.4, 25 + 1 / 1.8, 1, perC);
      return 1000 * (ChargingVoltage.target(2.4, 25, 1, perC) - warmer);
    }
    if (in.has("V_cell")) {
      return ChargingVoltage.target(6 * in.number("V_cell"), 25, 6, 5);
    }
    return in.asks("V_cell")
        ? ChargingVoltage.target(
            in.number("V25"), in.number("T_C"), 1, ChargingVoltage.LOWER_MILLIVOLTS)
        : ChargingVoltage.target(
            in.number("V25"), in.number("T_C"), 6, ChargingVoltage.TROJAN_MILLIVOLTS);
  }

  private static void endurance(Families f) {
    f.number(
        "EL-PK1",
        in ->
            hoursOrAmpereHours(in)
                * Peukert.hoursOneAmpere(in.number("Cp"), in.number("k"), in.number("I_A")));
    f.number(
        "EL-PKH",
        in ->
            hoursOrAmpereHours(in)
                * Peukert.hoursRated(
                    in.number("C_Ah"), in.number("H_h"), in.number("k"), in.number("I_A")));
    f.number(
        "EL-PKK",
        in -> Peukert.exponent(in.number("I1"), in.number("t1"), in.number("I2"), in.number("t2")));
    f.number(
        "EL-DRAW",
        in -> Endurance.storageDays(in.number("Ah"), in.number("fraction"), in.number("A")));
  }

  /** Some rows ask for the ampere hours that come out, which are amperes times hours. */
  private static double hoursOrAmpereHours(Inputs in) {
    return in.asks("effective Ah") ? in.number("I_A") : 1;
  }

  private static void ampacity(Families f) {
    f.number("EL-AMP", in -> Ampacity.amperes(gauge(in), rating(in)));
    f.number("EL-ENG", in -> Ampacity.amperes(gauge(in), rating(in), 1, true));
    f.number("EL-N1", in -> Ampacity.engineSpaceFactor(rating(in)));
    f.number("EL-N2", in -> Ampacity.bundleFactor((int) in.number("conductors")));
    f.number(
        "EL-BUN",
        in ->
            Ampacity.amperes(
                gauge(in), rating(in), (int) in.number("conductors"), in.yes("engine_space")));
  }

  private static void protection(Families f) {
    f.number(
        "EL-FUSE", in -> Overcurrent.largestAmperes(Ampacity.amperes(gauge(in), rating(in)), 12));
    f.words(
        "EL-ALT",
        in ->
            in.yes("self_limiting")
                ? exempt(in.number("rated_A"))
                : "" + Overcurrent.largestAtGenerator(in.number("rated_A")));
    f.words("EL-BATD", ElectricalFamilies::fuseDistance);
    f.number("EL-CRIMP", in -> Terminal.crimpPounds(gauge(in)));
    f.number("EL-LBF", in -> Families.converted(in, "lbf", "N"));
    f.words(
        "EL-GALV",
        in ->
            Families.word(
                DrivePotential.of(
                    in.number("mV"), Water.valueOf(in.text("water").toUpperCase(Locale.ROOT)))));
  }

  private static String exempt(double ignored) {
    return "exempt";
  }

  private static String fuseDistance(Inputs in) {
    var source = in.yes("cranking_feed") ? Source.CRANKING_FEED : Source.BATTERY;
    double farthest = Overcurrent.farthestInches(source, false);
    if (Double.isInfinite(farthest)) {
      return exempt(in.number("in"));
    }
    return in.number("in") <= farthest ? "ok" : "too far";
  }

  private static void drop(Families f) {
    f.number("EL-CM", ElectricalFamilies::requiredArea);
    f.words(
        "EL-SIZE",
        in ->
            (in.asks("nominal") ? WireTable.NOMINAL : WireTable.SAE_MINIMUM)
                .smallest(in.has("CM") ? in.number("CM") : requiredArea(in))
                .label());
    f.number("EL-VD", ElectricalFamilies::lostVolts);
    f.number("EL-VDP", in -> VoltageDrop.percent(lostVolts(in), 12));
    f.number(
        "EL-CRK",
        in -> VoltageDrop.cranking(in.number("I_A"), in.number("L_ft"), in.number("R_per_1000ft")));
  }

  private static double requiredArea(Inputs in) {
    return VoltageDrop.requiredCircularMils(in.number("I_A"), in.number("L_ft"), in.number("E_V"));
  }

  private static double lostVolts(Inputs in) {
    return VoltageDrop.volts(in.number("I_A"), in.number("L_ft"), in.number("CM"));
  }

  private static void gauge(Families f) {
    f.number("EL-AWD", in -> gauge(in).diameterInches());
    f.number("EL-AWA", in -> gauge(in).circularMils());
    f.number("EL-AWR", in -> Gauge.ohmsPer1000Feet(in.number("CM"), 20));
    f.number("EL-AWH", in -> warm(in.number("R20")));
  }

  /** The row gives the resistance at 20 °C; the area that has it is heated to 65 °C. */
  private static double warm(double ohmsAt20C) {
    double area = Gauge.ohmsPer1000Feet(1, 20) / ohmsAt20C;
    return Gauge.ohmsPer1000Feet(area, 65);
  }

  private static Gauge gauge(Inputs in) {
    return Gauge.of(in.text("AWG"));
  }

  private static int rating(Inputs in) {
    return (int) in.number("rating_C");
  }
}

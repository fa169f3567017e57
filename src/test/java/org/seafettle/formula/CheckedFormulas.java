package org.seafettle.formula;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.seafettle.formula.battery.ChargingVoltage;
import org.seafettle.formula.battery.Chemistry;
import org.seafettle.formula.battery.Electrolyte;
import org.seafettle.formula.battery.Endurance;
import org.seafettle.formula.battery.LoadTest;
import org.seafettle.formula.battery.Peukert;
import org.seafettle.formula.battery.StateOfCharge;
import org.seafettle.formula.conformity.Conformity;
import org.seafettle.formula.conformity.Side;
import org.seafettle.formula.engine.Compression;
import org.seafettle.formula.engine.SealedCase;
import org.seafettle.formula.fuel.EthanolBlend;
import org.seafettle.formula.oil.Consumption;
import org.seafettle.formula.oil.Dilution;
import org.seafettle.formula.pump.Delivery;
import org.seafettle.formula.water.Glycol;
import org.seafettle.formula.water.SeawaterFreezing;
import org.seafettle.quantity.Quantity;

/** Which formula computes which family of check values; the family is the id without its number. */
final class CheckedFormulas {

  private static final Map<String, Function<Inputs, String>> BY_FAMILY = new TreeMap<>();

  static {
    battery();
    fuelAndPump();
    oilAndEngine();
    water();
    conformity();
    conversions();
  }

  private CheckedFormulas() {}

  static Function<Inputs, String> of(String id) {
    var formula = BY_FAMILY.get(id.substring(0, id.lastIndexOf('-')));
    if (formula == null) {
      throw new AssertionError("no formula is named for " + id);
    }
    return formula;
  }

  private static void battery() {
    value("EL-SG", in -> Electrolyte.correctedTo80F(in.number("sg"), in.number("T_F")));
    value("EL-SGR", in -> Electrolyte.readingAt(in.number("sg80"), in.number("T_F")));
    value(
        "EL-SGM",
        in ->
            (Electrolyte.correctedTo20C(1.25, 20 + 10 / 1.8) - 1.25)
                * (in.number("c_per_C") / 0.0007));
    value(
        "EL-OCVSG",
        in ->
            in.has("sg")
                ? Electrolyte.restedVolts(in.number("sg"))
                : Electrolyte.fromCellVolts(in.number("cell_V")));
    value(
        "EL-OCV",
        in ->
            StateOfCharge.fromRestedVoltage(Chemistry.FLOODED, in.number("ocv"), 20, 12)
                .atLeastPercent());
    value("EL-SGSOC", in -> Electrolyte.chargePercent(in.number("sg"), 1.280));
    value("EL-FRZ", in -> Electrolyte.freezingPointF(in.number("sg")));
    value("EL-LOAD", in -> LoadTest.minimumVolts(in.number("T_C")));
    value("EL-HCCA", in -> LoadTest.amperes(in.number("CCA")));
    value("EL-GML", in -> LoadTest.tabulatedAmperes(in.number("CCA")));
    value("EL-CHG", CheckedFormulas::chargingVoltage);
    value(
        "EL-MC",
        in -> ChargingVoltage.correctedDischargeMinutes(in.number("Mr_min"), in.number("T_C")));
    value("EL-PK1", CheckedFormulas::peukertOneAmpere);
    value("EL-PKH", CheckedFormulas::peukertRated);
    value(
        "EL-PKK",
        in -> Peukert.exponent(in.number("I1"), in.number("t1"), in.number("I2"), in.number("t2")));
    value(
        "EL-DRAW",
        in -> Endurance.storageDays(in.number("Ah"), in.number("fraction"), in.number("A")));
  }

  private static double chargingVoltage(Inputs in) {
    if (in.has("mV_per_C")) {
      double perC = in.number("mV_per_C");
      return 1000
          * (ChargingVoltage.target(2.4, 25, 1, perC)
              - ChargingVoltage.target(2.4, 25 + 1 / 1.8, 1, perC));
    }
    if (in.has("V_cell")) {
      return ChargingVoltage.target(6 * in.number("V_cell"), 25, 6, 5);
    }
    double at25 = in.number("V25");
    return at25 < 3
        ? ChargingVoltage.target(at25, in.number("T_C"), 1, ChargingVoltage.LOWER_MILLIVOLTS)
        : ChargingVoltage.target(at25, in.number("T_C"), 6, ChargingVoltage.TROJAN_MILLIVOLTS);
  }

  private static double peukertOneAmpere(Inputs in) {
    return perHour(in) * Peukert.hoursOneAmpere(in.number("Cp"), in.number("k"), in.number("I_A"));
  }

  private static double peukertRated(Inputs in) {
    return perHour(in)
        * Peukert.hoursRated(in.number("C_Ah"), in.number("H_h"), in.number("k"), in.number("I_A"));
  }

  /** Some rows ask for the ampere hours that come out, which are amperes times hours. */
  private static double perHour(Inputs in) {
    return in.asks("effective Ah") ? in.number("I_A") : 1;
  }

  private static void fuelAndPump() {
    value("FU-TSP", in -> EthanolBlend.percentFromTeaspoonsPerGallon(in.number("tsp_per_gal")));
    value("FU-W", CheckedFormulas::waterInE10);
    value("BI-PUMP", in -> Delivery.shareOfRated(in.number("real_gph"), in.number("rated_gph")));
  }

  private static double waterInE10(Inputs in) {
    if (in.has("water_gal")) {
      return EthanolBlend.waterPercent(in.number("water_gal"), in.number("fuel_gal"));
    }
    if (in.has("fuel_L")) {
      return EthanolBlend.toleratedVolume(in.number("fuel_L"), in.number("T_F"));
    }
    if (in.has("fuel_gal")) {
      return 3.785411784 * EthanolBlend.toleratedVolume(in.number("fuel_gal"), in.number("T_F"));
    }
    return EthanolBlend.tolerancePercent(in.number("T_F"));
  }

  private static void oilAndEngine() {
    value(
        "OI-FD",
        in ->
            in.has("V_L")
                ? Dilution.percentFromLevelRise(in.number("V_L"), in.number("dV_L"))
                : Dilution.percentFromViscosity(in.number("v_new"), in.number("v_used")));
    value(
        "OI-CON",
        in ->
            in.has("fuel_L")
                ? Consumption.percentOfFuel(in.number("oil_L"), in.number("fuel_L"))
                : Consumption.millilitresPerHour(in.number("oil_L"), in.number("h")));
    value("OI-GP", CheckedFormulas::sealedCase);
    value("FU-PT", CheckedFormulas::sealedCase);
    value("PH-SPR", in -> Compression.spreadPercent(List.of(in.number("max"), in.number("min"))));
    value(
        "PH-MIN",
        in -> Compression.lowestAllowed(in.number(in.has("max_psi") ? "max_psi" : "max_kPa")));
    value("PH-LD", in -> Compression.leakDownPercent(in.number("Pin"), in.number("Pcyl")));
  }

  private static double sealedCase(Inputs in) {
    if (in.has("kPa")) {
      return converted(in, "kPa", "psi");
    }
    return SealedCase.tightPressure(
        in.number("P1"), in.number("T1_C"), in.number("T2_C"), in.number("Patm"));
  }

  private static void water() {
    value("CO-TF", CheckedFormulas::seawaterFreezing);
    value("CO-TFT", CheckedFormulas::seawaterFreezing);
    value(
        "CO-PG",
        in ->
            Glycol.dilutedPercent(
                in.number("label_pct"), in.number("V_af_L"), in.number("V_water_L")));
  }

  private static double seawaterFreezing(Inputs in) {
    return SeawaterFreezing.pointC(in.number("S"), in.number("p_dbar"));
  }

  private static void conformity() {
    value("SC-JCGM", CheckedFormulas::conformityProbability);
    value(
        "SC-GB",
        in ->
            1
                - Conformity.probability(
                    -Double.parseDouble(in.text("guard").replace("u", "")), 1, 0, Side.AT_MOST));
    BY_FAMILY.put(
        "SC-G8V",
        in -> {
          assertExpanded(in);
          return word(
              Conformity.verdict(in.number("y"), in.number("U"), in.number("T"), Side.AT_MOST));
        });
    value(
        "SC-G8P",
        in -> Conformity.probability(in.number("y"), in.number("u"), in.number("T"), Side.AT_MOST));
  }

  private static void assertExpanded(Inputs in) {
    if (in.number("U") != 2 * in.number("u")) {
      throw new AssertionError("U is 2u");
    }
  }

  private static double conformityProbability(Inputs in) {
    double y = in.number("y");
    double u = in.number("u");
    if (in.has("TL")) {
      return Conformity.probabilityBetween(y, u, in.number("TL"), in.number("TU"));
    }
    return Conformity.probability(y, u, in.number("T"), y < 0 ? Side.AT_MOST : Side.AT_LEAST);
  }

  private static void conversions() {
    value("CO-UC", in -> Quantity.parse(in.text("F") + " °F").in(unit("°C")));
    value("EL-LBF", in -> converted(in, "lbf", "N"));
    value("BI-GPM", in -> converted(in, "gpm", "L/min"));
    value("FU-INHG", in -> converted(in, "inHg", "kPa"));
    value("FU-PSI", in -> converted(in, "psi", "kPa"));
  }

  private static double converted(Inputs in, String from, String to) {
    return Quantity.parse(in.text(from) + " " + from).in(unit(to));
  }

  private static org.seafettle.quantity.MeasuredUnit unit(String name) {
    return org.seafettle.quantity.MeasuredUnit.of(name);
  }

  private static void value(String family, Function<Inputs, Double> formula) {
    BY_FAMILY.put(family, in -> formula.apply(in).toString());
  }

  private static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  static String words(double... numbers) {
    return Arrays.stream(numbers).mapToObj(Double::toString).collect(Collectors.joining(" "));
  }
}

package org.seafettle.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import java.util.stream.Collectors;
import org.seafettle.formula.engine.SealedCase;
import org.seafettle.formula.oil.Consumption;
import org.seafettle.formula.oil.Dilution;
import org.seafettle.formula.oil.SaeGrade;
import org.seafettle.formula.oil.SaltMarkers;
import org.seafettle.formula.oil.SaltMarkers.Engine;
import org.seafettle.formula.oil.Walther;
import org.seafettle.formula.oil.Wear;

/** OI: engine and gearcase oil. */
final class OilFamilies {

  private OilFamilies() {}

  static void addTo(Families f) {
    f.words("OI-WAL", OilFamilies::walther);
    f.words("OI-J300", OilFamilies::grades);
    f.number("OI-WR", OilFamilies::wear);
    f.number("OI-FD", OilFamilies::dilution);
    f.number("OI-SW", OilFamilies::seawater);
    f.number("OI-CON", OilFamilies::consumption);
    f.number("OI-GP", OilFamilies::sealedCase);
    f.words("OI-MK", OilFamilies::origin);
  }

  private static String walther(Inputs in) {
    var line =
        Walther.through(in.number("v1"), in.number("T1_C"), in.number("v2"), in.number("T2_C"));
    return in.has("T_C") ? "" + line.at(in.number("T_C")) : line.a() + " " + line.b();
  }

  private static String grades(Inputs in) {
    var grades = SaeGrade.of(in.number("KV100"));
    return grades.isEmpty()
        ? "none"
        : grades.stream().map(SaeGrade::label).collect(Collectors.joining(" "));
  }

  private static double wear(Inputs in) {
    if (in.has("C")) {
      return Wear.correctedForMakeUp(in.number("C"), in.number("V_add_L"), in.number("V_s_L"));
    }
    double per100 = Wear.per100Hours(in.number("C_used"), in.number("C_new"), in.number("h"));
    return in.asks("per 100 h") ? per100 : per100 / 100;
  }

  private static double dilution(Inputs in) {
    return in.has("V_L")
        ? Dilution.percentFromLevelRise(in.number("V_L"), in.number("dV_L"))
        : Dilution.percentFromViscosity(in.number("v_new"), in.number("v_used"));
  }

  private static double seawater(Inputs in) {
    if (in.asks("Na/K")) {
      return new SaltMarkers(in.number("Na"), in.number("K")).sodiumOverPotassium();
    }
    if (in.asks("Na/Mg")) {
      double magnesium = new SaltMarkers(in.number("Na"), 0).expectedMagnesiumPpm();
      assertThat(magnesium).isCloseTo(in.number("Mg"), within(1e-9));
      return in.number("Na") / magnesium;
    }
    var markers = new SaltMarkers(SaltMarkers.aboveNewOil(in.number("Na"), in.number("Na_new")), 0);
    if (in.asks("expected K")) {
      return markers.expectedPotassiumPpm();
    }
    return in.asks("expected Mg") ? markers.expectedMagnesiumPpm() : markers.seawaterPercent();
  }

  private static double consumption(Inputs in) {
    return in.has("fuel_L")
        ? Consumption.percentOfFuel(in.number("oil_L"), in.number("fuel_L"))
        : Consumption.millilitresPerHour(in.number("oil_L"), in.number("h"));
  }

  static double sealedCase(Inputs in) {
    if (in.has("kPa")) {
      return Families.converted(in, "kPa", "psi");
    }
    return SealedCase.tightPressure(
        in.number("P1"), in.number("T1_C"), in.number("T2_C"), in.number("Patm"));
  }

  private static String origin(Inputs in) {
    var markers = new SaltMarkers(in.number("Na"), in.number("K"));
    var engine = Engine.valueOf(in.text("engine").toUpperCase(Locale.ROOT));
    return Families.word(markers.origin(in.text("glycol").equals("positive"), engine));
  }
}

package org.seafettle.formula;

import org.seafettle.formula.galvanic.Anode;
import org.seafettle.formula.water.CoolingHeat;
import org.seafettle.formula.water.Glycol;
import org.seafettle.formula.water.Seawater;
import org.seafettle.formula.water.SeawaterFreezing;
import org.seafettle.quantity.MeasuredUnit;

/** CO: raw water, heat, frost and anodes. */
final class CoolingFamilies {

  private CoolingFamilies() {}

  static void addTo(Families f) {
    f.number("CO-RHO", in -> Seawater.density(in.number("S"), in.number("T_C")));
    f.number("CO-CP", CoolingFamilies::specificHeat);
    f.number("CO-CPT", CoolingFamilies::specificHeat);
    f.number("CO-Q", CoolingFamilies::heat);
    f.number("CO-TF", CoolingFamilies::freezing);
    f.number("CO-TFT", CoolingFamilies::freezing);
    f.number(
        "CO-PG",
        in ->
            Glycol.dilutedPercent(
                in.number("label_pct"), in.number("V_af_L"), in.number("V_water_L")));
    f.number(
        "CO-AN",
        in -> Anode.years(in.number("kg"), in.number("Ah_kg"), in.number("util"), in.number("A")));
    f.number(
        "CO-UC",
        in -> Families.converted(in.number("F"), MeasuredUnit.FAHRENHEIT, MeasuredUnit.CELSIUS));
  }

  private static double specificHeat(Inputs in) {
    if (in.number("p_dbar") != 0) {
      throw new AssertionError("the formula is that of the surface");
    }
    return Seawater.specificHeat(in.number("S"), in.number("T_C"));
  }

  private static double heat(Inputs in) {
    if (in.has("brake_kW")) {
      return CoolingHeat.fuelKilowatts(in.number("brake_kW"), in.number("eff"));
    }
    if (in.has("T_C")) {
      return Seawater.specificHeat(in.number("S"), in.number("T_C"));
    }
    return in.has("Tout_C")
        ? CoolingHeat.kilowatts(
            in.number("L_min"), in.number("S"), in.number("Tin_C"), in.number("Tout_C"))
        : CoolingHeat.kilogramsPerSecond(in.number("L_min"), in.number("S"), in.number("Tin_C"));
  }

  private static double freezing(Inputs in) {
    return SeawaterFreezing.pointC(in.number("S"), in.number("p_dbar"));
  }
}

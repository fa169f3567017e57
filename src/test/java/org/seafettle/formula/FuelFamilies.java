package org.seafettle.formula;

import static org.seafettle.quantity.MeasuredUnit.FOOT;
import static org.seafettle.quantity.MeasuredUnit.GALLON;
import static org.seafettle.quantity.MeasuredUnit.INCH_OF_MERCURY;
import static org.seafettle.quantity.MeasuredUnit.KILOPASCAL;
import static org.seafettle.quantity.MeasuredUnit.LITRE;
import static org.seafettle.quantity.MeasuredUnit.METRE;

import org.seafettle.formula.fuel.Burn;
import org.seafettle.formula.fuel.Density;
import org.seafettle.formula.fuel.EthanolBlend;
import org.seafettle.formula.fuel.Restriction;
import org.seafettle.formula.fuel.SystemTest;
import org.seafettle.formula.fuel.Tank;

/** FU: fuel, tanks and the fuel system. */
final class FuelFamilies {

  private FuelFamilies() {}

  static void addTo(Families f) {
    f.number("FU-TSP", in -> EthanolBlend.percentFromTeaspoonsPerGallon(in.number("tsp_per_gal")));
    f.number("FU-W", FuelFamilies::waterInE10);
    f.number("FU-H", FuelFamilies::waterLayer);
    f.number("FU-VAC", FuelFamilies::vacuum);
    f.number("FU-INHG", in -> Families.converted(in, "inHg", "kPa"));
    f.number("FU-PSI", in -> Families.converted(in, "psi", "kPa"));
    f.number(
        "FU-API",
        in ->
            in.has("API")
                ? Density.gravityFromApi(in.number("API"))
                : Density.apiFromGravity(in.number("SG60")));
    f.number(
        "FU-VCF",
        in -> Density.volumeAt60FOver(Density.gravityFromApi(in.number("API")), in.number("T_F")));
    f.number("FU-ALF", FuelFamilies::expansion);
    f.number("FU-EXP", FuelFamilies::swelling);
    f.number("FU-CFR", FuelFamilies::systemTest);
    f.number("FU-PT", OilFamilies::sealedCase);
    f.number("FU-BURN", FuelFamilies::burn);
  }

  private static double waterInE10(Inputs in) {
    if (in.has("water_gal")) {
      return EthanolBlend.waterPercent(in.number("water_gal"), in.number("fuel_gal"));
    }
    if (in.has("fuel_L")) {
      return EthanolBlend.toleratedVolume(in.number("fuel_L"), in.number("T_F"));
    }
    if (in.has("fuel_gal")) {
      double gallons = EthanolBlend.toleratedVolume(in.number("fuel_gal"), in.number("T_F"));
      return Families.converted(gallons, GALLON, LITRE);
    }
    return EthanolBlend.tolerancePercent(in.number("T_F"));
  }

  private static double waterLayer(Inputs in) {
    if (in.has("W_cm")) {
      return new Tank.Box(in.number("L_cm"), in.number("W_cm"), 100).heightCm(in.number("V_L"));
    }
    if (in.has("D_cm")) {
      return new Tank.Upright(in.number("D_cm"), 100).heightCm(in.number("V_L"));
    }
    var lying = new Tank.Lying(2 * in.number("R_cm"), in.number("L_cm"));
    return in.has("h_cm") ? lying.litres(in.number("h_cm")) : lying.heightCm(in.number("V_L"));
  }

  private static double vacuum(Inputs in) {
    if (in.has("inHg")) {
      return Families.converted(in, "inHg", "kPa");
    }
    double foot = Families.converted(1, FOOT, METRE);
    double lift = Restriction.liftKilopascals(in.number("rho_kgm3"), foot);
    return Families.converted(lift, KILOPASCAL, INCH_OF_MERCURY);
  }

  private static double expansion(Inputs in) {
    double perC = Density.expansionPerC(in.number("rho_kgm3"));
    return in.asks("per degF") ? perC / 1.8 : perC;
  }

  private static double swelling(Inputs in) {
    return in.has("V0_L")
        ? Density.swollenVolume(in.number("V0_L"), in.number("a"), in.number("dT_K"))
        : Density.ullagePercent(in.number("a"), in.number("dT_K"));
  }

  private static double systemTest(Inputs in) {
    double density = in.number("rho_kgm3");
    if (!in.has("h_m")) {
      return SystemTest.governingHeadMetres(density);
    }
    return in.asks("static head psi")
        ? SystemTest.headPsi(density, in.number("h_m"))
        : SystemTest.testPsi(density, in.number("h_m"));
  }

  /** The figures in the row are those of the fuel, which the formula knows. */
  private static double burn(Inputs in) {
    double pounds = in.number("lb_hph") / in.number("lb_gal");
    var fuel = in.asks("gasoline") ? Burn.GASOLINE : Burn.DIESEL;
    if (Math.abs(fuel.gallonsPerHour(1) - pounds) > 1e-12) {
      throw new AssertionError("the figures are not those of " + fuel);
    }
    return fuel.gallonsPerHour(in.number("hp"));
  }
}

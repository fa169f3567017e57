package org.seafettle.formula;

import static org.seafettle.quantity.MeasuredUnit.HORSEPOWER;
import static org.seafettle.quantity.MeasuredUnit.KILOWATT;

import java.util.List;
import org.seafettle.formula.engine.Compression;
import org.seafettle.formula.engine.EmissionLimit;
import org.seafettle.formula.engine.HullNumber;
import org.seafettle.formula.engine.UsefulLife;
import org.seafettle.formula.engine.UsefulLife.Type;
import org.seafettle.problem.Refused;

/** PH: the powerhead and its papers. */
final class PowerheadFamilies {

  private PowerheadFamilies() {}

  static void addTo(Families f) {
    f.number(
        "PH-SPR", in -> Compression.spreadPercent(List.of(in.number("max"), in.number("min"))));
    f.number(
        "PH-MIN",
        in -> Compression.lowestAllowed(in.number(in.has("max_psi") ? "max_psi" : "max_kPa")));
    f.number("PH-LD", in -> Compression.leakDownPercent(in.number("Pin"), in.number("Pcyl")));
    f.number("PH-HC", PowerheadFamilies::hydrocarbons);
    f.number("PH-CO", in -> EmissionLimit.carbonMonoxide2010(in.number("P_kW")));
    f.words("PH-USL", PowerheadFamilies::usefulLife);
    f.words("PH-HIN", PowerheadFamilies::hullNumber);
  }

  private static double hydrocarbons(Inputs in) {
    if (in.has("P_kW")) {
      return EmissionLimit.OF_2010.hydrocarbonsAndNitrogenOxides(in.number("P_kW"));
    }
    var rule = in.asks("1998") ? EmissionLimit.OF_1998 : EmissionLimit.OF_2006;
    return rule.hydrocarbonsAndNitrogenOxides(
        Families.converted(in.number("P_hp"), HORSEPOWER, KILOWATT));
  }

  private static String usefulLife(Inputs in) {
    var type =
        switch (in.text("type")) {
          case "outboard" -> Type.OUTBOARD;
          case "PWC" -> Type.PERSONAL_WATERCRAFT;
          case "SDI" -> Type.STERNDRIVE_OR_INBOARD;
          case "SDI_high_performance" -> Type.HIGH_PERFORMANCE_STERNDRIVE_OR_INBOARD;
          default -> throw new AssertionError(in.text("type"));
        };
    var life = UsefulLife.of(type, in.has("P_kW") ? in.number("P_kW") : 100);
    return life.hours() + " " + life.years();
  }

  private static String hullNumber(Inputs in) {
    try {
      var hull = HullNumber.parse(in.text("HIN"));
      return hull.certified() + " MY" + hull.modelYear();
    } catch (Refused refused) {
      return "invalid";
    }
  }
}

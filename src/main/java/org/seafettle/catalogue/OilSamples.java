package org.seafettle.catalogue;

import java.util.List;
import java.util.OptionalDouble;
import org.seafettle.formula.DoesNotHold;
import org.seafettle.formula.oil.Condition;
import org.seafettle.formula.oil.SaeGrade;
import org.seafettle.formula.oil.SaltMarkers;
import org.seafettle.formula.oil.Wear;
import org.seafettle.survey.Engine;

/** What derivations compute of a laboratory's figures. */
final class OilSamples {

  private OilSamples() {}

  /** A metal's content, refused where the oil is too fresh to carry any. */
  static double metal(Inputs in) {
    var hours = in.find("oil-hours");
    double content = in.get("content");
    return hours.isPresent() ? Wear.telling(content, hours.getAsDouble()) : content;
  }

  /** A metal's gain in 100 h over the median of the earlier gains. */
  static double wearOverEarlier(Inputs in) {
    double content = in.get("content");
    var added = in.find("added");
    double corrected =
        added.isPresent()
            ? Wear.correctedForMakeUp(content, added.getAsDouble(), in.get("sump"))
            : content;
    double rate = Wear.per100Hours(corrected, in.get("fresh-oil"), in.get("oil-hours"));
    return Wear.overMedian(
        rate, List.of(in.get("earlier-1"), in.get("earlier-2"), in.get("earlier-3")));
  }

  /** Where the viscosity lies from the band of the grade on the label. */
  static double gradePosition(Inputs in) {
    return SaeGrade.labelled(in.get("grade")).position(in.get("viscosity"));
  }

  /** Base number left, in per cent; both figures by one method. */
  static double baseNumberLeft(Inputs in) {
    if (in.find("left").isPresent()) {
      return in.get("left");
    }
    var byStrongAcid = bothBy("d2896", in);
    return Derivation.either(
        byStrongAcid.isPresent() ? byStrongAcid : bothBy("d4739", in),
        () -> {
          throw Known.missing("base-numbers");
        });
  }

  private static OptionalDouble bothBy(String method, Inputs in) {
    var used = in.find("used-by-" + method);
    var whenNew = in.find("new-by-" + method);
    return used.isPresent() && whenNew.isPresent()
        ? OptionalDouble.of(Condition.baseNumberPercent(used.getAsDouble(), whenNew.getAsDouble()))
        : OptionalDouble.empty();
  }

  /**
   * Sodium over potassium, where either is raised: 27 in sea water, below 10 in coolant.
   *
   * @throws DoesNotHold where neither is raised, since there is no salt whose origin could be told
   */
  static double sodiumOverPotassium(Inputs in) {
    double sodium =
        SaltMarkers.aboveNewOil(in.get("sodium"), in.find("sodium-in-fresh-oil").orElse(0));
    var markers = new SaltMarkers(sodium, in.get("potassium"));
    if (!markers.raised(engine(in))) {
      throw DoesNotHold.because(
          "no-salt",
          "Neither sodium nor potassium is raised: there is no salt whose origin could be told.",
          "Say that none is raised.");
    }
    // without potassium the ratio has no end; sea water's is far below this
    return Math.min(markers.sodiumOverPotassium(), 1000);
  }

  private static SaltMarkers.Engine engine(Inputs in) {
    return in.facts().component() instanceof Engine engine && engine.type().burnsDiesel()
        ? SaltMarkers.Engine.DIESEL
        : SaltMarkers.Engine.GASOLINE;
  }
}

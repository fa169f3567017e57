package org.seafettle.catalogue;

import org.seafettle.formula.pump.CapacityBenchmark;
import org.seafettle.formula.pump.Delivery;
import org.seafettle.formula.space.Ventilation;
import org.seafettle.quantity.MeasuredUnit;

/** What derivations compute of the bilge and the engine space. */
final class Spaces {

  private Spaces() {}

  /**
   * What the pumps really move over the benchmark for the boat's length: delivered [L/min] as
   * measured, else half of what stands on the plates of all pumps that were recorded.
   */
  static double pumpCapacity(Inputs in) {
    double delivered = Derivation.either(in.find("delivered"), () -> halfOfTheRating(in));
    double metres =
        in.facts()
            .survey()
            .boat()
            .length()
            .orElseThrow(() -> Known.missing("boat-length"))
            .in(MeasuredUnit.METRE);
    return delivered / CapacityBenchmark.iso15083LitresPerMinute(metres);
  }

  private static double halfOfTheRating(Inputs in) {
    var pumps = in.facts().survey().outfit().pumps();
    if (pumps.isEmpty()) {
      throw Known.missing("pumps");
    }
    return Delivery.USUAL_SHARE
        * pumps.stream()
            .map(p -> p.rated().orElseThrow(() -> Known.missing("rated-flow")))
            .mapToDouble(q -> q.in(MeasuredUnit.LITRE_PER_MINUTE))
            .sum();
  }

  /** Air that comes out of the duct over what the space asks for. */
  static double blowerShare(Inputs in) {
    return in.get("air-flow") / Ventilation.blower(in.get("volume")).outputCubicFeetPerMinute();
  }

  /** The area of the smaller natural opening over what the space asks for. */
  static double openingShare(Inputs in) {
    return in.get("opening") / Ventilation.naturalOpeningSquareInches(in.get("volume"));
  }
}

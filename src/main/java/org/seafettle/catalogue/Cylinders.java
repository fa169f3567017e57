package org.seafettle.catalogue;

import java.util.Collections;
import java.util.List;
import org.seafettle.formula.engine.Compression;

/** What derivations compute from readings that are taken once a cylinder. */
final class Cylinders {

  private Cylinders() {}

  /**
   * Per cent by which the lowest cylinder lies below the highest; 100 where none gives anything.
   */
  static double compressionSpread(Inputs in) {
    var all = atLeast(2, in, "compression");
    return Collections.max(all) == 0 ? 100 : Compression.spreadPercent(all);
  }

  static double compressionDifference(Inputs in) {
    var all = atLeast(2, in, "compression");
    return Collections.max(all) - Collections.min(all);
  }

  static double lowestCompression(Inputs in) {
    return Collections.min(atLeast(1, in, "compression"));
  }

  /** Of the cylinder that leaks most: read off in per cent, else from the two gauges. */
  static double leakDown(Inputs in) {
    var read = in.all("leakage");
    return read.isEmpty()
        ? Compression.leakDownPercent(
            in.get("supply"), Collections.min(atLeast(1, in, "cylinder-holds")))
        : Collections.max(read);
  }

  /** Per cent by which the gap that is farthest off misses what is specified. */
  static double plugGapError(Inputs in) {
    double specified = in.get("specified");
    return atLeast(1, in, "gap").stream()
        .mapToDouble(gap -> 100 * Math.abs(gap - specified) / specified)
        .max()
        .orElseThrow();
  }

  private static List<Double> atLeast(int count, Inputs in, String name) {
    var all = in.all(name);
    if (all.size() < count) {
      throw new Criterion.Unjudgeable(new Reason(Reason.Kind.READING_MISSING, name));
    }
    return all;
  }
}

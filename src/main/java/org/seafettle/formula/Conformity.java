package org.seafettle.formula;

/** Stands in until the real one lands. */
public record Conformity(Verdict verdict, double probability) {
  public static Conformity toUpperLimit(double value, double limit, double standard) {
    return new Conformity(value <= limit ? Verdict.PASS : Verdict.FAIL, 1);
  }

  public static Conformity toLowerLimit(double value, double limit, double standard) {
    return new Conformity(value >= limit ? Verdict.PASS : Verdict.FAIL, 1);
  }
}

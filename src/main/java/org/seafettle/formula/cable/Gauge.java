package org.seafettle.formula.cable;

import java.util.Arrays;
import java.util.stream.Collectors;
import org.seafettle.formula.DoesNotHold;
import org.seafettle.formula.Validity;
import org.seafettle.problem.Refused;

/**
 * The sizes of the American wire gauge. Geometry: {@code d = 0.005 x 92^((36 - n)/39)} inch (ASTM
 * B258, from memory, unverified; reproduces the table of HyperPhysics, Common Wire Gauges, Georgia
 * State University). Resistance: 10.371 ohm for a circular mil and a foot at 20 °C, rising 0.00393
 * for each °C (from memory; reproduces the same table and the 65 °C column of the Misumi chart).
 */
public enum Gauge {
  AWG_18("18", 18),
  AWG_16("16", 16),
  AWG_14("14", 14),
  AWG_12("12", 12),
  AWG_10("10", 10),
  AWG_8("8", 8),
  AWG_6("6", 6),
  AWG_4("4", 4),
  AWG_3("3", 3),
  AWG_2("2", 2),
  AWG_1("1", 1),
  AWG_1_0("1/0", 0),
  AWG_2_0("2/0", -1),
  AWG_3_0("3/0", -2),
  AWG_4_0("4/0", -3);

  private static final double RESISTIVITY = 10_371;
  private static final double PER_DEGREE = 0.00393;

  private final String label;
  private final int number;

  Gauge(String label, int number) {
    this.label = label;
    this.number = number;
  }

  /**
   * The size written on a wire, such as {@code 10} or {@code 2/0}.
   *
   * @throws Refused where no such size is listed
   */
  public static Gauge of(String label) {
    return Arrays.stream(values())
        .filter(gauge -> gauge.label.equals(label.strip()))
        .findFirst()
        .orElseThrow(
            () ->
                DoesNotHold.because(
                    "no-such-gauge",
                    "There is no wire size \"" + label + "\" AWG in the tables.",
                    "Write one of: "
                        + Arrays.stream(values())
                            .map(Gauge::label)
                            .collect(Collectors.joining(", "))
                        + "."));
  }

  /**
   * The size of a number: 18 down to 1, and 0, -1, -2, -3 for 1/0, 2/0, 3/0, 4/0.
   *
   * @throws Refused where no such size is listed
   */
  public static Gauge ofNumber(double number) {
    return Arrays.stream(values())
        .filter(gauge -> gauge.number == number)
        .findFirst()
        .orElseThrow(
            () ->
                DoesNotHold.because(
                    "no-such-gauge",
                    "There is no wire of that AWG number in the tables.",
                    "Give 18, 16, 14, 12, 10, 8, 6, 4, 3, 2 or 1, or 0, -1, -2, -3 for 1/0 to"
                        + " 4/0."));
  }

  /**
   * The largest size whose copper is no more than that of a metric wire, so that a table of sizes
   * never promises it too much.
   *
   * @param squareMillimetres its nominal area, from 0.75 mm2, which is sold as the nearest to 18
   */
  public static Gauge notAbove(double squareMillimetres) {
    Validity.within("A wire's area", squareMillimetres, 0.75, 200, "mm²");
    double circularMils = circularMils(squareMillimetres);
    return Arrays.stream(values())
        .filter(gauge -> gauge.circularMils() <= circularMils)
        .reduce((smaller, larger) -> larger)
        .orElse(AWG_18);
  }

  /** Circular mils of an area: a mil is 0.0254 mm. */
  public static double circularMils(double squareMillimetres) {
    return squareMillimetres / (Math.PI / 4 * 0.0254 * 0.0254);
  }

  public String label() {
    return label;
  }

  /** Diameter of a solid conductor, inch. */
  public double diameterInches() {
    return 0.005 * Math.pow(92, (36 - number) / 39.0);
  }

  /** Area of a solid conductor, circular mils. */
  public double circularMils() {
    return Math.pow(1000 * diameterInches(), 2);
  }

  /**
   * Resistance of a conductor of this area.
   *
   * @param circularMils its area
   * @param temperatureC of the copper, -40 to 105 °C
   * @return ohms for 1000 ft
   */
  public static double ohmsPer1000Feet(double circularMils, double temperatureC) {
    Validity.positive("A wire's area", circularMils, "cmil");
    Validity.within("A copper temperature", temperatureC, -40, 105, "°C");
    return RESISTIVITY / circularMils * (1 + PER_DEGREE * (temperatureC - 20));
  }

  /** Resistance of this size, ohms for 1000 ft; temperature -40 to 105 °C. */
  public double ohmsPer1000Feet(double temperatureC) {
    return ohmsPer1000Feet(circularMils(), temperatureC);
  }
}

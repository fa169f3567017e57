package org.seafettle.formula.cable;

import java.util.Arrays;
import java.util.stream.Collectors;
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
                Refused.because(
                    "There is no wire size \"" + label + "\" AWG in the tables.",
                    "Write one of: "
                        + Arrays.stream(values())
                            .map(Gauge::label)
                            .collect(Collectors.joining(", "))
                        + "."));
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

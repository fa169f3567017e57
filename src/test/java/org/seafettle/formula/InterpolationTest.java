package org.seafettle.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.interpolation.LinearInterpolator;
import org.junit.jupiter.api.Test;
import org.seafettle.formula.battery.Chemistry;
import org.seafettle.formula.battery.Electrolyte;
import org.seafettle.formula.battery.LoadTest;
import org.seafettle.formula.battery.StateOfCharge;
import org.seafettle.formula.water.Glycol;

/** Every table that is read between its rows, its rows told again, against another library. */
class InterpolationTest {

  private static final int STEPS = 997;

  @Test
  void the_least_volts_of_a_load_test() {
    agrees(
        LoadTest::minimumVolts,
        new double[] {-18, -12, -7, -1, 4, 10, 16, 20},
        new double[] {8.5, 8.7, 8.9, 9.1, 9.3, 9.4, 9.5, 9.6});
  }

  @Test
  void the_charge_of_an_electrolyte() {
    agrees(
        gravity -> Electrolyte.chargePercent(gravity, 1.280),
        new double[] {1.130, 1.190, 1.220, 1.250, 1.280},
        new double[] {0, 25, 50, 75, 100});
  }

  @Test
  void the_freezing_point_of_an_electrolyte() {
    agrees(
        Electrolyte::freezingPointF,
        new double[] {1.000, 1.100, 1.150, 1.200, 1.250, 1.280},
        new double[] {32, 19, 5, -16, -62, -90});
  }

  @Test
  void the_charge_of_a_flooded_battery_at_rest() {
    agrees(
        volts -> charge(Chemistry.FLOODED, volts),
        new double[] {11.7, 12.0, 12.2, 12.4, 12.6},
        new double[] {0, 25, 50, 75, 100});
  }

  @Test
  void the_charge_of_a_battery_with_glass_mats_at_rest() {
    agrees(
        volts -> charge(Chemistry.AGM, volts),
        new double[] {12.0, 12.3, 12.6, 12.8},
        new double[] {25, 50, 75, 100});
  }

  @Test
  void the_freezing_points_of_antifreeze() {
    agrees(
        percent -> Glycol.PROPYLENE.freezingPointC(percent) * 1.8 + 32,
        new double[] {0, 18, 29, 36, 42, 46, 50, 54, 57},
        new double[] {32, 20, 10, 0, -10, -20, -30, -40, -50});
    agrees(
        percent -> Glycol.ETHYLENE.freezingPointC(percent) * 1.8 + 32,
        new double[] {0, 17, 26, 35, 41, 46, 50, 55, 59},
        new double[] {32, 20, 10, 0, -10, -20, -30, -40, -50});
  }

  private static double charge(Chemistry chemistry, double volts) {
    return StateOfCharge.fromRestedVoltage(chemistry, volts, 20, 6).atLeastPercent();
  }

  private static void agrees(DoubleUnaryOperator ours, double[] x, double[] y) {
    UnivariateFunction theirs = new LinearInterpolator().interpolate(x, y);
    double last = x[x.length - 1];
    for (int i = 0; i <= STEPS; i++) {
      double at = i == STEPS ? last : x[0] + (last - x[0]) * i / STEPS;
      assertThat(ours.applyAsDouble(at)).as("at %s", at).isCloseTo(theirs.value(at), within(1e-9));
    }
  }
}

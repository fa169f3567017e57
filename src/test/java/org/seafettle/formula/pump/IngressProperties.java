package org.seafettle.formula.pump;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class IngressProperties {

  @Property
  void a_pump_that_just_balances_a_hole_moves_what_comes_in(
      @ForAll @DoubleRange(min = 1, max = 300) double millimetres,
      @ForAll @DoubleRange(min = 0.01, max = 10) double metres,
      @ForAll @DoubleRange(min = 0.4, max = 1) double coefficient) {
    double flow = Ingress.litresPerMinute(millimetres, metres, coefficient);
    assertThat(Ingress.balancedMillimetres(flow, metres, coefficient))
        .isCloseTo(millimetres, within(1e-9));
  }

  @Property
  void twice_the_hole_is_four_times_the_water_and_four_times_the_depth_twice(
      @ForAll @DoubleRange(min = 1, max = 150) double millimetres,
      @ForAll @DoubleRange(min = 0.01, max = 2.5) double metres) {
    double flow = Ingress.litresPerMinute(millimetres, metres, Ingress.TYPICAL);
    assertThat(Ingress.litresPerMinute(2 * millimetres, metres, Ingress.TYPICAL))
        .isCloseTo(4 * flow, within(1e-9 * flow));
    assertThat(Ingress.litresPerMinute(millimetres, 4 * metres, Ingress.TYPICAL))
        .isCloseTo(2 * flow, within(1e-9 * flow));
  }
}

package org.seafettle.formula.fuel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.seafettle.problem.Refused;

class EthanolBlendTest {

  @Test
  void water_that_summer_fuel_held_falls_out_in_the_frost() {
    assertThat(EthanolBlend.separatesOnCooling(150, 0.75, 10)).isCloseTo(0.30, within(1e-9));
    assertThat(EthanolBlend.separatesOnCooling(150, 0.40, 10)).isZero();
  }

  @Test
  void the_margin_is_what_the_coldest_night_leaves() {
    assertThat(EthanolBlend.marginPercent(0.2, 40)).isCloseTo(0.22, within(1e-9));
    assertThat(EthanolBlend.marginPercent(0.5, 10)).isCloseTo(-0.2, within(1e-9));
  }

  @Test
  void outside_the_two_points_the_line_is_not_drawn_on() {
    assertThatThrownBy(() -> EthanolBlend.tolerancePercent(61)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> EthanolBlend.waterPercent(1, 0)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> EthanolBlend.marginPercent(-1, 40)).isInstanceOf(Refused.class);
  }
}

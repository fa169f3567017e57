package org.seafettle.formula.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class WaterProperties {

  @Property
  void more_glycol_never_freezes_earlier(
      @ForAll Glycol glycol,
      @ForAll @DoubleRange(min = 0, max = 57) double one,
      @ForAll @DoubleRange(min = 0, max = 57) double other) {
    assertThat(glycol.freezingPointC(Math.max(one, other)))
        .isLessThanOrEqualTo(glycol.freezingPointC(Math.min(one, other)));
  }

  @Property
  void water_left_in_the_block_only_dilutes(
      @ForAll @DoubleRange(min = 0, max = 100) double label,
      @ForAll @DoubleRange(min = 0.1, max = 50) double antifreeze,
      @ForAll @DoubleRange(min = 0, max = 50) double water) {
    assertThat(Glycol.dilutedPercent(label, antifreeze, water)).isBetween(0.0, label + 1e-9);
    assertThat(Glycol.dilutedPercent(label, antifreeze, 0)).isCloseTo(label, within(1e-9));
  }

  @Property
  void saltier_water_freezes_later_and_is_heavier(
      @ForAll @DoubleRange(min = 4, max = 39) double salinity,
      @ForAll @DoubleRange(min = 0, max = 40) double celsius) {
    assertThat(SeawaterFreezing.pointC(salinity + 1, 0))
        .isLessThan(SeawaterFreezing.pointC(salinity, 0));
    assertThat(Seawater.density(salinity + 1, celsius))
        .isGreaterThan(Seawater.density(salinity, celsius));
  }

  @Property
  void heat_rises_with_the_flow_and_with_the_warming(
      @ForAll @DoubleRange(min = 1, max = 500) double flow,
      @ForAll @DoubleRange(min = 0, max = 40) double salinity,
      @ForAll @DoubleRange(min = 0, max = 30) double inlet,
      @ForAll @DoubleRange(min = 0, max = 18) double warming) {
    double heat = CoolingHeat.kilowatts(flow, salinity, inlet, inlet + warming);
    assertThat(CoolingHeat.kilowatts(2 * flow, salinity, inlet, inlet + warming))
        .isCloseTo(2 * heat, within(1e-9 * (1 + heat)));
    assertThat(CoolingHeat.kilowatts(flow, salinity, inlet, inlet + warming + 1))
        .isGreaterThan(heat);
  }
}

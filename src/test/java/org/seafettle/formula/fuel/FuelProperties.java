package org.seafettle.formula.fuel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

class FuelProperties {

  @Property
  void height_and_volume_are_inverse_in_every_tank(
      @ForAll("tanks") Tank tank, @ForAll @DoubleRange(min = 0, max = 20) double height) {
    assertThat(tank.heightCm(tank.litres(height))).isCloseTo(height, within(1e-5));
  }

  @Property
  void a_higher_layer_holds_more(
      @ForAll("tanks") Tank tank, @ForAll @DoubleRange(min = 0, max = 19) double height) {
    assertThat(tank.litres(height + 1)).isGreaterThan(tank.litres(height));
  }

  @Provide
  Arbitrary<Tank> tanks() {
    var side = Arbitraries.doubles().between(20, 200);
    return Arbitraries.oneOf(
        Combinators.combine(side, side, side).as(Tank.Box::new),
        Combinators.combine(side, side).as(Tank.Upright::new),
        Combinators.combine(side, side).as(Tank.Lying::new));
  }

  @Property
  void warmer_fuel_holds_more_water_and_takes_more_room(
      @ForAll @DoubleRange(min = 10, max = 59) double fahrenheit,
      @ForAll @Scale(4) @DoubleRange(min = 0.66, max = 0.9) double gravity) {
    assertThat(EthanolBlend.tolerancePercent(fahrenheit + 1))
        .isGreaterThan(EthanolBlend.tolerancePercent(fahrenheit));
    assertThat(Density.volumeAt60FOver(gravity, fahrenheit + 1))
        .isLessThan(Density.volumeAt60FOver(gravity, fahrenheit));
    assertThat(Density.volumeAt60FOver(gravity, 60)).isEqualTo(1);
  }

  @Property
  void api_and_specific_gravity_are_inverse(@ForAll @DoubleRange(min = 5, max = 90) double api) {
    assertThat(Density.apiFromGravity(Density.gravityFromApi(api))).isCloseTo(api, within(1e-9));
  }

  @Property
  void the_test_pressure_is_never_below_three_psi_nor_below_the_head(
      @ForAll @DoubleRange(min = 650, max = 900) double density,
      @ForAll @DoubleRange(min = 0, max = 10) double head) {
    assertThat(SystemTest.testPsi(density, head))
        .isGreaterThanOrEqualTo(3)
        .isGreaterThan(SystemTest.headPsi(density, head));
    double governing = SystemTest.governingHeadMetres(density);
    assertThat(SystemTest.testPsi(density, governing)).isCloseTo(3, within(1e-9));
  }

  @Property
  void what_separates_and_what_stays_are_all_the_water(
      @ForAll @DoubleRange(min = 1, max = 1000) double fuel,
      @ForAll @DoubleRange(min = 0, max = 10) double water,
      @ForAll @DoubleRange(min = 10, max = 60) double coldest) {
    double falls = EthanolBlend.separatesOnCooling(fuel, water, coldest);
    assertThat(falls).isBetween(0.0, water);
    assertThat(water - falls)
        .isLessThanOrEqualTo(EthanolBlend.toleratedVolume(fuel, coldest) + 1e-9);
  }
}

package org.seafettle.formula.cable;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

class CableProperties {

  private static final int[] RATINGS = {60, 75, 80, 90, 105, 125, 200};

  @Property
  void the_required_area_loses_exactly_the_allowance(
      @ForAll @DoubleRange(min = 0.1, max = 300) double amperes,
      @ForAll @DoubleRange(min = 1, max = 200) double feet,
      @ForAll @DoubleRange(min = 0.05, max = 2) double allowed) {
    double area = VoltageDrop.requiredCircularMils(amperes, feet, allowed);
    assertThat(VoltageDrop.volts(amperes, feet, area)).isCloseTo(allowed, within(1e-9));
  }

  @Property
  void a_larger_need_never_gets_a_thinner_wire(
      @ForAll WireTable table,
      @ForAll @DoubleRange(min = 1, max = 200_000) double one,
      @ForAll @DoubleRange(min = 1, max = 200_000) double other) {
    assertThat(table.smallest(Math.max(one, other)))
        .isGreaterThanOrEqualTo(table.smallest(Math.min(one, other)));
  }

  @Property
  void a_wire_of_the_minimum_areas_is_never_chosen_thinner_than_of_the_nominal_ones(
      @ForAll @DoubleRange(min = 1, max = 200_000) double area) {
    assertThat(WireTable.SAE_MINIMUM.smallest(area))
        .isGreaterThanOrEqualTo(WireTable.NOMINAL.smallest(area));
  }

  @Property
  void a_thicker_wire_has_less_resistance_and_carries_more(
      @ForAll Gauge one,
      @ForAll Gauge other,
      @ForAll @IntRange(max = 6) int rating,
      @ForAll @DoubleRange(min = -40, max = 105) double celsius) {
    if (one.ordinal() >= other.ordinal()) {
      return;
    }
    assertThat(other.circularMils()).isGreaterThan(one.circularMils());
    assertThat(other.ohmsPer1000Feet(celsius)).isLessThan(one.ohmsPer1000Feet(celsius));
    assertThat(Ampacity.amperes(other, RATINGS[rating]))
        .isGreaterThan(Ampacity.amperes(one, RATINGS[rating]));
  }

  @Property
  void better_insulation_never_carries_less_and_company_never_helps(
      @ForAll Gauge gauge,
      @ForAll @IntRange(max = 5) int rating,
      @ForAll @IntRange(min = 1, max = 40) int conductors,
      @ForAll boolean engineSpace) {
    double amperes = Ampacity.amperes(gauge, RATINGS[rating], conductors, engineSpace);
    assertThat(Ampacity.amperes(gauge, RATINGS[rating + 1], conductors, engineSpace))
        .isGreaterThanOrEqualTo(amperes);
    assertThat(Ampacity.amperes(gauge, RATINGS[rating], conductors + 1, engineSpace))
        .isLessThanOrEqualTo(amperes);
    assertThat(Ampacity.amperes(gauge, RATINGS[rating], conductors, true))
        .isLessThanOrEqualTo(amperes);
  }

  /** The physics behind note 1: air of 50 °C for 30 °C. The law's figure at 200 °C is its own. */
  @Property
  void the_engine_space_factors_follow_from_the_hotter_air(@ForAll @IntRange(max = 5) int rating) {
    double insulation = RATINGS[rating];
    assertThat(Ampacity.engineSpaceFactor(RATINGS[rating]))
        .isCloseTo(Math.sqrt((insulation - 50) / (insulation - 30)), within(0.007));
  }

  @Property
  void a_metric_wire_never_counts_as_more_copper_than_it_has(
      @ForAll @DoubleRange(min = 0.83, max = 120) double squareMillimetres) {
    assertThat(Gauge.notAbove(squareMillimetres).circularMils())
        .isLessThanOrEqualTo(Gauge.circularMils(squareMillimetres));
  }

  @Property
  void a_size_is_found_again_by_its_own_area(@ForAll Gauge gauge) {
    double squareMillimetres = gauge.circularMils() * Math.PI / 4 * 0.0254 * 0.0254;
    assertThat(Gauge.notAbove(squareMillimetres * 1.0001)).isEqualTo(gauge);
  }
}

package org.seafettle.formula.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

class BatteryProperties {

  @Property
  void a_higher_rested_voltage_never_means_less_charge(
      @ForAll Chemistry chemistry,
      @ForAll @DoubleRange(min = 0, max = 13.5) double one,
      @ForAll @DoubleRange(min = 0, max = 13.5) double other) {
    if (chemistry == Chemistry.LITHIUM_IRON_PHOSPHATE) {
      return;
    }
    var low = StateOfCharge.fromRestedVoltage(chemistry, Math.min(one, other), 20, 6);
    var high = StateOfCharge.fromRestedVoltage(chemistry, Math.max(one, other), 20, 6);
    assertThat(high.atLeastPercent()).isGreaterThanOrEqualTo(low.atLeastPercent());
    assertThat(high.atMostPercent()).isGreaterThanOrEqualTo(low.atMostPercent());
    assertThat(low.atLeastPercent()).isBetween(0.0, low.atMostPercent());
    assertThat(high.atMostPercent()).isLessThanOrEqualTo(100);
  }

  @Property
  void correcting_a_hydrometer_and_reading_it_back_are_inverse(
      @ForAll @Scale(4) @DoubleRange(min = 1.1, max = 1.28) double gravity,
      @ForAll @DoubleRange(min = -65, max = 130) double fahrenheit) {
    var reading = Electrolyte.readingAt(gravity, fahrenheit);
    assertThat(Electrolyte.correctedTo80F(reading, fahrenheit)).isCloseTo(gravity, within(1e-12));
  }

  @Property
  void stronger_acid_freezes_later(
      @ForAll @Scale(4) @DoubleRange(min = 1, max = 1.28) double one,
      @ForAll @Scale(4) @DoubleRange(min = 1, max = 1.28) double other) {
    assertThat(Electrolyte.freezingPointF(Math.max(one, other)))
        .isLessThanOrEqualTo(Electrolyte.freezingPointF(Math.min(one, other)));
  }

  @Property
  void a_colder_battery_is_allowed_to_sag_more(
      @ForAll @DoubleRange(min = -18, max = 60) double one,
      @ForAll @DoubleRange(min = -18, max = 60) double other) {
    assertThat(LoadTest.minimumVolts(Math.min(one, other)))
        .isLessThanOrEqualTo(LoadTest.minimumVolts(Math.max(one, other)));
  }

  @Property
  void a_larger_draw_never_lasts_longer_nor_gives_more_ampere_hours(
      @ForAll @DoubleRange(min = 20, max = 300) double capacity,
      @ForAll @Scale(4) @DoubleRange(min = 1, max = 1.6) double exponent,
      @ForAll @DoubleRange(min = 0.1, max = 200) double one,
      @ForAll @DoubleRange(min = 0.1, max = 200) double other) {
    double small = Math.min(one, other);
    double large = Math.max(one, other);
    double longer = Peukert.hoursRated(capacity, 20, exponent, small);
    double shorter = Peukert.hoursRated(capacity, 20, exponent, large);
    assertThat(shorter).isLessThanOrEqualTo(longer * (1 + 1e-12));
    assertThat(shorter * large).isLessThanOrEqualTo(longer * small * (1 + 1e-12));
  }

  @Property
  void the_exponent_comes_back_out_of_two_discharges(
      @ForAll @Scale(4) @DoubleRange(min = 1.01, max = 1.59) double exponent,
      @ForAll @DoubleRange(min = 6, max = 20) double small,
      @ForAll @DoubleRange(min = 30, max = 200) double large) {
    double slow = Peukert.hoursOneAmpere(250, exponent, small);
    double fast = Peukert.hoursOneAmpere(250, exponent, large);
    assertThat(Peukert.exponent(small, slow, large, fast)).isCloseTo(exponent, within(1e-9));
  }

  @Property
  void both_forms_agree_above_the_rated_current(
      @ForAll @Scale(4) @DoubleRange(min = 1, max = 1.6) double exponent,
      @ForAll @DoubleRange(min = 5.01, max = 200) double amperes) {
    // the Peukert capacity of a 100 Ah battery at 20 h: Cp = 20 x 5^k
    double peukertCapacity = 20 * Math.pow(5, exponent);
    double hours = Peukert.hoursRated(100, 20, exponent, amperes);
    assertThat(Peukert.hoursOneAmpere(peukertCapacity, exponent, amperes))
        .isCloseTo(hours, within(1e-9 * hours));
  }

  @Property
  void a_warmer_battery_is_charged_with_less(
      @ForAll @DoubleRange(min = -20, max = 50) double one,
      @ForAll @DoubleRange(min = -20, max = 50) double other) {
    assertThat(ChargingVoltage.target(14.4, Math.max(one, other), 6, 5))
        .isLessThanOrEqualTo(ChargingVoltage.target(14.4, Math.min(one, other), 6, 5));
  }
}

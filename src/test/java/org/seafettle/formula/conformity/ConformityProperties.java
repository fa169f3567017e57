package org.seafettle.formula.conformity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class ConformityProperties {

  @Property
  void the_normal_distribution_rises_and_is_symmetric(
      @ForAll @DoubleRange(min = -9, max = 9) double one,
      @ForAll @DoubleRange(min = -9, max = 9) double other) {
    assertThat(Conformity.phi(Math.max(one, other)))
        .isGreaterThanOrEqualTo(Conformity.phi(Math.min(one, other)) - 1e-15);
    assertThat(Conformity.phi(one) + Conformity.phi(-one)).isCloseTo(1, within(1e-14));
    assertThat(Conformity.phi(one)).isBetween(-1e-15, 1 + 1e-15);
  }

  @Property
  void a_limit_is_kept_or_not_with_certainty_together(
      @ForAll @DoubleRange(min = -100, max = 100) double reading,
      @ForAll @DoubleRange(min = 0.01, max = 10) double standard,
      @ForAll @DoubleRange(min = -100, max = 100) double limit) {
    double atMost = Conformity.probability(reading, standard, limit, Side.AT_MOST);
    double atLeast = Conformity.probability(reading, standard, limit, Side.AT_LEAST);
    assertThat(atMost + atLeast).isCloseTo(1, within(1e-12));
  }

  @Property
  void the_word_and_the_probability_never_contradict_each_other(
      @ForAll @DoubleRange(min = -100, max = 100) double reading,
      @ForAll @DoubleRange(min = 0.01, max = 10) double standard,
      @ForAll @DoubleRange(min = -100, max = 100) double limit,
      @ForAll Side side) {
    var verdict = Conformity.verdict(reading, 2 * standard, limit, side);
    double probability = Conformity.probability(reading, standard, limit, side);
    switch (verdict) {
      case PASS -> assertThat(probability).isGreaterThan(0.977);
      case CONDITIONAL_PASS -> assertThat(probability).isBetween(0.4999, 0.9773);
      case CONDITIONAL_FAIL -> assertThat(probability).isBetween(0.0227, 0.5001);
      case FAIL -> assertThat(probability).isLessThan(0.023);
    }
  }
}

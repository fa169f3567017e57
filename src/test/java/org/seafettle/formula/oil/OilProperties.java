package org.seafettle.formula.oil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class OilProperties {

  @Property
  void the_line_goes_through_its_own_two_points(
      @ForAll @DoubleRange(min = 20, max = 500) double at40,
      @ForAll @DoubleRange(min = 3, max = 15) double at100) {
    var oil = Walther.through(at40, 40, at100, 100);
    assertThat(oil.at(40)).isCloseTo(at40, within(1e-6 * at40));
    assertThat(oil.at(100)).isCloseTo(at100, within(1e-6 * at100));
  }

  @Property
  void warmer_oil_is_never_thicker(
      @ForAll @DoubleRange(min = 30, max = 150) double at40,
      @ForAll @DoubleRange(min = 20, max = 100) double one,
      @ForAll @DoubleRange(min = 20, max = 100) double other) {
    var oil = Walther.through(at40, 40, 6, 100);
    assertThat(oil.at(Math.max(one, other))).isLessThanOrEqualTo(oil.at(Math.min(one, other)));
  }

  @Property
  void a_higher_level_means_more_fuel_but_never_all_of_it(
      @ForAll @DoubleRange(min = 1, max = 20) double oil,
      @ForAll @DoubleRange(min = 0, max = 0.49) double share) {
    double percent = Dilution.percentFromLevelRise(oil, oil * share);
    assertThat(percent).isBetween(0.0, 50.0);
    assertThat(Dilution.percentFromLevelRise(oil, oil * (share + 0.01))).isGreaterThan(percent);
  }

  @Property
  void thinner_used_oil_means_more_fuel(
      @ForAll @DoubleRange(min = 5, max = 16) double fresh,
      @ForAll @DoubleRange(min = 0.5, max = 1) double left) {
    double percent = Dilution.percentFromViscosity(fresh, fresh * left);
    assertThat(percent).isBetween(0.0, 100.0);
    assertThat(Dilution.percentFromViscosity(fresh, fresh * left * 0.99)).isGreaterThan(percent);
  }

  @Property
  void every_viscosity_between_the_ends_has_a_grade(
      @ForAll @DoubleRange(min = 4, max = 26.09) double viscosity) {
    assertThat(SaeGrade.of(viscosity)).isNotEmpty().hasSizeLessThanOrEqualTo(3);
  }

  @Property
  void thicker_oil_never_lies_lower_from_a_grade(
      @ForAll SaeGrade grade,
      @ForAll @DoubleRange(min = 2, max = 40) double one,
      @ForAll @DoubleRange(min = 2, max = 40) double other) {
    assertThat(grade.position(Math.max(one, other)))
        .isGreaterThanOrEqualTo(grade.position(Math.min(one, other)));
  }

  @Property
  void an_oil_of_a_grade_lies_between_nought_and_one_from_it(
      @ForAll SaeGrade grade, @ForAll @DoubleRange(min = 2, max = 40) double viscosity) {
    double position = grade.position(viscosity);
    assertThat(SaeGrade.of(viscosity).contains(grade)).isEqualTo(position >= 0 && position < 1);
  }
}

package org.seafettle.formula.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

class EngineProperties {

  @Property
  void warming_and_cooling_a_tight_case_changes_nothing(
      @ForAll @DoubleRange(min = -50, max = 200) double gauge,
      @ForAll @DoubleRange(min = -40, max = 120) double start,
      @ForAll @DoubleRange(min = -40, max = 120) double end) {
    double after = SealedCase.tightPressure(gauge, start, end, 101.325);
    assertThat(SealedCase.tightPressure(after, end, start, 101.325)).isCloseTo(gauge, within(1e-9));
    assertThat(SealedCase.correctedDrop(gauge, after, start, end, 101.325)).isZero();
  }

  @Property
  void a_stronger_engine_may_never_emit_more_for_its_power(
      @ForAll @DoubleRange(min = 4.31, max = 300) double one,
      @ForAll @DoubleRange(min = 4.31, max = 300) double other,
      @ForAll EmissionLimit rule) {
    assertThat(rule.hydrocarbonsAndNitrogenOxides(Math.max(one, other)))
        .isLessThanOrEqualTo(rule.hydrocarbonsAndNitrogenOxides(Math.min(one, other)));
  }

  @Property
  void a_hull_number_says_what_was_put_into_it(
      @ForAll @IntRange(min = 1, max = 12) int month,
      @ForAll @IntRange(min = 1984, max = 2083) int modelYear,
      @ForAll boolean yearBefore) {
    int year = yearBefore ? modelYear - 1 : modelYear;
    var written =
        "XYZ12345%c%d%02d".formatted((char) ('A' + month - 1), year % 10, modelYear % 100);
    var hull = HullNumber.parse(written);
    assertThat(hull.modelYear()).isEqualTo(modelYear);
    assertThat(hull.certified().getYear()).isEqualTo(year);
    assertThat(hull.certified().getMonthValue()).isEqualTo(month);
  }
}

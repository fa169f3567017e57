package org.seafettle.trend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.seafettle.problem.Refused;

class TheilSenTest {

  private static final Course FALLING =
      MannKendallTest.yearly(List.of(12.0, 8.0, 9.0, 4.0, 7.0, 5.0, 3.0, 1.0));

  @Test
  void the_line_goes_through_the_middle_of_the_readings() {
    var line = TheilSen.of(FALLING);
    assertThat(line.slopes()).hasSize(28).isSorted().startsWith(-5.0, -4.0).endsWith(1.0, 3.0);
    assertThat(line.at(0)).isEqualTo(13.5);
    assertThat(line.at(9)).isEqualTo(0);
  }

  @Test
  void one_wrong_reading_does_not_turn_it() {
    var straight = MannKendallTest.yearly(List.of(1.0, 2.0, 3.0, 4.0, 5.0, 600.0, 7.0));
    assertThat(TheilSen.of(straight).slope()).isEqualTo(1);
    assertThat(TheilSen.of(straight).intercept()).isEqualTo(0);
  }

  @Test
  void from_five_seasons_the_outermost_slopes_hold_the_true_one() {
    var hours = MannKendallTest.yearly(List.of(52.0, 61.0, 48.0, 70.0, 75.0));
    var limits = TheilSen.of(hours).limits(MannKendall.of(hours), 0.95);
    assertThat(limits).isEqualTo(new Span(-13, 22));
  }

  @Test
  void more_confidence_is_a_wider_span() {
    var line = TheilSen.of(FALLING);
    var test = MannKendall.of(FALLING);
    // ranks (28 -+ z 8.0829)/2 with z = 0.6745, 1.6449, 1.9600
    assertThat(line.lowerRank(test, 0.5)).isCloseTo(11.2741, within(1e-4));
    assertThat(line.lowerRank(test, 0.9)).isCloseTo(7.3524, within(1e-4));
    assertThat(line.lowerRank(test, 0.95)).isCloseTo(6.0789, within(1e-4));
    var half = line.limits(test, 0.5);
    var most = line.limits(test, 0.95);
    assertThat(half.low()).isBetween(most.low(), line.slope());
    assertThat(half.high()).isBetween(line.slope(), most.high());
    assertThat(most.low()).isCloseTo(sixth(line, 0.0789), within(1e-4));
  }

  private static double sixth(TheilSen line, double share) {
    return line.slopes().get(5) + share * (line.slopes().get(6) - line.slopes().get(5));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -0.1, 0.981, 1, Double.NaN})
  void a_confidence_that_the_outermost_slopes_do_not_have_is_a_mistake(double confidence) {
    var line = TheilSen.of(FALLING);
    var test = MannKendall.of(FALLING);
    assertThatIllegalArgumentException().isThrownBy(() -> line.limits(test, confidence));
  }

  @Test
  void readings_of_one_season_have_no_slope() {
    var together = Course.of(List.of(2.0, 2.0, 2.0), List.of(1.0, 2.0, 3.0));
    assertThatThrownBy(() -> TheilSen.of(together))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("Readings of one season have no slope.");
  }
}

package org.seafettle.trend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class TrendTest {

  @Test
  void fewer_than_five_seasons_are_too_few_whichever_way_they_go() {
    assertThat(Trend.of(MannKendallTest.yearly(List.of(1.0, 2.0, 3.0, 4.0))))
        .isEqualTo(new Trend.TooFew(4));
    assertThat(Trend.of(Course.of(List.of(1.0, 1.0, 2.0), List.of(1.0, 2.0, 3.0))))
        .isEqualTo(new Trend.TooFew(2));
    assertThat(Trend.of(new Course(List.of()))).isEqualTo(new Trend.TooFew(0));
  }

  @Test
  void five_seasons_prove_a_trend_only_if_all_go_one_way() {
    var proven = (Trend.Proven) Trend.of(MannKendallTest.yearly(List.of(9.9, 9.8, 9.5, 9.4, 9.0)));
    assertThat(proven.rising()).isFalse();
    assertThat(proven.test().p()).isCloseTo(1 / 60.0, within(1e-12));
    assertThat(proven.line().slope()).isCloseTo(-0.2125, within(1e-9));
    assertThat(proven.slopes().low()).isCloseTo(-0.4, within(1e-9));
    assertThat(proven.slopes().high()).isCloseTo(-0.1, within(1e-9));
    var unproven =
        (Trend.Unproven) Trend.of(MannKendallTest.yearly(List.of(9.9, 9.8, 9.4, 9.5, 9.0)));
    assertThat(unproven.test().p()).isCloseTo(10 / 120.0, within(1e-12));
    assertThat(unproven.line().slope()).isNegative();
  }

  @Test
  void a_proven_trend_can_rise() {
    var proven = (Trend.Proven) Trend.of(MannKendallTest.yearly(List.of(1.0, 2.0, 4.0, 7.0, 8.0)));
    assertThat(proven.rising()).isTrue();
  }

  @Test
  void a_span_holds_its_ends_and_runs_upwards() {
    var span = new Span(1, 2);
    assertThat(span.contains(1)).isTrue();
    assertThat(span.contains(2)).isTrue();
    assertThat(span.contains(0.999)).isFalse();
    assertThat(span.contains(2.001)).isFalse();
    assertThatIllegalArgumentException().isThrownBy(() -> new Span(2, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> new Span(Double.NaN, 1));
  }
}

package org.seafettle.trend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.seafettle.problem.Refused;

/** Least squares and scatter against an independent library; the certified values are data. */
class LineTest {

  private static final double DIGITS = 1e-9;

  @Test
  void an_independent_library_finds_the_same_line_through_norris() {
    var theirs = new SimpleRegression();
    Norris.course().readings().forEach(r -> theirs.addData(r.at(), r.value()));
    var ours = Line.of(Norris.course());
    agrees(ours.intercept(), theirs.getIntercept());
    agrees(ours.slope(), theirs.getSlope());
    agrees(ours.interceptDeviation(), theirs.getInterceptStdErr());
    agrees(ours.slopeDeviation(), theirs.getSlopeStdErr());
    agrees(ours.explained(), theirs.getRSquare());
    agrees(ours.squares(), theirs.getXSumSquares());
    agrees(ours.regressionSquares(), theirs.getRegressionSumSquares());
    agrees(ours.residualSquares(), theirs.getSumSquaredErrors());
    agrees(ours.residualDeviation(), Math.sqrt(theirs.getMeanSquareError()));
    agrees(ours.at(700), theirs.predict(700));
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 5, 8, 34, 200})
  void an_independent_library_finds_the_same_quantiles(int degreesOfFreedom) {
    for (double confidence : List.of(0.5, 0.8, 0.9, 0.95, 0.99)) {
      assertThat(Spread.student(degreesOfFreedom, confidence))
          .isCloseTo(
              new TDistribution(degreesOfFreedom)
                  .inverseCumulativeProbability((1 + confidence) / 2),
              within(1e-6));
    }
  }

  @Test
  void a_reading_scatters_more_than_the_line_and_both_more_away_from_the_middle() {
    // mean 61.2, squares about it 526.8, of which 5.5 x 5.5 x 10 are the line's; t is 3.182446
    var line = Line.of(MannKendallTest.yearly(List.of(52.0, 61.0, 48.0, 70.0, 75.0)));
    assertThat(line.slope()).isCloseTo(5.5, within(1e-12));
    assertThat(line.residualSquares()).isCloseTo(224.3, within(1e-9));
    double ts = 3.182446305 * Math.sqrt(224.3 / 3);
    assertThat(line.lineWithin(3, 0.95).high() - 61.2).isCloseTo(ts * Math.sqrt(0.2), within(1e-6));
    assertThat(line.readingWithin(3, 0.95).high() - 61.2)
        .isCloseTo(ts * Math.sqrt(1.2), within(1e-6));
    assertThat(77.7 - line.readingWithin(6, 0.95).low())
        .isCloseTo(ts * Math.sqrt(1.2 + 0.9), within(1e-6));
  }

  @Test
  void readings_without_scatter_lie_on_their_line() {
    var line = Line.of(MannKendallTest.yearly(List.of(1.0, 3.0, 5.0)));
    assertThat(line.residualSquares()).isZero();
    assertThat(line.explained()).isEqualTo(1);
    assertThat(line.readingWithin(10, 0.95)).isEqualTo(new Span(19, 19));
  }

  @Test
  void two_readings_or_one_season_fix_no_scatter() {
    assertThatThrownBy(() -> Line.of(MannKendallTest.yearly(List.of(1.0, 2.0))))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("do not fix a line and its scatter");
    assertThatThrownBy(() -> Line.of(Course.of(List.of(2.0, 2.0, 2.0), List.of(1.0, 2.0, 3.0))))
        .isInstanceOf(Refused.class);
  }

  @Test
  void the_hours_of_seasons_scatter_as_an_independent_library_says() {
    var theirs = new DescriptiveStatistics(new double[] {48, 52, 61, 70, 75, 12});
    var ours = Spread.of(List.of(52.0, 61.0, 48.0, 70.0, 75.0, 12.0));
    agrees(ours.mean(), theirs.getMean());
    agrees(ours.standardDeviation(), theirs.getStandardDeviation());
    agrees(ours.median(), theirs.getPercentile(50));
    assertThat(ours.median()).isEqualTo(56.5);
  }

  @Test
  void what_does_not_scatter_is_refused() {
    assertThatThrownBy(() -> Spread.of(List.of())).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> Spread.of(List.of(1.0, Double.NaN))).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> Spread.of(List.of(1.0)).standardDeviation())
        .isInstanceOf(Refused.class)
        .hasMessageContaining("One number does not scatter.");
    assertThatThrownBy(() -> Spread.of(List.of(1.0)).next(0.95)).isInstanceOf(Refused.class);
    assertThat(Spread.of(List.of(7.0)).median()).isEqualTo(7);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 1, -1, Double.NaN})
  void a_confidence_lies_between_none_and_full(double confidence) {
    var spread = Spread.of(List.of(1.0, 2.0));
    assertThatIllegalArgumentException().isThrownBy(() -> spread.next(confidence));
  }

  private static void agrees(double ours, double theirs) {
    assertThat(ours).isCloseTo(theirs, within(Math.abs(theirs) * DIGITS));
  }
}

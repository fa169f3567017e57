package org.seafettle.trend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.seafettle.problem.Refused;

class MannKendallTest {

  /** The first values of Kendall's table for S, one side (from memory); n! orders each. */
  @ParameterizedTest(name = "{1}: S {2} has {3} of {4} orders on each side")
  @CsvSource({
    "3, 1 2 3,       3,  1, 6",
    "4, 1 2 4 3,     4,  4, 24",
    "4, 1 2 3 4,     6,  1, 24",
    "5, 1 2 3 5 4,   8,  5, 120",
    "5, 1 2 5 3 4,   6, 14, 120",
    "6, 1 2 3 4 6 5, 13, 6, 720",
    "6, 6 5 4 3 2 1, -15, 1, 720"
  })
  void up_to_ten_readings_chance_is_counted(int n, String values, int s, int orders, int of) {
    var test = MannKendall.of(yearly(numbers(values)));
    assertThat(test.s()).isEqualTo(s);
    assertThat(test.p()).isCloseTo(2.0 * orders / of, within(1e-12));
  }

  @Test
  void equal_readings_leave_fewer_orders() {
    // of the 5!/(2! 1! 1! 1!) = 60 orders of 1 1 2 3 4 two are as far from zero as these
    assertThat(MannKendall.of(yearly(List.of(1.0, 1.0, 2.0, 3.0, 4.0))))
        .isEqualTo(new MannKendall(9, 47.0 / 3, 2.0 / 60));
  }

  @Test
  void readings_of_one_season_have_no_order_among_them() {
    // 4!/2! = 12 ways to share four readings among seasons of two, one and one
    var test = MannKendall.of(course(List.of(1.0, 1.0, 2.0, 3.0), List.of(8.0, 10.0, 12.0, 15.0)));
    assertThat(test.s()).isEqualTo(5);
    assertThat(test.p()).isCloseTo(2.0 / 12, within(1e-12));
  }

  @Test
  void readings_that_never_change_show_nothing() {
    var test = MannKendall.of(yearly(List.of(7.0, 7.0, 7.0, 7.0, 7.0)));
    assertThat(test).isEqualTo(new MannKendall(0, 0, 1));
    assertThat(test.z()).isZero();
  }

  @Test
  void ten_readings_are_counted_and_eleven_are_not() {
    var ten = MannKendall.of(yearly(rising(10)));
    assertThat(ten.p()).isCloseTo(2 / 3_628_800.0, within(1e-18));
    var eleven = MannKendall.of(yearly(rising(11)));
    assertThat(eleven.s()).isEqualTo(55);
    assertThat(eleven.variance()).isCloseTo(165, within(1e-9));
    assertThat(eleven.z()).isCloseTo(54 / Math.sqrt(165), within(1e-12));
    assertThat(eleven.p())
        .isCloseTo(
            2 * new NormalDistribution().cumulativeProbability(-54 / Math.sqrt(165)),
            within(1e-12));
  }

  @Test
  void two_readings_cannot_be_tested() {
    assertThatThrownBy(() -> MannKendall.of(yearly(List.of(1.0, 2.0))))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("2 readings cannot be tested for a trend.");
  }

  static Course yearly(List<Double> values) {
    return course(rising(values.size()), values);
  }

  static Course course(List<Double> at, List<Double> values) {
    return Course.of(at, values);
  }

  private static List<Double> rising(int n) {
    return IntStream.rangeClosed(1, n).mapToObj(i -> (double) i).toList();
  }

  private static List<Double> numbers(String written) {
    return DoubleStream.of(
            List.of(written.split(" ")).stream().mapToDouble(Double::parseDouble).toArray())
        .boxed()
        .toList();
  }
}

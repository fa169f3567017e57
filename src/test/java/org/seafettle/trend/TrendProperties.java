package org.seafettle.trend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.constraints.UniqueElements;
import org.apache.commons.math3.stat.regression.SimpleRegression;

class TrendProperties {

  @Property(tries = 200)
  void chance_is_what_every_order_of_the_readings_gives(
      @ForAll @Size(min = 3, max = 6) List<@IntRange(min = 0, max = 4) Integer> values,
      @ForAll @Size(6) List<@IntRange(min = 0, max = 3) Integer> seasons) {
    var course = course(seasons.subList(0, values.size()), values);
    int s = MannKendall.of(course).s();
    int all = 0;
    int asFar = 0;
    for (var order : orders(course.readings().stream().map(Course.Reading::value).toList())) {
      var shuffled = Course.of(course.readings().stream().map(Course.Reading::at).toList(), order);
      all++;
      asFar += Math.abs(MannKendall.of(shuffled).s()) >= Math.abs(s) ? 1 : 0;
    }
    assertThat(MannKendall.of(course).p()).isCloseTo((double) asFar / all, within(1e-12));
  }

  @Property
  void readings_that_always_rise_have_all_pairs_rising(
      @ForAll @Size(min = 3, max = 10) @UniqueElements
          List<@IntRange(min = -1000, max = 1000) Integer> values) {
    int n = values.size();
    var rising = MannKendall.of(yearly(values.stream().sorted().toList()));
    var falling =
        MannKendall.of(yearly(values.stream().sorted(Comparator.reverseOrder()).toList()));
    assertThat(rising.s()).isEqualTo(n * (n - 1) / 2);
    assertThat(falling.s()).isEqualTo(-rising.s());
    assertThat(rising.p())
        .isEqualTo(falling.p())
        .isCloseTo(
            2 / IntStream.rangeClosed(1, n).asDoubleStream().reduce(1, (a, b) -> a * b),
            within(1e-15));
  }

  @Property
  void going_back_in_time_turns_the_sign(
      @ForAll @Size(min = 5, max = 12) List<@IntRange(min = 0, max = 100) Integer> values) {
    var forth = yearly(values);
    var back =
        new Course(
            forth.readings().stream().map(r -> new Course.Reading(-r.at(), r.value())).toList());
    assertThat(MannKendall.of(back).s()).isEqualTo(-MannKendall.of(forth).s());
    assertThat(MannKendall.of(back).variance()).isEqualTo(MannKendall.of(forth).variance());
    assertThat(MannKendall.of(back).p()).isCloseTo(MannKendall.of(forth).p(), within(1e-12));
    near(TheilSen.of(back).slope(), -TheilSen.of(forth).slope());
    near(TheilSen.of(back).intercept(), TheilSen.of(forth).intercept());
    near(Line.of(back).slope(), -Line.of(forth).slope());
    near(Line.of(back).intercept(), Line.of(forth).intercept());
  }

  @Property
  void a_constant_error_moves_the_line_and_nothing_else(
      @ForAll @Size(min = 5, max = 12) List<@IntRange(min = 0, max = 100) Integer> values,
      @ForAll @IntRange(min = -500, max = 500) int shift) {
    var here = yearly(values);
    var there = yearly(values.stream().map(v -> v + shift).toList());
    assertThat(MannKendall.of(there)).isEqualTo(MannKendall.of(here));
    near(TheilSen.of(there).slope(), TheilSen.of(here).slope());
    near(TheilSen.of(there).intercept(), TheilSen.of(here).intercept() + shift);
    near(Line.of(there).slope(), Line.of(here).slope());
    near(Line.of(there).residualSquares(), Line.of(here).residualSquares());
    near(Line.of(there).at(7), Line.of(here).at(7) + shift);
  }

  @Property
  void least_squares_agree_with_an_independent_library(
      @ForAll @Size(min = 3, max = 20) List<@IntRange(min = -1000, max = 1000) Integer> values) {
    var theirs = new SimpleRegression();
    var course = yearly(values);
    course.readings().forEach(r -> theirs.addData(r.at(), r.value()));
    near(Line.of(course).slope(), theirs.getSlope());
    near(Line.of(course).intercept(), theirs.getIntercept());
    near(Line.of(course).residualSquares(), theirs.getSumSquaredErrors());
  }

  @Property
  void the_span_of_a_crossing_holds_its_middle_and_ends_on_the_interval(
      @ForAll @Size(5) List<@DoubleRange(min = -0.05, max = 0.05) Double> scatter,
      @ForAll @DoubleRange(min = 5.5, max = 8.5) double limit) {
    var course =
        new Course(
            IntStream.range(0, 5)
                .mapToObj(i -> new Course.Reading(i + 1, i + 1 + scatter.get(i)))
                .toList());
    var expected = (Crossing.Expected) Crossing.of(course, limit);
    var line = Line.of(course);
    assertThat(expected.at()).isBetween(expected.earliest(), expected.latest());
    near(line.at(expected.at()), limit);
    near(line.readingWithin(expected.latest(), Crossing.CONFIDENCE).low(), limit);
    assertThat(line.readingWithin(expected.earliest(), Crossing.CONFIDENCE).high())
        .isGreaterThanOrEqualTo(limit - 1e-9);
  }

  private static void near(double one, double other) {
    assertThat(one).isCloseTo(other, within(1e-9 * Math.max(1, Math.abs(other))));
  }

  private static Course yearly(List<Integer> values) {
    return course(IntStream.rangeClosed(1, values.size()).boxed().toList(), values);
  }

  private static Course course(List<Integer> seasons, List<Integer> values) {
    return Course.of(
        seasons.stream().map(Integer::doubleValue).toList(),
        values.stream().map(Integer::doubleValue).toList());
  }

  private static List<List<Double>> orders(List<Double> values) {
    if (values.isEmpty()) {
      return List.of(List.of());
    }
    var all = new ArrayList<List<Double>>();
    for (int i = 0; i < values.size(); i++) {
      var others = new ArrayList<>(values);
      double first = others.remove(i);
      for (var rest : orders(others)) {
        var order = new ArrayList<>(List.of(first));
        order.addAll(rest);
        all.add(order);
      }
    }
    return all;
  }
}

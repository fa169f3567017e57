package org.seafettle.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.seafettle.problem.Refused;
import org.seafettle.quantity.MeasuredUnit;
import org.seafettle.quantity.Quantity;
import org.seafettle.survey.Evidence;

/** How uncertain a result is that was computed from uncertain readings. */
class InputsTest {

  private static Quantity about(double value, double uncertainty) {
    return new Quantity(
        BigDecimal.valueOf(value),
        uncertainty == 0 ? Optional.empty() : Optional.of(BigDecimal.valueOf(uncertainty)),
        MeasuredUnit.ONE);
  }

  private static Inputs one(Quantity... readings) {
    var byName = new LinkedHashMap<String, List<Quantity>>();
    Arrays.stream(readings).forEach(q -> byName.put("reading-" + byName.size(), List.of(q)));
    return inputs(byName, false);
  }

  private static Inputs cells(Quantity... readings) {
    return inputs(Map.of("cell", List.of(readings)), true);
  }

  private static Inputs inputs(Map<String, List<Quantity>> readings, boolean many) {
    var specs = readings.keySet().stream().map(name -> spec(name, many)).toList();
    var evidence = new Evidence(List.of(), readings, List.of(), Optional.empty());
    return Inputs.of(Propagation.facts(evidence), specs);
  }

  private static ReadingSpec spec(String name, boolean many) {
    return new ReadingSpec(
        name, MeasuredUnit.ONE, 0, 1000, true, many, OptionalDouble.empty(), Optional.empty());
  }

  private static void spreads(Inputs inputs, ToDoubleFunction<Inputs> derive, double expected) {
    assertThat(inputs.spread(derive).orElseThrow()).isCloseTo(expected, within(1e-9));
  }

  @Test
  void exact_readings_tell_no_uncertainty() {
    assertThat(one(about(10, 0)).spread(in -> in.get("reading-0"))).isEmpty();
    assertThat(cells(about(10, 0), about(12, 0)).spread(in -> in.all("cell").get(0))).isEmpty();
  }

  @Test
  void uncertainties_of_their_own_add_up_as_the_sides_of_a_right_angle() {
    spreads(one(about(100, 3), about(50, 4)), in -> in.get("reading-0") + in.get("reading-1"), 5);
    spreads(one(about(100, 3), about(50, 0)), in -> in.get("reading-0") + in.get("reading-1"), 3);
  }

  @Test
  void where_a_result_grows_faster_than_its_reading_both_sides_count_by_half() {
    // 121 and 81 beside 100
    spreads(one(about(10, 1)), in -> in.get("reading-0") * in.get("reading-0"), 20);
    // 14 and 10 beside 10
    spreads(one(about(10, 4)), in -> Math.max(10, in.get("reading-0")), 2);
  }

  @Test
  void a_side_on_which_the_formula_does_not_hold_tells_nothing() {
    spreads(
        one(about(10, 2)),
        in -> {
          if (in.get("reading-0") > 10) {
            throw Refused.because("That is beyond the table.", "Read again.");
          }
          return in.get("reading-0");
        },
        1);
  }

  @Test
  void one_gauge_for_all_cylinders_may_be_wrong_on_all_of_them_the_same_way() {
    spreads(
        cells(about(10, 1), about(12, 1)),
        in -> in.all("cell").stream().mapToDouble(x -> x).sum(),
        2);
  }

  @Test
  void a_difference_between_cylinders_is_wrong_by_the_error_of_each() {
    spreads(
        cells(about(10, 1), about(12, 1)),
        in -> Collections.max(in.all("cell")) - Collections.min(in.all("cell")),
        Math.sqrt(2));
  }

  @Test
  void each_cylinder_is_wrong_by_its_own_error_and_not_by_that_of_another() {
    spreads(
        cells(about(10, 1), about(12, 4)),
        in -> in.all("cell").get(0) - in.all("cell").get(1) / 2,
        Math.sqrt(5));
  }

  @Test
  void of_readings_that_are_not_equally_certain_the_least_certain_one_tells_for_the_gauge() {
    spreads(cells(about(10, 0), about(12, 3)), in -> in.all("cell").get(0), 3);
  }

  @Test
  void a_reading_that_was_taken_badly_is_as_uncertain_as_that_at_least() {
    spreads(one(about(10, 1)).atLeast("reading-0", 4), in -> in.get("reading-0"), 4);
    spreads(one(about(10, 5)).atLeast("reading-0", 4), in -> in.get("reading-0"), 5);
    spreads(one(about(10, 0)).atLeast("reading-0", 4), in -> in.get("reading-0"), 4);
  }
}

package org.seafettle.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.seafettle.quantity.MeasuredUnit;
import org.seafettle.quantity.Quantity;
import org.seafettle.survey.Evidence;

/** The number that a criterion makes of what was read. */
class CriterionTest {

  private static final Limits LIMITS =
      new Limits(
          Cases.always(new Steps(List.of("even", "uneven"), List.of(15.0))),
          Optional.empty(),
          Optional.empty(),
          Optional.empty());

  private static Quantity bar(double value) {
    return new Quantity(BigDecimal.valueOf(value), Optional.empty(), MeasuredUnit.of("bar"));
  }

  private static ReadingSpec spec(String name, boolean many) {
    return new ReadingSpec(
        name, MeasuredUnit.of("bar"), 0, 60, true, many, OptionalDouble.empty(), Optional.empty());
  }

  @ParameterizedTest
  @CsvSource({"true, 12, 9, 25", "false, 12, 9, 3", "true, 8, 0, 100", "true, 0, 0, 100"})
  void cylinders_lie_apart_by_so_much_or_by_a_share_of_the_highest(
      boolean relative, double highest, double lowest, double apart) {
    var spread =
        new Criterion.Spread(spec("pressure", true), relative, MeasuredUnit.of("bar"), LIMITS);
    var readings = new LinkedHashMap<String, List<Quantity>>();
    readings.put(
        "pressure", DoubleStream.of(lowest, highest).mapToObj(CriterionTest::bar).toList());
    var facts = Propagation.facts(new Evidence(List.of(), readings, List.of(), Optional.empty()));
    assertThat(spread.measure(facts).value()).isCloseTo(apart, within(1e-9));
  }

  @Test
  void beside_a_computed_number_a_reader_sees_the_readings_it_was_made_of() {
    var leakDown =
        new Criterion.Derived(
            Derivation.LEAK_DOWN,
            List.of(spec("supply", false), spec("cylinder-holds", true)),
            MeasuredUnit.of("%"),
            LIMITS);
    var readings = new LinkedHashMap<String, List<Quantity>>();
    readings.put("supply", List.of(bar(7)));
    readings.put("cylinder-holds", List.of(bar(6.5), bar(6)));
    var measure =
        leakDown.measure(
            Propagation.facts(new Evidence(List.of(), readings, List.of(), Optional.empty())));
    assertThat(measure.name()).isEqualTo("leak-down");
    assertThat(measure.shown())
        .containsExactly(
            new Measure.Shown("supply", bar(7)),
            new Measure.Shown("cylinder-holds", bar(6.5)),
            new Measure.Shown("cylinder-holds", bar(6)));
  }
}

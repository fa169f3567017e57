package org.seafettle.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.seafettle.problem.Refused;

class QuantityProperties {

  @Property
  void what_is_printed_reads_back_as_the_same_quantity(@ForAll("quantities") Quantity quantity) {
    assertThat(Quantity.parse(quantity.written())).isEqualTo(quantity);
  }

  @Property
  void there_and_back_through_another_unit_changes_nothing(
      @ForAll("quantities") Quantity quantity, @ForAll int pick) {
    var other = sameKind(quantity.unit(), pick);
    var back = Quantity.of(quantity.in(other), other).in(quantity.unit());
    assertThat(back)
        .isCloseTo(quantity.value(), within(1e-9 * Math.max(1e3, Math.abs(quantity.value()))));
  }

  @Property
  void the_difference_of_two_levels_is_the_level_of_no_zero_but_the_converted_difference(
      @ForAll("quantities") Quantity one, @ForAll("steps") BigDecimal step, @ForAll int pick) {
    var other = sameKind(one.unit(), pick);
    var higher = new Quantity(one.amount().add(step), Optional.empty(), one.unit());
    var converted = higher.in(other) - one.in(other);
    var expected = new Quantity(step, Optional.empty(), one.unit()).differenceIn(other);
    assertThat(converted)
        .isCloseTo(expected, within(1e-7 * Math.max(1, Math.abs(higher.in(other)))));
  }

  @Property
  void order_is_kept_in_every_unit(
      @ForAll("quantities") Quantity one, @ForAll("steps") BigDecimal step, @ForAll int pick) {
    var other = sameKind(one.unit(), pick);
    var higher = new Quantity(one.amount().add(step), Optional.empty(), one.unit());
    assertThat(higher.in(other)).isGreaterThanOrEqualTo(one.in(other));
  }

  @Property
  void any_text_is_either_read_or_refused(@ForAll String text) {
    assertThatCode(
            () -> {
              try {
                Quantity.parse(text);
              } catch (Refused expected) {
                assertThat(expected.problems()).isNotEmpty();
              }
            })
        .doesNotThrowAnyException();
  }

  @Provide
  Arbitrary<Quantity> quantities() {
    var uncertainty =
        Arbitraries.bigDecimals().between(BigDecimal.ZERO, BigDecimal.TEN).ofScale(3).optional();
    return Combinators.combine(amounts(), uncertainty, Arbitraries.of(MeasuredUnit.class))
        .as(Quantity::new);
  }

  @Provide
  Arbitrary<BigDecimal> steps() {
    return Arbitraries.bigDecimals().between(BigDecimal.ZERO, BigDecimal.valueOf(500)).ofScale(2);
  }

  private static Arbitrary<BigDecimal> amounts() {
    return Arbitraries.bigDecimals()
        .between(BigDecimal.valueOf(-99_999), BigDecimal.valueOf(99_999))
        .ofScale(3);
  }

  private static MeasuredUnit sameKind(MeasuredUnit unit, int pick) {
    var units = Arrays.stream(MeasuredUnit.values()).filter(u -> u.kind() == unit.kind()).toList();
    return units.get(Math.floorMod(pick, units.size()));
  }
}

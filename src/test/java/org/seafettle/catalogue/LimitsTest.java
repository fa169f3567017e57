package org.seafettle.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.seafettle.quantity.MeasuredUnit;
import org.seafettle.quantity.Quantity;
import org.seafettle.survey.Engine;
import org.seafettle.survey.Evidence;
import org.seafettle.survey.MakersLimit;

/** The catalogue's limits and what a limit of the engine's maker makes of them. */
class LimitsTest {

  private static final Steps OWN =
      new Steps(List.of("dry", "low", "right", "high", "far-high"), List.of(1.0, 2.0, 4.0, 5.0));
  private static final Limits LIMITS = limits(OWN, "low", "right", "high");
  private static final OptionalDouble NONE = OptionalDouble.empty();

  private static Limits limits(Steps own, String below, String within, String above) {
    return new Limits(
        Cases.always(own), Optional.of(below), Optional.of(within), Optional.of(above));
  }

  private static OptionalDouble of(double value) {
    return OptionalDouble.of(value);
  }

  private static Optional<Quantity> quantity(OptionalDouble value) {
    return value.stream().mapToObj(v -> Quantity.of(v, MeasuredUnit.ONE)).findFirst();
  }

  /** What a reading is held against aboard a boat whose engine's maker allows so much. */
  private static Measure measure(Limits limits, OptionalDouble lowest, OptionalDouble highest) {
    var facts = Propagation.facts(new Evidence(List.of(), Map.of(), List.of(), Optional.empty()));
    var none = Optional.<Quantity>empty();
    var manual =
        Stream.of(lowest, highest).allMatch(OptionalDouble::isEmpty)
            ? List.<MakersLimit>of()
            : List.of(
                new MakersLimit(
                    facts.check(), quantity(lowest), quantity(highest), none, none, "manual"));
    var engine = ((Engine) facts.component()).withLimits(manual);
    return limits.hold(
        new Facts(facts.survey(), engine, facts.check(), facts.evidence()),
        "level",
        3,
        MeasuredUnit.ONE,
        NONE,
        List.of());
  }

  private static void holds(Measure measure, List<String> names, double... edges) {
    assertThat(measure.steps().names()).isEqualTo(names);
    assertThat(measure.steps().edges()).isEqualTo(DoubleStream.of(edges).boxed().toList());
  }

  @Test
  void without_a_limit_of_the_maker_the_catalogues_hold() {
    holds(measure(LIMITS, NONE, NONE), OWN.names(), 1, 2, 4, 5);
    assertThat(measure(LIMITS, NONE, NONE).maker()).isEmpty();
  }

  @Test
  void further_out_than_the_makers_limit_the_catalogues_steps_still_hold() {
    holds(measure(LIMITS, of(1.5), of(4.5)), OWN.names(), 1, 1.5, 4.5, 5);
    assertThat(measure(LIMITS, of(1.5), of(4.5)).maker()).isPresent();
  }

  @Test
  void what_the_maker_allows_beyond_the_catalogues_last_step_is_right() {
    var names = List.of("low", "right", "high");
    holds(measure(LIMITS, of(0.5), of(6)), names, 0.5, 6);
    holds(measure(LIMITS, of(1), of(5)), names, 1, 5);
  }

  @Test
  void on_the_side_of_which_the_maker_says_nothing_nothing_changes() {
    holds(measure(LIMITS, of(1.5), NONE), OWN.names(), 1, 1.5, 4, 5);
    holds(measure(LIMITS, NONE, of(4.5)), OWN.names(), 1, 2, 4.5, 5);
    var noTooLittle = new Steps(List.of("right", "high"), List.of(4.0));
    holds(
        measure(limits(noTooLittle, "low", "right", "high"), of(1), NONE),
        List.of("low", "right", "high"),
        1,
        4);
  }

  @Test
  void a_limit_on_a_side_that_the_check_does_not_judge_is_not_held_to_be_one() {
    var noTooMuch =
        new Limits(Cases.always(OWN), Optional.of("low"), Optional.of("right"), Optional.empty());
    var measure = measure(noTooMuch, NONE, of(4.5));
    holds(measure, OWN.names(), 1, 2, 4, 5);
    assertThat(measure.maker()).isEmpty();
  }

  @Test
  void where_the_catalogue_has_no_limit_only_the_makers_can_judge() {
    var makersOnly =
        new Limits(
            new Cases<>(List.of()), Optional.of("low"), Optional.of("right"), Optional.of("high"));
    holds(measure(makersOnly, of(2), of(4)), List.of("low", "right", "high"), 2, 4);
    assertThatThrownBy(() -> measure(makersOnly, NONE, NONE))
        .isInstanceOfSatisfying(
            Criterion.Unjudgeable.class,
            e -> assertThat(e.reason().kind()).isEqualTo(Reason.Kind.NO_MAKERS_LIMIT));
  }

  @Test
  void without_the_makers_limits_an_engine_is_still_itself_and_a_battery_too() {
    var facts = Propagation.facts(new Evidence(List.of(), Map.of(), List.of(), Optional.empty()));
    var battery = facts.survey().outfit().batteries().get(0);
    assertThat(facts.withoutMakersLimits().component()).isEqualTo(facts.component());
    assertThat(
            new Facts(facts.survey(), battery, facts.check(), facts.evidence())
                .withoutMakersLimits()
                .component())
        .isEqualTo(battery);
  }
}

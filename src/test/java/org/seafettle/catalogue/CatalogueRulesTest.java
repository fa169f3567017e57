package org.seafettle.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.seafettle.json.CatalogueReader;
import org.seafettle.quantity.MeasuredUnit;
import org.seafettle.survey.EngineType;
import org.seafettle.survey.Word;

/** What holds for any catalogue, whatever its data say. */
class CatalogueRulesTest {

  private static final Source LAW = new Source("law", "33 CFR 183", Source.Rank.LAW);
  private static final Steps STEPS = new Steps(List.of("low", "right", "high"), List.of(1.0, 3.0));

  private static Outcome outcome(FindingClass grave, Optional<StopOrder> stop, boolean advised) {
    var advice =
        new Outcome.Advice(
            new Action(
                "mend", "Mend it.", List.of(Who.OWNER), List.of(), Optional.empty(), List.of()),
            Deadline.AT_ONCE,
            stop,
            false);
    return new Outcome(
        "broken",
        Scope.ANY,
        grave,
        new Outcome.Saying("It is broken.", "broken", ""),
        advised ? Optional.of(advice) : Optional.empty(),
        new Citation(LAW, ""),
        true);
  }

  @Test
  void a_stop_and_only_a_stop_says_what_must_not_be_done() {
    var order = Optional.of(StopOrder.DO_NOT_START);
    assertThatCode(() -> outcome(FindingClass.STOP, order, true)).doesNotThrowAnyException();
    assertThatCode(() -> outcome(FindingClass.TIMELY, Optional.empty(), true))
        .doesNotThrowAnyException();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> outcome(FindingClass.STOP, Optional.empty(), true));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> outcome(FindingClass.BEFORE_USE, order, true));
  }

  @Test
  void whatever_is_wrong_says_what_to_do_about_it() {
    assertThatCode(() -> outcome(FindingClass.OK, Optional.empty(), false))
        .doesNotThrowAnyException();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> outcome(FindingClass.ADVICE, Optional.empty(), false));
  }

  @Test
  void an_action_that_nobody_may_do_is_a_mistake() {
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                new Action("mend", "Mend it.", List.of(), List.of(), Optional.empty(), List.of()));
  }

  @ParameterizedTest
  @CsvSource({"0, 1, false", "2, 1, false", "1, 1, true", "0.5, 2, true", "NaN, 1, false"})
  void work_takes_some_time_and_at_most_no_less_than_at_least(
      double least, double most, boolean sense) {
    if (sense) {
      assertThat(new Action.Hours(least, most).most()).isEqualTo(most);
    } else {
      assertThatIllegalArgumentException().isThrownBy(() -> new Action.Hours(least, most));
    }
  }

  @Test
  void one_finding_alone_is_no_pattern() {
    var need = new Pattern.Need(List.of(new Pattern.Sign("oil-level", Set.of("high"))), false);
    assertThatIllegalArgumentException().isThrownBy(() -> pattern(List.of(need)));
    assertThat(pattern(List.of(need, need)).needs()).hasSize(2);
  }

  private static Pattern pattern(List<Pattern.Need> needs) {
    return new Pattern(
        "fuel-in-oil", Scope.ANY, needs, "", "", "", "", Set.of(), false, Optional.empty());
  }

  @Test
  void a_pattern_that_raises_to_a_stop_says_what_must_not_be_done() {
    var order = Optional.of(StopOrder.DO_NOT_START);
    assertThat(raise(FindingClass.STOP, order).stop()).isEqualTo(order);
    assertThat(raise(FindingClass.BEFORE_USE, Optional.empty()).to())
        .isEqualTo(FindingClass.BEFORE_USE);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> raise(FindingClass.STOP, Optional.empty()));
    assertThatIllegalArgumentException().isThrownBy(() -> raise(FindingClass.BEFORE_USE, order));
  }

  private static Pattern.Raise raise(FindingClass to, Optional<StopOrder> stop) {
    return new Pattern.Raise("oil-level", to, stop, Optional.empty());
  }

  @Test
  void an_interval_ends_by_hours_or_by_months() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Interval.Due(OptionalDouble.empty(), OptionalDouble.empty()));
    assertThat(new Interval.Due(OptionalDouble.of(100), OptionalDouble.empty()).hours())
        .hasValue(100);
    assertThat(new Interval.Due(OptionalDouble.empty(), OptionalDouble.of(12)).months())
        .hasValue(12);
  }

  @Test
  void a_reading_of_which_no_value_is_plausible_is_a_mistake() {
    assertThat(reading(0, 1).most()).isEqualTo(1);
    assertThatIllegalArgumentException().isThrownBy(() -> reading(1, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> reading(2, 1));
  }

  private static ReadingSpec reading(double least, double most) {
    return new ReadingSpec(
        "voltage",
        MeasuredUnit.of("V"),
        least,
        most,
        true,
        false,
        OptionalDouble.empty(),
        Optional.empty());
  }

  @Test
  void steps_have_one_name_more_than_edges_and_their_edges_rise() {
    var two = List.of("low", "high");
    assertThatIllegalArgumentException().isThrownBy(() -> new Steps(two, List.of()));
    assertThatIllegalArgumentException().isThrownBy(() -> new Steps(two, List.of(1.0, 2.0)));
    var three = List.of("low", "right", "high");
    assertThatIllegalArgumentException().isThrownBy(() -> new Steps(three, List.of(2.0, 2.0)));
    assertThatIllegalArgumentException().isThrownBy(() -> new Steps(three, List.of(3.0, 2.0)));
    assertThat(new Steps(three, List.of(1.0, 2.0)).names()).isEqualTo(three);
  }

  @ParameterizedTest
  @CsvSource({
    "0.5, 0, false, 0",
    "1,   0, true,  0",
    "2,   1, false, 0",
    "2.1, 1, false, 1",
    "3,   1, true,  1",
    "3.000000001, 1, true, 1",
    "3.1, 2, false, 1"
  })
  void a_value_lies_below_the_first_edge_that_it_does_not_pass(
      double value, int step, boolean onEdge, int nearest) {
    assertThat(STEPS.below(value)).isEqualTo(step);
    assertThat(STEPS.onEdge(value, step)).isEqualTo(onEdge);
    assertThat(STEPS.nearestEdge(value)).isEqualTo(nearest);
  }

  @ParameterizedTest
  @CsvSource({"5000000.001, 0, true", "5000000.1, 1, false"})
  void on_a_large_limit_the_hair_beside_it_is_as_large(double value, int step, boolean onEdge) {
    var steps = new Steps(List.of("low", "high"), List.of(5_000_000.0));
    assertThat(steps.below(value)).isEqualTo(step);
    assertThat(steps.onEdge(value, step)).isEqualTo(onEdge);
  }

  @Test
  void a_scale_without_an_edge_has_no_nearest_one() {
    assertThatThrownBy(() -> new Steps(List.of("any"), List.of()).nearestEdge(1))
        .isInstanceOf(IllegalStateException.class);
  }

  @Test
  void the_worse_of_two_classes_is_the_graver() {
    for (var one : FindingClass.values()) {
      for (var other : FindingClass.values()) {
        boolean graver = one.ordinal() >= other.ordinal();
        assertThat(one.atLeast(other)).isEqualTo(graver);
        assertThat(FindingClass.worse(one, other)).isEqualTo(graver ? one : other);
      }
    }
  }

  @Test
  void a_citation_without_a_place_is_the_whole_source() {
    assertThat(new Citation(LAW, "").text()).isEqualTo("33 CFR 183");
    assertThat(new Citation(LAW, "183.430").text()).isEqualTo("33 CFR 183, 183.430");
  }

  @Test
  void the_data_write_classes_deadlines_orders_people_and_ranks_in_plain_words() {
    assertThat(Word.all(FindingClass.class))
        .containsExactly("ok", "advice", "monitor", "timely", "before-use", "stop");
    assertThat(Word.all(Deadline.class)).startsWith("at-once", "before-next-start");
    assertThat(Word.all(StopOrder.class)).startsWith("do-not-go-below", "do-not-switch-on");
    assertThat(Word.all(Who.class)).startsWith("owner", "mechanic", "marine-electrician");
    assertThat(Word.all(Source.Rank.class)).startsWith("maker", "law", "standard");
  }

  @ParameterizedTest
  @EnumSource
  void what_nobody_can_look_up_is_not_published(Source.Rank rank) {
    var unpublished =
        Set.of(Source.Rank.COMMON_PRACTICE, Source.Rank.FROM_MEMORY, Source.Rank.PROGRAM_DEFAULT);
    assertThat(rank.published()).isEqualTo(!unpublished.contains(rank));
  }

  @Test
  void a_choice_has_no_number_and_no_readings() {
    var choice = new Criterion.Choice();
    assertThat(choice.readings()).isEmpty();
    assertThat(choice.reachable()).isEmpty();
  }

  @Test
  void a_number_and_an_interval_reach_the_outcomes_of_their_limits() {
    var none = Optional.<String>empty();
    var limits = new Limits(Cases.always(STEPS), none, none, none);
    assertThat(new Criterion.Scale(reading(0, 4), limits).reachable()).isEqualTo(STEPS.names());
    var yearly = Cases.always(new Interval.Due(OptionalDouble.empty(), OptionalDouble.of(12)));
    assertThat(new Interval(yearly, STEPS).reachable()).isEqualTo(STEPS.names());
  }

  @Test
  void limits_reach_the_outcomes_of_every_case_and_those_of_the_makers_limit_once() {
    var limits =
        new Limits(
            Cases.always(STEPS),
            Optional.of("low"),
            Optional.of("as-the-maker-says"),
            Optional.empty());
    assertThat(limits.reachable()).containsExactly("low", "right", "high", "as-the-maker-says");
  }

  @Test
  void gasoline_goes_stale_and_diesel_only_old() {
    var byFuel = CatalogueReader.supplied().check("fuel-age").orElseThrow().criterion();
    assertThat(byFuel.reachable(EngineType.OUTBOARD_4_STROKE)).contains("stale", "old");
    assertThat(byFuel.reachable(EngineType.INBOARD_DIESEL)).contains("old").doesNotContain("stale");
    assertThat(byFuel.reachable()).contains("stale", "old");
  }
}

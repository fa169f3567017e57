package org.seafettle.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.seafettle.assessment.Scoring.Entry;
import org.seafettle.assessment.Scoring.Sight;
import org.seafettle.catalogue.FindingClass;

/** What has to hold of the method for every survey. */
class ScoringProperties {

  @Provide
  Arbitrary<Entry> entry() {
    return Combinators.combine(
            Arbitraries.of(Sight.class),
            Arbitraries.of(FindingClass.class),
            Arbitraries.of(FindingClass.class),
            Arbitraries.of(true, false))
        .as(
            (sight, a, b, expected) ->
                new Entry(
                    sight,
                    sight == Sight.UNSEEN ? FindingClass.OK : a.compareTo(b) < 0 ? a : b,
                    FindingClass.worse(a, b),
                    expected));
  }

  @Provide
  Arbitrary<List<Entry>> entries() {
    return entry().list().ofMaxSize(25);
  }

  private static List<Entry> plus(List<Entry> entries, Entry more) {
    var all = new ArrayList<>(entries);
    all.add(more);
    return all;
  }

  @Property
  void the_order_of_the_findings_is_irrelevant(@ForAll("entries") List<Entry> entries) {
    var reversed = new ArrayList<>(entries);
    Collections.reverse(reversed);
    assertThat(Scoring.grade(reversed)).isEqualTo(Scoring.grade(entries));
  }

  @Property
  void one_finding_more_never_raises_the_index(
      @ForAll("entries") List<Entry> entries, @ForAll("entry") Entry more) {
    var before = Scoring.grade(entries);
    var after = Scoring.grade(plus(entries, more));
    assertThat(after.high()).isLessThanOrEqualTo(before.high());
    assertThat(after.low()).isLessThanOrEqualTo(before.low());
  }

  @Property
  void a_worse_finding_never_raises_the_index(
      @ForAll("entries") List<Entry> entries, @ForAll FindingClass a, @ForAll FindingClass b) {
    var mild = a.compareTo(b) < 0 ? a : b;
    var grave = FindingClass.worse(a, b);
    var before = Scoring.grade(plus(entries, new Entry(Sight.SEEN, mild, FindingClass.STOP, true)));
    var after = Scoring.grade(plus(entries, new Entry(Sight.SEEN, grave, FindingClass.STOP, true)));
    assertThat(after.high()).isLessThanOrEqualTo(before.high());
    assertThat(after.low()).isLessThanOrEqualTo(before.low());
  }

  @Property
  void a_clean_check_dilutes_nothing(
      @ForAll("entries") List<Entry> entries, @ForAll FindingClass worst) {
    var before = Scoring.grade(entries);
    var after = Scoring.grade(plus(entries, new Entry(Sight.SEEN, FindingClass.OK, worst, true)));
    assertThat(after.high()).isEqualTo(before.high());
    assertThat(after.low()).isEqualTo(before.low());
    assertThat(after.coverage()).isGreaterThanOrEqualTo(before.coverage());
  }

  @Property
  void the_worst_finding_always_counts_in_full(@ForAll("entries") List<Entry> entries) {
    var worst = entries.stream().mapToDouble(Entry::atBest).max().orElse(0);
    assertThat(Scoring.grade(entries).high()).isLessThanOrEqualTo(100 - worst);
  }

  @Property
  void whatever_the_unseen_checks_hide_the_index_lies_in_the_range_and_both_ends_are_attained(
      @ForAll("entries") List<Entry> entries, @ForAll List<FindingClass> truths) {
    var grade = Scoring.grade(entries);
    assertThat(Scoring.grade(inspect(entries, truths)).high()).isBetween(grade.low(), grade.high());
    assertThat(Scoring.index(entries.stream().map(Entry::atWorst).toList())).isEqualTo(grade.low());
    assertThat(Scoring.index(entries.stream().map(Entry::atBest).toList())).isEqualTo(grade.high());
  }

  /** As if every unknown had been looked at and shown some truth that it can reveal. */
  private static List<Entry> inspect(List<Entry> entries, List<FindingClass> truths) {
    var all = new ArrayList<Entry>();
    for (int i = 0; i < entries.size(); i++) {
      var e = entries.get(i);
      boolean unknown = e.expected() && e.sight() != Sight.SEEN;
      var truth = truths.isEmpty() ? FindingClass.OK : truths.get(i % truths.size());
      var possible = truth.compareTo(e.worst()) > 0 ? e.worst() : truth;
      all.add(
          unknown
              ? new Entry(
                  Sight.SEEN, FindingClass.worse(e.found(), possible), e.worst(), e.expected())
              : e);
    }
    return all;
  }

  @Property
  void looking_at_what_was_not_seen_only_narrows_the_range(
      @ForAll("entries") List<Entry> entries, @ForAll FindingClass a, @ForAll FindingClass b) {
    var worst = FindingClass.worse(a, b);
    var truth = a.compareTo(b) < 0 ? a : b;
    var before =
        Scoring.grade(plus(entries, new Entry(Sight.UNSEEN, FindingClass.OK, worst, true)));
    var after = Scoring.grade(plus(entries, new Entry(Sight.SEEN, truth, worst, true)));
    assertThat(after.low()).isGreaterThanOrEqualTo(before.low());
    assertThat(after.high()).isLessThanOrEqualTo(before.high());
    assertThat(after.coverage()).isGreaterThanOrEqualTo(before.coverage());
  }

  @Property
  void an_open_stop_is_failed_and_an_open_before_use_needs_a_closer_look(
      @ForAll("entries") List<Entry> entries) {
    var stopped =
        Scoring.grade(
            plus(entries, new Entry(Sight.SEEN, FindingClass.STOP, FindingClass.STOP, true)));
    assertThat(stopped.high()).isLessThanOrEqualTo(4);
    assertThat(stopped.word()).isEqualTo(ConditionWord.FAILED);
    var held =
        Scoring.grade(
            plus(
                entries,
                new Entry(Sight.SEEN, FindingClass.BEFORE_USE, FindingClass.BEFORE_USE, true)));
    assertThat(held.high()).isLessThanOrEqualTo(36);
    assertThat(held.word().zone()).isEqualTo(3);
  }

  @Property
  void an_engine_is_as_good_as_its_weakest_subsystem(
      @ForAll("entries") List<Entry> oil, @ForAll("entries") List<Entry> fuel) {
    var a = Scoring.grade(oil);
    var b = Scoring.grade(fuel);
    var engine = Scoring.weakest(List.of(a, b));
    assertThat(engine.low()).isEqualTo(Math.min(a.low(), b.low()));
    assertThat(engine.high()).isEqualTo(Math.min(a.high(), b.high()));
    assertThat(engine.graded()).isEqualTo(a.graded() && b.graded());
  }

  @Property
  void below_six_tenths_coverage_no_word_is_given(@ForAll("entries") List<Entry> entries) {
    var grade = Scoring.grade(entries);
    assertThat(grade.graded()).isEqualTo(grade.coverage() >= 0.6);
  }
}

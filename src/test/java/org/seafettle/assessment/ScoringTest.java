package org.seafettle.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.seafettle.assessment.Scoring.Entry;
import org.seafettle.assessment.Scoring.Sight;
import org.seafettle.catalogue.FindingClass;

/** The worked values of the method, as decided and published with the program. */
class ScoringTest {

  @ParameterizedTest(name = "{0}: {3} gives {4}")
  @CsvFileSource(resources = "scoring-values.csv", numLinesToSkip = 1)
  void every_worked_value_of_the_method_comes_out(
      String id, String subsystem, String formula, String inputs, String expected) {
    switch (id.substring(0, id.lastIndexOf('-'))) {
      case "SC-IDX" -> index(inputs.substring("findings=".length()), expected);
      case "SC-RNG" -> range(inputs, expected);
      case "SC-ROLL" -> engine(inputs, expected);
      default -> throw new IllegalArgumentException("no rule for " + id);
    }
  }

  private static void index(String findings, String expected) {
    var deducts = classes(findings).stream().map(c -> (double) c.deduct()).toList();
    assertThat(Scoring.index(deducts)).isEqualTo(Double.parseDouble(expected));
  }

  private static void range(String inputs, String expected) {
    var parts = inputs.split(";");
    var entries = new ArrayList<Entry>();
    int inspected = Integer.parseInt(parts[2].substring("inspected_dmax_sum=".length()));
    for (var found : classes(parts[0].replace("findings=", ""))) {
      entries.add(new Entry(Sight.SEEN, found, found, true));
      inspected -= found.deduct();
    }
    for (var clean : worth(inspected)) {
      entries.add(new Entry(Sight.SEEN, FindingClass.OK, clean, true));
    }
    for (var unseen : parts[1].replace("not_inspected_dmax=", "").split(" ")) {
      entries.add(
          new Entry(Sight.UNSEEN, FindingClass.OK, worth(Integer.parseInt(unseen)).get(0), true));
    }
    var grade = Scoring.grade(entries);
    var said = expected.split(" ", 4);
    assertThat(grade.low()).isEqualTo(Double.parseDouble(said[0]));
    assertThat(grade.high()).isEqualTo(Double.parseDouble(said[1]));
    assertThat(grade.coverage()).isCloseTo(Double.parseDouble(said[2]), within(0.00005));
    assertThat(words(grade)).isEqualTo(said[3]);
  }

  private static void engine(String inputs, String expected) {
    var grades = new ArrayList<Grade>();
    var ranges = Pattern.compile("\\[(\\d+),(\\d+)]").matcher(inputs);
    while (ranges.find()) {
      grades.add(
          new Grade(
              Double.parseDouble(ranges.group(1)), Double.parseDouble(ranges.group(2)), 1, true));
    }
    var grade = Scoring.weakest(grades);
    assertThat(grades).hasSize(5);
    assertThat((int) grade.low() + " " + (int) grade.high() + " " + words(grade))
        .isEqualTo(expected);
  }

  /** The word, with the word at worst where it is another. */
  private static String words(Grade grade) {
    if (!grade.graded()) {
      return "not graded";
    }
    var best = spoken(grade.word());
    return grade.word() == grade.wordAtWorst()
        ? best
        : best + " as far as seen; " + spoken(grade.wordAtWorst()) + " at worst";
  }

  private static String spoken(ConditionWord word) {
    var text = word.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  private static List<FindingClass> classes(String findings) {
    var classes = new ArrayList<FindingClass>();
    for (var term : findings.split(" \\+ ")) {
      var times = term.split(" x ");
      var name = times[times.length - 1];
      if (!name.equals("none")) {
        var found = FindingClass.valueOf(name.toUpperCase(Locale.ROOT).replace('-', '_'));
        classes.addAll(
            Collections.nCopies(times.length == 2 ? Integer.parseInt(times[0]) : 1, found));
      }
    }
    return classes;
  }

  /** Classes whose deducts add up to a sum, gravest first. */
  private static List<FindingClass> worth(int sum) {
    var classes = new ArrayList<FindingClass>();
    int left = sum;
    var gravestFirst = new ArrayList<>(Arrays.asList(FindingClass.values()));
    Collections.reverse(gravestFirst);
    for (var c : gravestFirst) {
      while (c.deduct() > 0 && left >= c.deduct()) {
        classes.add(c);
        left -= c.deduct();
      }
    }
    assertThat(left).isZero();
    return classes;
  }

  @ParameterizedTest
  @CsvSource({
    "85, EXCELLENT, 1",
    "84.6, VERY_GOOD, 1",
    "70, VERY_GOOD, 1",
    "69.99, GOOD, 2",
    "55, GOOD, 2",
    "54.99, FAIR, 2",
    "40, FAIR, 2",
    "39.99, POOR, 3",
    "25, POOR, 3",
    "24.99, VERY_POOR, 3",
    "10, VERY_POOR, 3",
    "9.99, FAILED, 3",
    "0, FAILED, 3"
  })
  void the_printed_number_and_the_word_agree_at_every_border(
      double index, ConditionWord word, int zone) {
    var grade = new Grade(index, index, 1, true);
    assertThat(grade.word()).isEqualTo(word);
    assertThat(ConditionWord.of(grade.printed())).isEqualTo(word);
    assertThat(ConditionWord.of(grade.printedAtWorst())).isEqualTo(word);
    assertThat(index).isGreaterThanOrEqualTo(word.from());
    assertThat(ConditionWord.of(word.from())).isEqualTo(word);
    assertThat(grade.certain()).isTrue();
    assertThat(word.zone()).isEqualTo(zone);
  }

  @Test
  void a_range_is_told_with_both_its_ends_rounded_down() {
    var grade = new Grade(28.9, 84.6, 0.8, true);
    assertThat(grade.certain()).isFalse();
    assertThat(grade.printed()).isEqualTo(84);
    assertThat(grade.printedAtWorst()).isEqualTo(28);
    assertThat(grade.word().word()).isEqualTo("very-good");
    assertThat(grade.wordAtWorst().word()).isEqualTo("poor");
  }

  @Test
  void no_range_runs_backwards_or_off_the_scale() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Grade(50, 40, 1, true));
    assertThatIllegalArgumentException().isThrownBy(() -> new Grade(-1, 40, 1, true));
    assertThatIllegalArgumentException().isThrownBy(() -> new Grade(1, 101, 1, true));
    assertThatIllegalArgumentException().isThrownBy(() -> ConditionWord.of(100.5));
  }

  @Test
  void one_stop_weighs_as_much_as_two_before_use_because_a_stop_stands_outside_the_ladder() {
    assertThat(Scoring.index(List.of(96.0))).isEqualTo(Scoring.index(List.of(64.0, 64.0)));
  }

  @Test
  void fifty_findings_of_a_class_stay_above_one_of_the_next_worse_class() {
    for (var c : List.of(FindingClass.ADVICE, FindingClass.MONITOR, FindingClass.TIMELY)) {
      double next = FindingClass.values()[c.ordinal() + 1].deduct();
      assertThat(Scoring.index(Collections.nCopies(50, (double) c.deduct())))
          .isGreaterThan(Scoring.index(List.of(next)));
    }
  }

  @Test
  void the_sum_is_the_same_to_the_last_bit_in_whatever_order_the_findings_come() {
    var deducts = new ArrayList<>(List.of(96.0, 64.0, 32.0, 32.0, 16.0, 16.0, 16.0, 8.0, 8.0));
    deducts.remove(0);
    double once = Scoring.index(deducts);
    var random = new Random(7);
    for (int i = 0; i < 50; i++) {
      Collections.shuffle(deducts, random);
      assertThat(Scoring.index(deducts)).isEqualTo(once);
    }
  }

  @Test
  void a_check_seen_in_part_counts_as_found_at_best_and_as_bad_as_it_can_be_at_worst() {
    var grade =
        Scoring.grade(
            List.of(new Entry(Sight.PARTLY, FindingClass.MONITOR, FindingClass.BEFORE_USE, true)));
    assertThat(grade.high()).isEqualTo(84);
    assertThat(grade.low()).isEqualTo(36);
    assertThat(grade.coverage()).isZero();
  }

  @Test
  void an_optional_check_that_was_not_done_is_not_missing_evidence() {
    var grade =
        Scoring.grade(List.of(new Entry(Sight.UNSEEN, FindingClass.OK, FindingClass.STOP, false)));
    assertThat(grade).isEqualTo(new Grade(100, 100, 1, true));
  }
}

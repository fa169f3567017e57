package org.seafettle.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.seafettle.assessment.Assessment;
import org.seafettle.assessment.Assessor;
import org.seafettle.assessment.Printed;
import org.seafettle.assessment.Printed.PrintedGrade;
import org.seafettle.html.Templates;
import org.seafettle.quantity.Quantity;

class ReportTest {

  private static final Words WORDS = Templates.supplied().words("en");

  private static Report report(Assessment assessment, Options options) {
    return Report.of(assessment, WORDS, SedgeWarbler.photoFacts(assessment.survey()), options);
  }

  private static Report report(String purpose, int earlier) {
    return report(SedgeWarbler.assessment(purpose, earlier), Options.USUAL);
  }

  private static FindingPart finding(Report report, String title) {
    return report.findings().stream()
        .filter(f -> f.heading().title().equals(title))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void the_verdict_names_what_must_not_be_done_and_why() {
    var verdict = report("pre-purchase", 0).first().verdict();
    assertThat(verdict.critical()).isTrue();
    assertThat(verdict.says())
        .containsExactly("Do not start the port engine: water in the engine oil.");
  }

  @Test
  void the_bilge_of_a_boat_with_two_engines_is_told_once() {
    var first = report("pre-purchase", 0).first();
    assertThat(first.shared()).extracting(SubsystemRow::name).containsExactly("Bilge");
    assertThat(first.engines())
        .allSatisfy(
            e -> assertThat(e.subsystems()).extracting(SubsystemRow::name).doesNotContain("Bilge"));
  }

  @Test
  void what_stands_on_page_one_before_use_has_the_numbers_of_the_plan() {
    var report = report("pre-purchase", 0);
    assertThat(report.first().before())
        .extracting(TaskRow::number)
        .containsExactly("1", "2", "3", "4");
    assertThat(report.plan().groups().get(0).tasks().get(0))
        .isEqualTo(report.first().before().get(0));
  }

  @Test
  void a_reading_keeps_its_digits_and_does_not_break_from_its_unit() {
    var battery =
        finding(report("pre-purchase", 0), "Start-port battery: a battery that is nearly flat");
    assertThat(battery.drawing().caption())
        .contains("State of charge: 18.3\u00a0±\u00a04.2\u00a0%")
        .contains("voltage: 11.92\u00a0±\u00a00.05\u00a0V");
    assertThat(battery.drawing().scale().orElseThrow().says())
        .contains("limits 25\u00a0% and 75\u00a0%");
  }

  @Test
  void a_number_that_was_read_itself_is_told_once_and_a_difference_is_called_one() {
    var more =
        """
        "findings": [
          {"check": "copper-in-oil", "on": "port", "readings": {"content": "105 mg/kg"}},
          {"check": "leak-down-difference", "on": "port", "readings": {"leakage": ["25 %", "5 %", "6 %", "5 %"]}},
        """;
    var survey = SedgeWarbler.survey(text -> text.replace("\"findings\": [", more.strip()));
    var assessment = new Assessor(SedgeWarbler.CATALOGUE).assess(survey, List.of());
    var report = report(assessment, Options.USUAL);
    assertThat(finding(report, "Port engine: very much copper in the oil").drawing().caption())
        .isEqualTo("Content: 105\u00a0mg/kg.");
    assertThat(finding(report, "Port engine: one cylinder that leaks far more").drawing().caption())
        .startsWith("Difference in leakage: 20\u00a0%; leakage: 25\u00a0% / 5\u00a0%");
  }

  @Test
  void a_limit_of_the_maker_says_that_it_is_the_makers() {
    var oil = finding(report("pre-purchase", 0), "Port engine: oil change due");
    assertThat(oil.judged())
        .extracting(Row::text)
        .anyMatch(t -> t.contains("Brightwater BW 115 service manual, table 2-1"))
        .anyMatch(t -> t.contains("engine maker’s manual"));
  }

  @Test
  void a_reading_too_close_to_call_says_to_measure_again_and_what_the_index_would_be() {
    var anodes =
        finding(report("pre-purchase", 0), "Starboard engine: internal anodes partly used");
    assertThat(anodes.judged())
        .extracting(Row::text)
        .anyMatch(
            t ->
                t.contains("Too close to call: measure again.")
                    && t.contains("cooling index would be"));
  }

  @Test
  void what_was_put_right_on_the_spot_asks_for_nothing_more() {
    var report = report("pre-purchase", 0);
    var telltale = finding(report, "Starboard engine: telltale weak");
    assertThat(telltale.heading().findingClass()).endsWith("put right on the spot");
    assertThat(report.plan().done())
        .extracting(d -> d.finding().title())
        .contains("Starboard engine: telltale weak");
  }

  @Test
  void the_ledger_can_be_added_up_by_hand() {
    for (var ledger : report("pre-purchase", 0).annexe().ledgers()) {
      double sum =
          ledger.lines().stream()
              .mapToDouble(l -> Double.parseDouble(l.deduct()) * weight(l.weight()))
              .sum();
      assertThat(Double.parseDouble(ledger.taken())).isEqualTo(sum);
      assertThat(ledger.lines())
          .allSatisfy(
              l ->
                  assertThat(Double.parseDouble(l.taken()))
                      .isEqualTo(Double.parseDouble(l.deduct()) * weight(l.weight())));
    }
  }

  private static double weight(String written) {
    return written.contains("/") ? 1 / Double.parseDouble(written.substring(2)) : 1;
  }

  @Test
  void four_seasons_are_too_few_to_speak_of_a_trend_and_six_are_not() {
    assertThat(report("yearly-record", 3).years().history().series())
        .isNotEmpty()
        .allSatisfy(s -> assertThat(s.remark()).startsWith("too few seasons"));
    assertThat(report("yearly-record", 5).years().history().series())
        .noneMatch(s -> s.remark().startsWith("too few seasons"))
        .anySatisfy(
            s ->
                assertThat(s.remark().replace('\u00a0', ' '))
                    .as("12.6, 12.5, 12.4, 12.3, 12.3 or less and 11.92 V at rest")
                    .isEqualTo(
                        "falling by 0.1 V a season (0.1 V to 0.23 V; 6 seasons);"
                            + " down by 0.38 V since 11 October 2025"));
  }

  /** The index of the port engine last year, in the record of this year. */
  private static String lastYears(Optional<PrintedGrade> printed, Assessment assessment) {
    var then = assessment.history().past().get(0);
    var was = new Printed(then.id(), then.date(), "0.9", "0.7", "", "1", printed.stream().toList());
    var beside =
        new Report.Beside(
            SedgeWarbler.photoFacts(assessment.survey()), List.of(was), Optional.empty());
    var history = Report.of(assessment, WORDS, beside, Options.USUAL).years().history();
    assertThat(history.printed())
        .singleElement()
        .extracting(rules -> rules.replace('\u00a0', ' '))
        .isEqualTo("The report of 11 October 2025 was printed by program 0.9 with catalogue 0.7.");
    return history.grades().get(0).cells().get(0);
  }

  @Test
  void an_earlier_grade_is_shown_as_it_was_printed_then_where_that_was_another() {
    var assessment = SedgeWarbler.assessment("yearly-record", 1);
    var today = lastYears(Optional.empty(), assessment);
    var grade = assessment.history().past().get(0).engines().get(0).grade();
    var word = grade.graded() ? Optional.of(grade.word().word()) : Optional.<String>empty();
    var same =
        new PrintedGrade("port", Optional.empty(), grade.printed(), grade.printedAtWorst(), word);
    assertThat(lastYears(Optional.of(same), assessment)).isEqualTo(today);
    var index = new PrintedGrade("port", Optional.empty(), 100, grade.printedAtWorst(), word);
    assertThat(lastYears(Optional.of(index), assessment))
        .startsWith(today + "; printed then: 100 ");
    var worst = new PrintedGrade("port", Optional.empty(), grade.printed(), 3, word);
    assertThat(grade.printedAtWorst()).isNotEqualTo(3);
    assertThat(lastYears(Optional.of(worst), assessment))
        .startsWith(today + "; printed then: " + grade.printed())
        .endsWith(", 3 at worst");
    var said =
        new PrintedGrade(
            "port",
            Optional.empty(),
            grade.printed(),
            grade.printedAtWorst(),
            Optional.of("seaworthy"));
    assertThat(lastYears(Optional.of(said), assessment))
        .startsWith(today + "; printed then: " + grade.printed() + " seaworthy");
  }

  @Test
  void what_was_printed_of_an_engine_is_not_told_of_the_one_that_took_its_place() {
    var now = SedgeWarbler.survey(text -> text.replace("pre-purchase", "yearly-record"));
    var serial = now.engines().get(0).plate().serial().orElseThrow();
    var then =
        SedgeWarbler.survey(
            text ->
                text.replace(serial, "another engine")
                    .replace("2026-10-17", "2025-10-11")
                    .replace("2026-06-11", "2025-06-11"));
    var assessment = new Assessor(SedgeWarbler.CATALOGUE).assess(now, List.of(then));
    var printed = new PrintedGrade("port", Optional.empty(), 97, 97, Optional.of("excellent"));
    assertThat(lastYears(Optional.of(printed), assessment)).isEqualTo("–");
  }

  @Test
  void every_photograph_is_registered_with_the_whole_hash_of_its_original() {
    var report = report("pre-purchase", 0);
    assertThat(report.annexe().evidence().register())
        .hasSize(7)
        .allSatisfy(p -> assertThat(p.hash().replace(" ", "")).matches("[0-9a-f]{64}"));
    assertThat(report.annexe().evidence().others())
        .extracting(PhotoPart::number)
        .containsExactly("Photograph 7");
  }

  @Test
  void us_units_are_told_in_us_units_and_a_reading_keeps_beside_it_how_it_was_recorded() {
    var us =
        report(
            SedgeWarbler.assessment("pre-purchase", 0), new Options(Units.US, Paper.LETTER, false));
    assertThat(us.first().facts())
        .extracting(Row::text)
        .anyMatch(t -> t.contains("air 52\u00a0°F"));
    assertThat(us.first().engines().get(0).plate()).contains("114\u00a0hp");
    assertThat(us.annexe().evidence().readings())
        .extracting(EvidencePart.Reading::values)
        .anyMatch(
            t ->
                t.contains("52\u00a0°F (recorded 11\u00a0°C)")
                    && t.contains("11.92\u00a0±\u00a00.05\u00a0V"));
  }

  @Test
  void a_boat_without_photographs_or_prices_is_reported_too() {
    var bare =
        SedgeWarbler.survey(
            text ->
                text.replaceAll("(?s),\\s*\"photos\": \\[\\s*\\{.*?\\n  \\]", "")
                    .replaceAll(",\\s*\"photos\": \\[[^\\]]*\\]", "")
                    .replaceAll("(?m)^  \"prices\".*$", ""));
    var report =
        Report.of(
            new Assessor(SedgeWarbler.CATALOGUE).assess(bare, List.of()),
            WORDS,
            Map.of(),
            Options.USUAL);
    assertThat(report.annexe().evidence().register()).isEmpty();
    assertThat(report.plan().priced()).isFalse();
  }

  @Test
  void one_year_is_told_in_the_singular() {
    var phrases =
        new Phrases(WORDS, Units.AS_RECORDED, SedgeWarbler.assessment("pre-purchase", 0).survey());
    assertThat(phrases.quantity(Quantity.parse("1 a"))).isEqualTo("1\u00a0year");
    assertThat(phrases.quantity(Quantity.parse("2 a"))).isEqualTo("2\u00a0years");
  }

  @Test
  void the_same_survey_gives_the_same_report() {
    assertThat(report("pre-purchase", 2)).isEqualTo(report("pre-purchase", 2));
  }
}

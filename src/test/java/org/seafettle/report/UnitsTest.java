package org.seafettle.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.seafettle.assessment.Assessor;
import org.seafettle.html.Templates;
import org.seafettle.quantity.MeasuredUnit;
import org.seafettle.quantity.Quantity;

class UnitsTest {

  private static final Words WORDS = Templates.supplied().words("en");

  private static Phrases phrases(Units units) {
    return new Phrases(WORDS, units, SedgeWarbler.survey(text -> text));
  }

  private static String plain(String text) {
    return text.replace('\u00a0', ' ');
  }

  @ParameterizedTest
  @EnumSource
  void what_is_told_in_another_unit_is_of_the_same_kind_and_not_told_in_a_third(Units units) {
    for (var unit : MeasuredUnit.values()) {
      var told = units.instead(unit);
      assertThat(told.kind()).as(unit.name()).isEqualTo(unit.kind());
      assertThat(units.instead(told)).as(unit.name()).isEqualTo(told);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "US, 11 Cel, 52 °F",
    "US, -12 Cel, 10 °F",
    "US, 63 ± 2 Cel, 145 ± 4 °F",
    "US, 8 K, 14 °F of difference",
    "US, 8.0 ± 0.5 K, 14.4 ± 0.9 °F of difference",
    "US, 7.6 m, 24.9 ft",
    "US, 85 kW, 114 hp",
    "US, 300 L, 79.3 gal",
    "US, 2000 L/h, 528.3 gal/h",
    "US, 12.42 ± 0.05 V, 12.42 ± 0.05 V",
    "US, 612.4 h, 612.4 h",
    "METRIC, 64 °F, 17.8 °C",
    "METRIC, 55 psi, 3.79 bar",
    "METRIC, 34 ft, 10.4 m",
    "METRIC, 60 [HP], 44.7 kW",
    "METRIC, 60 gal, 227 L",
    "METRIC, 0.4 in, 10 mm",
    "METRIC, 500 gal/h, 1893 L/h",
    "METRIC, 8 K, 8 K",
    "AS_RECORDED, 55 psi, 55 psi"
  })
  void a_quantity_is_told_no_finer_than_a_place_beyond_its_reading(
      Units units, String recorded, String told) {
    assertThat(plain(phrases(units).quantity(Quantity.parse(recorded)))).isEqualTo(told);
  }

  @ParameterizedTest
  @CsvSource({
    "US, 0.7, bar, 10.2 psi",
    "US, 1, bar, 14.5 psi",
    "US, 96, Cel, 205 °F",
    "US, -35, Cel, −31 °F",
    "US, 20, K, 36 °F of difference",
    "METRIC, 12.4, V, 12.4 V",
    "METRIC, 80, [degF], 26.7 °C",
    "AS_RECORDED, 0.7, bar, 0.7 bar"
  })
  void a_limit_is_told_with_three_digits_or_as_many_as_it_has(
      Units units, double limit, String unit, String told) {
    assertThat(plain(phrases(units).value(limit, MeasuredUnit.of(unit)))).isEqualTo(told);
  }

  @Test
  void a_difference_of_temperatures_is_no_temperature() {
    assertThat(plain(phrases(Units.US).uncertain(12, 3, MeasuredUnit.KELVIN)))
        .isEqualTo("21.6 ± 5.4 °F of difference");
    assertThat(plain(phrases(Units.US).uncertain(12, 3, MeasuredUnit.CELSIUS)))
        .isEqualTo("53.6 ± 5.4 °F");
  }

  @Test
  void readings_of_one_kind_are_told_together_with_what_was_recorded() {
    var readings = List.of(Quantity.parse("60 Cel"), Quantity.parse("95 Cel"));
    assertThat(plain(phrases(Units.US).evidence(readings)))
        .isEqualTo("140 °F / 203 °F (recorded 60 °C / 95 °C)");
    assertThat(plain(phrases(Units.METRIC).evidence(readings))).isEqualTo("60 °C / 95 °C");
  }

  @ParameterizedTest
  @CsvSource({
    "AS_RECORDED, difference in temperature 35 K, 20 K",
    "US, difference in temperature 63 °F of difference, 36 °F of difference"
  })
  void cylinders_are_compared_by_a_difference_in_every_system(
      Units units, String reading, String limit) {
    var survey =
        SedgeWarbler.survey(
            text ->
                text.replace(
                    "\"findings\": [",
                    "\"findings\": [ {\"check\": \"cylinder-temperature-spread\", \"on\": \"port\","
                        + " \"readings\": {\"temperature\":"
                        + " [\"60 °C\", \"95 °C\", \"62 °C\", \"61 °C\"]}},"));
    var report =
        Report.of(
            new Assessor(SedgeWarbler.CATALOGUE).assess(survey, List.of()),
            WORDS,
            SedgeWarbler.photoFacts(survey),
            new Options(units, Paper.A4, false));
    var says =
        report.findings().stream()
            .flatMap(f -> f.drawing().scale().stream())
            .map(s -> plain(s.says()))
            .filter(s -> s.startsWith("difference in temperature"))
            .toList();
    assertThat(says).singleElement().asString().startsWith(reading).contains(limit);
  }

  @Test
  void a_formula_that_does_not_hold_is_told_in_the_units_asked_for() {
    var survey =
        SedgeWarbler.survey(
            text -> text.replace("\"temperature\": \"11 °C\"", "\"temperature\": \"-5 °C\""));
    var report =
        Report.of(
            new Assessor(SedgeWarbler.CATALOGUE).assess(survey, List.of()),
            WORDS,
            SedgeWarbler.photoFacts(survey),
            new Options(Units.US, Paper.A4, false));
    assertThat(report.unseen().looks())
        .extracting(look -> plain(look.why()))
        .contains(
            "A battery temperature of 23 °F lies outside 32 °F to 104 °F, where the formula holds.");
  }
}

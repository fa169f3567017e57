package org.seafettle.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.seafettle.problem.Refused;

class QuantityTest {

  @ParameterizedTest(name = "{0} is printed {1}")
  @CsvSource({
    "12.42 ± 0.05 V,   12.42 ± 0.05 V",
    "12.42 +/- 0.05 V, 12.42 ± 0.05 V",
    "12.42+-0.05V,     12.42 ± 0.05 V",
    "12.40 V,          12.40 V",
    "12 volts,         12 V",
    "55 psi,           55 psi",
    "55 [psi],         55 psi",
    "18 Cel,           18 °C",
    "18 °C,            18 °C",
    "18°C,             18 °C",
    "18 ℃,             18 °C",
    "64 °F,            64 °F",
    "64 [degF],        64 °F",
    "500 gal/h,        500 gal/h",
    "500 gph,          500 gal/h",
    "85 kW,            85 kW",
    "115 hp,           115 hp",
    "612.4 h,          612.4 h",
    "7.6 m,            7.6 m",
    "24 ft,            24 ft",
    "300 L,            300 L",
    "90 Ah,            90 Ah",
    "2.1 A,            2.1 A",
    "35 mA,            35 mA",
    "-950 mV,          −950 mV",
    "−950 mV,          −950 mV",
    "5 %,              5 %",
    "45 ppm,           45 ppm",
    "14.5 mm2/s,       14.5 mm²/s",
    "7.2 cSt,          7.2 cSt",
    "0.3 Ohm,          0.3 Ω",
    "0.3 Ω,            0.3 Ω",
    "13.5 N.m,         13.5 N·m",
    "120 lbf.in,       120 lbf·in",
    "2 inHg,           2 inHg",
    "0.7 bar,          0.7 bar",
    "100 kPa,          100 kPa",
    "30 d,             30 d",
    "5 a,              5 y",
    "5 y,              5 y",
    "5 years,          5 y",
    "14 mo,            14 mo",
    "14 months,        14 mo",
    "10 min,           10 min",
    "15 s,             15 s",
    "4 /d,             4 /d",
    "10.5 mL/h,        10.5 mL/h",
    "1.265,            1.265",
    "1.265 kg/L,       1.265 kg/L",
    "25 in,            25 in",
    "650 /min,         650 /min",
    "650 rpm,          650 rpm",
    "20 L/min,         20 L/min",
    "5 gpm,            5 gal/min",
    "10 micron,        10 µm",
    "0.5 ft-lb,        0.5 lbf·ft",
    "+3 inHg,          3 inHg"
  })
  void a_reading_is_taken_as_people_write_it(String written, String printed) {
    assertThat(Quantity.parse(written).written()).isEqualTo(printed);
    assertThat(Quantity.parse(printed)).isEqualTo(Quantity.parse(written));
  }

  @Test
  void every_kind_has_an_example_that_is_of_that_kind() {
    for (var kind : Kind.values()) {
      for (var example : kind.example().split(", | or ")) {
        assertThat(Quantity.parse(example).kind()).as(example).isEqualTo(kind);
      }
    }
  }

  @ParameterizedTest
  @EnumSource
  void every_name_of_a_unit_finds_it(MeasuredUnit unit) {
    assertThat(MeasuredUnit.of(unit.code())).isEqualTo(unit);
    assertThat(MeasuredUnit.of(unit.symbol())).isEqualTo(unit);
    for (var spelling : unit.spellings()) {
      assertThat(MeasuredUnit.of(spelling)).as(spelling).isEqualTo(unit);
    }
  }

  @ParameterizedTest(name = "{0} is refused: {1} {2}")
  @CsvSource(
      delimiter = '|',
      value = {
        "12,42 V | comma | Write decimals with a point, such as 12.42 V,",
        "1,250 h | comma | thousands without a sign between",
        "1 250 h | gap in its number | such as 1250 h",
        "1'250 h | gap in its number | such as 1250 h",
        "1.250.000 L | not a quantity | Write a number and its unit",
        "12 v | capital and small letters | Write \"12 V\".",
        "85 KW | capital and small letters | Write \"85 kW\".",
        "100 kpa | capital and small letters | Write \"100 kPa\".",
        "3 MOHM | capital and small letters | Write \"3 MOhm\" or \"3 mOhm\".",
        "18 C | does not say which unit | Write °C (or Cel)",
        "64 F | does not say which unit | Write °F (or [degF])",
        "2 oz | does not say which unit | fl oz",
        "115 PS | does not say which unit | kW",
        "30 imp gal | does not say which unit | Write the volume in L",
        "55 pssi | no unit \"pssi\" | Did you mean \"55 psi\"?",
        "12 monhts | no unit | Did you mean \"12 month\"?",
        "5 furlongs per fortnight | no unit | Write a unit such as",
        "12 x | no unit \"x\" | Write a unit such as",
        "12.42 V ± 0.05 V | unit in the middle | Write the unit once, last",
        "12.42 V ± 1 % | unit in the middle | Write the unit once, last",
        ".5 V | decimal point without a digit | Write 0.5 V",
        "12. V | decimal point without a digit | Write 0.5 V or 12.0 V",
        "1.2e3 rpm | power of ten | Write the number in full",
        "NaN V | no number | Write a number and its unit",
        "Infinity | no number | Write a number and its unit",
        "-Infinity V | no number | Write a number and its unit",
        "V | no number | Write a number and its unit",
        "about 12 V | not a quantity | Write a number and its unit",
        "12.42 ± -0.05 V | not a quantity | Write a number and its unit",
        "--12 V | not a quantity | Write a number and its unit",
        "1234567890123456 V | more digits | Write the digits that were read"
      })
  void what_cannot_be_read_in_one_way_is_refused_with_the_remedy(
      String written, String fault, String remedy) {
    assertThatThrownBy(() -> Quantity.parse(written))
        .isInstanceOf(Refused.class)
        .hasMessageContaining(fault)
        .hasMessageContaining(remedy);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "  ", "\u0000", "±", "12 V\n13 V", "٣ V"})
  void an_empty_or_strange_reading_is_refused(String written) {
    assertThatThrownBy(() -> Quantity.parse(written)).isInstanceOf(Refused.class);
  }

  @Test
  void a_check_that_wants_volts_refuses_a_pressure_and_a_bare_number() {
    assertThatThrownBy(() -> Quantity.parse("12 psi").as(Kind.VOLTAGE))
        .isInstanceOf(Refused.class)
        .hasMessage("\"12 psi\" is a pressure.\n  Write a voltage here, such as 12.4 V.");
    assertThatThrownBy(() -> Quantity.parse("12.4").as(Kind.VOLTAGE))
        .hasMessageContaining("\"12.4\" has no unit.")
        .hasMessageContaining("Write a voltage here, such as 12.4 V.");
    assertThat(Quantity.parse("12.4 V").as(Kind.VOLTAGE)).isEqualTo(Quantity.parse("12.4 V"));
  }

  @Test
  void a_level_of_temperature_and_a_difference_are_not_the_same_thing() {
    var ten = Quantity.parse("10 ± 5 °C");
    assertThat(ten.in(MeasuredUnit.FAHRENHEIT)).isCloseTo(50, within(1e-9));
    assertThat(ten.differenceIn(MeasuredUnit.FAHRENHEIT)).isCloseTo(18, within(1e-9));
    assertThat(ten.uncertaintyIn(MeasuredUnit.FAHRENHEIT).orElseThrow()).isCloseTo(9, within(1e-9));
    assertThat(ten.uncertaintyIn(MeasuredUnit.CELSIUS)).isEqualTo(OptionalDouble.of(5));
    assertThat(Quantity.parse("10 °C").uncertaintyIn(MeasuredUnit.KELVIN)).isEmpty();
  }

  @Test
  void a_conversion_across_kinds_is_refused() {
    var volts = Quantity.parse("12 ± 1 V");
    assertThatThrownBy(() -> volts.in(MeasuredUnit.BAR)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> volts.differenceIn(MeasuredUnit.BAR)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> volts.uncertaintyIn(MeasuredUnit.BAR)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> volts.to(MeasuredUnit.BAR)).isInstanceOf(Refused.class);
    assertThat(volts.comparable(Quantity.parse("300 mV"))).isTrue();
    assertThat(volts.comparable(Quantity.parse("2 A"))).isFalse();
  }

  @ParameterizedTest(name = "{0} is {2} in {1}")
  @CsvSource({
    "7.6 m,        ft,    24.9 ft",
    "18 °C,        °F,    64 °F",
    "18.0 ± 0.5 °C,°F,    64.4 ± 0.9 °F",
    "55 psi,       bar,   3.79 bar",
    "300 L,        gal,   79.3 gal",
    "12.42 V,      mV,    12420 mV",
    "35 mA,        A,     0.035 A",
    "12.42 V,      V,     12.42 V"
  })
  void another_unit_is_shown_with_about_the_resolution_of_the_reading(
      String written, String unit, String shown) {
    assertThat(Quantity.parse(written).to(MeasuredUnit.of(unit)).written()).isEqualTo(shown);
  }

  @Test
  void an_uncertainty_is_never_negative() {
    var minus = Optional.of(new BigDecimal("-0.1"));
    assertThatThrownBy(() -> new Quantity(BigDecimal.ONE, minus, MeasuredUnit.VOLT))
        .isInstanceOf(IllegalArgumentException.class);
  }
}

package org.seafettle.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import org.fhir.ucum.Decimal;
import org.fhir.ucum.UcumEssenceService;
import org.fhir.ucum.UcumService;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The units against their published definitions and against an independent reading of UCUM. */
class PublishedUnitsTest {

  private static UcumService ucum;

  @BeforeAll
  static void readUcum() throws Exception {
    ucum = new UcumEssenceService(UcumService.class.getResourceAsStream("/ucum-essence.xml"));
  }

  @ParameterizedTest
  @EnumSource
  void every_unit_has_a_code_that_ucum_knows(MeasuredUnit unit) {
    assertThat(ucum.validate(unit.code())).isNull();
  }

  /**
   * The other library rounds to the digits of a definition, as few as three (one for the circular
   * mil), and does not convert between scales of temperature: it tells a wrong unit, the table
   * below a wrong digit.
   */
  @ParameterizedTest
  @EnumSource(
      mode = EnumSource.Mode.EXCLUDE,
      names = {"CELSIUS", "FAHRENHEIT", "KELVIN", "CIRCULAR_MIL"})
  void every_unit_agrees_with_an_independent_library(MeasuredUnit unit) throws Exception {
    for (var other : MeasuredUnit.values()) {
      if (other.kind() == unit.kind() && other != MeasuredUnit.CIRCULAR_MIL) {
        double theirs = theirs("37.00000000000000000000", unit.code(), other.code());
        double ours = Quantity.of(37, unit).in(other);
        assertThat(ours).as("%s in %s", unit, other).isCloseTo(theirs, within(theirs * 1e-2));
      }
    }
  }

  @Test
  void units_of_two_kinds_measure_two_things() throws Exception {
    for (var one : representatives()) {
      for (var other : representatives()) {
        assertThat(ucum.isComparable(one.code(), other.code()))
            .as("%s and %s", one, other)
            .isEqualTo(one == other || bothAreNewtonMetres(one.kind(), other.kind()));
      }
    }
  }

  @ParameterizedTest(name = "{0} is {1}")
  @CsvSource({
    "1 hp,           745.6998715823 W,      1e-12", // 550 ft.lbf/s
    "1 gal,          231 in³,               1e-12", // UCUM [gal_us]
    "1 gal,          3.785411784 L,         1e-12",
    "1 inHg,         3.386379 kPa,          1e-6", // UCUM: 0.0254 x 133.3220
    "2 inHg,         6.772758 kPa,          1e-6",
    "1 psi,          6.894757 kPa,          1e-6",
    "10 lbf,         44.482216 N,           1e-6",
    "120 lbf.in,     13.558 N.m,            1e-4",
    "14.5 psi,       99.974 kPa,            1e-4",
    "1 tsp,          4.92892159375 mL,      1e-9",
    "1 in,           25.4 mm,               1e-12",
    "1 ft,           0.3048 m,              1e-12",
    "143 °F,         61.66666667 °C,        1e-8",
    "10 °C,          50 °F,                 1e-12",
    "-40 °C,         -40 °F,                1e-12",
    "0 °C,           273.15 K,              1e-12",
    "5 gpm,          18.92705892 L/min,     1e-9",
    "50 gpm,         189.2705892 L/min,     1e-9",
    "7.2 cSt,        7.2 mm2/s,             1e-12",
    "1 a,            365.25 d,              1e-12", // mean Julian year
    "12 mo,          1 a,                   1e-12",
    "45 ppm,         0.0045 %,              1e-12",
    "1 kn,           1.852 km/h,            1e-12",
    "90 Ah,          90 A.h,                1e-12",
    "1 cfm,          28.316846592 L/min,    1e-9",
    "650 rpm,        650 /min,              1e-12",
    "1 qt,           57.75 in³,             1e-12",
    "1 fl oz,        29.5735295625 mL,      1e-12",
    "1 lb,           453.59237 g,           1e-12",
    "1 mmHg,         133.322 Pa,            1e-12",
    "1 inH2O,        249.08891 Pa,          1e-12",
    "1 in²,          6.4516 cm2,            1e-12",
    "1 ft²,          0.09290304 m2,         1e-12",
    "1 ft³,          1728 in³,              1e-12",
    "1 lbf·ft,       12 lbf·in,             1e-12",
    "1 lbf·ft,       1.3558179483314 N.m,   1e-12",
    "180 deg,        180 °,                 1e-12",
    "1 kWh,          1000 Wh,               1e-12",
    "1 g/mL,         1000 kg/m3,            1e-12",
    "1 wk,           168 h,                 1e-12",
    "1 Hz,           3600 /h,               1e-12",
    "24 /d,          1 /h,                  1e-12",
    "1 m3/h,         16.666666666667 L/min, 1e-12",
    "1 mgKOH/g,      1 g/kg,                1e-12",
    "1 MPa,          10 bar,                1e-12",
    "1000 cmil,      0.50670748 mm2,        1e-7"
  })
  void published_conversions_hold(String one, String other, double relative) {
    var wanted = Quantity.parse(other);
    assertThat(Quantity.parse(one).in(wanted.unit()))
        .isCloseTo(wanted.value(), within(Math.abs(wanted.value()) * relative));
  }

  @Test
  void a_month_and_a_year_are_the_mean_julian_ones() {
    assertThat(Quantity.parse("14 months").in(MeasuredUnit.DAY))
        .isCloseTo(14 * 30.4375, within(1e-9));
  }

  private static double theirs(String value, String from, String to) throws Exception {
    return Double.parseDouble(ucum.convert(new Decimal(value), from, to).asDecimal());
  }

  private static List<MeasuredUnit> representatives() {
    return Arrays.stream(Kind.values())
        .filter(kind -> kind != Kind.TEMPERATURE)
        .map(PublishedUnitsTest::firstOf)
        .toList();
  }

  private static MeasuredUnit firstOf(Kind kind) {
    return Arrays.stream(MeasuredUnit.values())
        .filter(u -> u.kind() == kind)
        .findFirst()
        .orElseThrow();
  }

  /** A torque and an energy have one dimension, yet nobody may mix them. */
  private static boolean bothAreNewtonMetres(Kind one, Kind other) {
    return EnumSet.of(one, other).equals(EnumSet.of(Kind.ENERGY, Kind.TORQUE));
  }
}

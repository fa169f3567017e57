package org.seafettle.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a reading leaves open that is known to be uncertain. */
class UncertaintyTest {

  private static Result level(String position) {
    return OneLook.aboard("outboard-4-stroke")
        .result(
            "oil-level",
            "\"readings\": {\"position\": \""
                + position
                + "\"}, \"conditions\": [\"read-as-the-manual-says\"]");
  }

  private static Comparison comparison(Result result) {
    return result.seen().flatMap(Sighting.Seen::measured).orElseThrow().comparison().orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({
    "1.0 ± 0.05,  between-marks, slightly-over",
    "1.01 ± 0.05, slightly-over, between-marks",
    "0.25 ± 0.05, between-marks, low",
    "0.24 ± 0.05, low,           between-marks"
  })
  void a_level_on_or_beside_a_mark_may_as_well_lie_on_its_other_side(
      String position, String judged, String orElse) {
    var result = level(position);
    assertThat(OneLook.outcome(result).name()).isEqualTo(judged);
    assertThat(comparison(result).otherSide().name()).isEqualTo(orElse);
  }

  @Test
  void a_reading_that_keeps_its_limit_by_two_standard_uncertainties_does_so_in_98_of_100() {
    assertThat(comparison(level("0.9 ± 0.1")).conformity()).isCloseTo(0.97725, within(1e-5));
  }
}

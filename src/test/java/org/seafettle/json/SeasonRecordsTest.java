package org.seafettle.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.seafettle.yard.Boats.boat;
import static org.seafettle.yard.Boats.job;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.seafettle.assessment.Verdict.Readiness;
import org.seafettle.yard.Faulty;
import org.seafettle.yard.Kept;

class SeasonRecordsTest {

  private static final Kept BOAT =
      new Kept(
          "inputs", "report", boat("Pipit", Readiness.STOP, 4.75, job("2.5", "90", "belt:24.25")));

  @Test
  void a_boat_is_read_back_as_she_was_kept() {
    assertThat(SeasonRecords.read(SeasonRecords.write(BOAT))).contains(BOAT);
  }

  @Test
  void a_faulty_survey_is_read_back_as_it_was_kept() {
    var kept =
        new Kept("inputs", "", new Faulty("x", List.of(new Faulty.Fault("p", "bad", "mend"))));
    assertThat(SeasonRecords.read(SeasonRecords.write(kept))).contains(kept);
  }

  @Test
  void a_record_that_was_cut_short_anywhere_counts_as_none() {
    var whole = SeasonRecords.write(BOAT);
    for (int length = 0; length < whole.length - 2; length++) {
      assertThat(SeasonRecords.read(Arrays.copyOf(whole, length))).as("%d bytes", length).isEmpty();
    }
  }

  @Test
  void a_record_of_another_format_counts_as_none() {
    var other =
        new String(SeasonRecords.write(BOAT), StandardCharsets.UTF_8)
            .replace("record/1", "record/2");
    assertThat(SeasonRecords.read(other.getBytes(StandardCharsets.UTF_8))).isEmpty();
    assertThat(
            SeasonRecords.read(
                "{\"format\":\"seafettle-season-record/1\"}".getBytes(StandardCharsets.UTF_8)))
        .isEmpty();
  }
}

package org.seafettle.yard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.seafettle.yard.Boats.boat;
import static org.seafettle.yard.Boats.job;

import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.seafettle.assessment.Verdict.Readiness;

class WorkTableTest {

  private static List<Map<String, String>> read(String table) throws IOException {
    try (var rows =
        new CsvMapper()
            .readerForMapOf(String.class)
            .with(CsvSchema.emptySchema().withHeader())
            .<Map<String, String>>readValues(table)) {
      return rows.readAll();
    }
  }

  @Test
  void another_reader_gets_back_what_was_written() throws IOException {
    var table =
        WorkTable.of(
            Fleet.of(
                List.of(
                    boat(
                        "Salt, \"sweet\"\nand so on",
                        Readiness.STOP,
                        4,
                        job("2", "90.50", "belt", "engine-oil")))));
    var row = read(table).get(0);
    assertThat(row)
        .containsEntry("boat", "Salt, \"sweet\"\nand so on")
        .containsEntry("engine", "main")
        .containsEntry("action", "Change the \"old\" oil, then look again.")
        .containsEntry("class", "timely")
        .containsEntry("who", "owner mechanic")
        .containsEntry("by", "before-next-season")
        .containsEntry("hours-least", "2")
        .containsEntry("hours-most", "3")
        .containsEntry("parts", "belt engine-oil")
        .containsEntry("currency", "EUR")
        .containsEntry("price-least", "90.5");
    assertThat(table).endsWith("\r\n");
  }

  @Test
  void a_name_that_looks_like_a_formula_is_no_formula() throws IOException {
    var table = WorkTable.of(Fleet.of(List.of(boat("=1+1", Readiness.STOP, 4, job("2", "90")))));
    assertThat(read(table).get(0)).containsEntry("boat", "'=1+1");
  }
}

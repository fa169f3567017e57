package org.seafettle.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.seafettle.html.Templates;
import org.seafettle.pdf.Printed;
import org.seafettle.pdf.Validation;
import org.seafettle.report.Options;
import org.seafettle.report.Paper;
import org.seafettle.report.Units;

/** Every sample on every sheet in every system of units. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SheetsAndUnitsTest {

  private final Map<Options, Pipe> pipes = new ConcurrentHashMap<>();
  private Map<Sheet, Checked> checked = Map.of();

  record Sheet(String sample, Paper paper, Units units) {}

  /** What was found wrong with a report, and how wide its sheets are in points. */
  record Checked(List<String> faults, List<Float> widths, List<String> outside) {}

  static List<Sheet> sheets() {
    var sheets = new ArrayList<Sheet>();
    for (var sample : List.of("neglected", "half-inspected", "diesel-inboard", "sound-pair/2026")) {
      for (var paper : Paper.values()) {
        for (var units : Units.values()) {
          sheets.add(new Sheet(sample, paper, units));
        }
      }
    }
    return sheets;
  }

  /** Side by side, since checking is most of the work. */
  @BeforeAll
  void check_all() {
    checked =
        sheets().parallelStream()
            .collect(Collectors.toConcurrentMap(Function.identity(), this::check));
  }

  private Checked check(Sheet sheet) {
    var options = new Options(sheet.units(), sheet.paper(), false);
    var pdf =
        pipes
            .computeIfAbsent(options, o -> new Pipe(Templates.supplied(), "en", o, false))
            .make(Path.of("sample-surveys", sheet.sample()), step -> {})
            .pdf();
    try (var printed = new Printed(pdf)) {
      var widths = new ArrayList<Float>();
      var outside = new ArrayList<String>();
      for (int page = 1; page <= printed.pages(); page++) {
        widths.add(printed.document().getPage(page - 1).getMediaBox().getWidth());
        outside.addAll(printed.outsideMargins(page, 20));
        outside.addAll(printed.overprinted(page));
      }
      return new Checked(Validation.faults(pdf), widths.stream().distinct().toList(), outside);
    }
  }

  @ParameterizedTest
  @MethodSource("sheets")
  void is_archival_accessible_and_within_its_margins(Sheet sheet) {
    var report = checked.get(sheet);
    assertThat(report.faults()).isEmpty();
    assertThat(report.widths())
        .singleElement()
        .satisfies(w -> assertThat(Math.round(w)).isEqualTo(sheet.paper() == Paper.A4 ? 595 : 612));
    assertThat(report.outside()).isEmpty();
  }
}

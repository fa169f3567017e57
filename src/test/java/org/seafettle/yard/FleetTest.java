package org.seafettle.yard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.seafettle.yard.Boats.boat;
import static org.seafettle.yard.Boats.euro;
import static org.seafettle.yard.Boats.job;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.seafettle.assessment.Verdict.Readiness;
import org.seafettle.catalogue.Subsystem;
import org.seafettle.html.Templates;
import org.seafettle.json.CatalogueReader;
import org.seafettle.report.Paper;
import org.seafettle.report.Reminders.Reminder;

class FleetTest {

  private static final Surveyed WELL = boat("Dunlin", Readiness.READY, 100);
  private static final Surveyed POOR =
      boat("Pipit", Readiness.STOP, 4, job("2", "90", "belt:24", "engine-oil:46"));
  private static final Surveyed FAIR =
      boat(
          "Curlew",
          Readiness.READY_AS_FAR_AS_SEEN,
          60,
          job("1", "60", "engine-oil:46"),
          job("0.5", "30", "engine-oil", "anode"));
  private static final Faulty BROKEN =
      new Faulty("broken", List.of(new Faulty.Fault("survey.json", "It is empty.", "Fill it.")));

  private static final List<Entry> ALL = List.of(WELL, POOR, FAIR, BROKEN);

  @Test
  void the_gravest_boat_stands_first_whatever_the_order_of_the_disk() {
    var shuffled = new ArrayList<>(ALL);
    for (int seed = 0; seed < 20; seed++) {
      Collections.shuffle(shuffled, new Random(seed));
      assertThat(Fleet.of(shuffled)).isEqualTo(Fleet.of(ALL));
    }
    assertThat(Fleet.of(ALL).surveyed()).containsExactly(POOR, FAIR, WELL);
  }

  @Test
  void hours_and_cost_of_all_boats_are_summed() {
    var fleet = Fleet.of(ALL);
    assertThat(fleet.hours()).isEqualTo(new Span(new BigDecimal("3.5"), new BigDecimal("6.5")));
    assertThat(fleet.cost()).isEqualTo(euro("180"));
  }

  @Test
  void a_part_is_ordered_once_for_each_job_and_its_boats_are_counted_once() {
    assertThat(Fleet.of(ALL).orders())
        .containsExactly(
            new Fleet.Order("anode", 1, 1, Amounts.NONE, 1),
            new Fleet.Order("belt", 1, 1, euro("24"), 0),
            new Fleet.Order("engine-oil", 3, 2, euro("92"), 1));
  }

  @Test
  void no_two_reminders_of_a_season_are_alike_and_none_is_lost() {
    var twice =
        Fleet.of(
            List.of(
                boat("Dunlin", Readiness.READY, 100).under("x.pdf"),
                boat("Dunlin", Readiness.READY, 90)));
    assertThat(twice.reminders().stream().flatMap(r -> r.all().stream()).map(Reminder::key))
        .hasSize(2)
        .doesNotHaveDuplicates();
  }

  @Test
  void each_currency_is_summed_by_itself() {
    var dollars = Amounts.of("USD", BigDecimal.ONE, BigDecimal.TEN);
    assertThat(euro("5").plus(dollars).plus(euro("6")).byCurrency())
        .containsOnlyKeys("EUR", "USD")
        .containsEntry("EUR", euro("11").byCurrency().get("EUR"));
  }

  @Test
  void the_overview_tells_every_boat_every_part_and_every_fault() {
    var overview =
        Overview.of(
            Fleet.of(ALL), CatalogueReader.supplied(), Templates.supplied().words("en"), Paper.A4);
    assertThat(overview.boats())
        .extracting(Overview.Line::name)
        .containsExactly("Pipit", "Curlew", "Dunlin");
    assertThat(overview.stops()).extracting(Overview.Stop::boat).containsExactly("Pipit");
    assertThat(overview.orders())
        .extracting(Overview.OrderLine::part)
        .containsExactly("anode", "belt", "engine oil");
    assertThat(overview.faults()).extracting(Overview.FaultLine::source).containsExactly("broken");
    assertThat(overview.summary().says())
        .containsExactly(
            "1 boat carries an order not to do something until it is put right.",
            "1 boat is ready for use as far as seen.",
            "1 boat is ready for use.",
            "1 survey could not be used.");
    assertThat(overview.summary().hours()).isEqualTo("3.5\u00a0to\u00a06.5");
  }

  @Test
  void every_bar_of_the_chart_counts_every_boat_and_says_so_in_words() {
    var chart = FleetChart.of(Fleet.of(ALL), Templates.supplied().words("en"));
    assertThat(chart.bars()).hasSize(Subsystem.values().length);
    assertThat(chart.bars())
        .allSatisfy(
            bar -> {
              assertThat(bar.boats().stream().filter(n -> !n.isEmpty()).mapToInt(Integer::parseInt))
                  .satisfies(
                      counts -> assertThat(counts.stream().mapToInt(n -> n).sum()).isEqualTo(3));
              assertThat(bar.says()).contains("in order 3");
            });
  }

  @Test
  void a_fleet_without_a_single_usable_survey_still_has_an_overview() {
    var overview =
        Overview.of(
            Fleet.of(List.of(BROKEN)),
            CatalogueReader.supplied(),
            Templates.supplied().words("en"),
            Paper.A4);
    assertThat(overview.boats()).isEmpty();
    assertThat(overview.summary().period()).isEqualTo("No survey could be used.");
  }
}

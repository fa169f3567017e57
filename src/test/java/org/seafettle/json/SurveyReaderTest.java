package org.seafettle.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.seafettle.quantity.Quantity;
import org.seafettle.survey.Chemistry;
import org.seafettle.survey.Circuit;
import org.seafettle.survey.EngineType;
import org.seafettle.survey.Feature;
import org.seafettle.survey.Finding;
import org.seafettle.survey.Fuel;
import org.seafettle.survey.Photo;
import org.seafettle.survey.Purpose;
import org.seafettle.survey.Survey;

class SurveyReaderTest {

  private final Survey survey = SurveyReader.bind(Surveys.GOOD, Surveys.CATALOGUE);

  @Test
  void the_occasion_is_read() {
    var occasion = survey.occasion();
    assertThat(occasion.id()).isEqualTo("QH-2026-041");
    assertThat(occasion.purpose()).isEqualTo(Purpose.PRE_PURCHASE);
    assertThat(occasion.date()).hasToString("2026-10-17");
    assertThat(occasion.conditions().afloat()).contains(false);
    assertThat(occasion.conditions().enginesCold()).contains(true);
    assertThat(occasion.conditions().lowestExpected()).contains(Quantity.parse("-18 °C"));
    assertThat(occasion.conditions().instruments()).containsExactly("multimeter, 0.5 %");
    assertThat(occasion.season().orElseThrow().to()).hasToString("--09-30");
    assertThat(occasion.by().role()).contains("surveyor");
    assertThat(occasion.orderedBy().orElseThrow().name()).isEqualTo("M. Hollis");
  }

  @Test
  void the_boat_is_read() {
    var boat = survey.boat();
    assertThat(boat.hin()).contains("ABC12345D617");
    assertThat(boat.built()).hasValue(2017);
    assertThat(boat.fuel()).contains(new Fuel(Fuel.Kind.E10, quantity("300 L")));
    assertThat(boat.has(Feature.SHORE_POWER)).contains(true);
    assertThat(boat.has(Feature.CABIN)).contains(false);
    assertThat(boat.has(Feature.SEACOCKS)).isEmpty();
  }

  @Test
  void an_engine_is_read_with_its_makers_limits() {
    var port = survey.engines().get(0);
    assertThat(port.type()).isEqualTo(EngineType.OUTBOARD_4_STROKE);
    assertThat(port.plate().serial()).contains("BW115-20417");
    assertThat(port.hours()).isEqualTo(quantity("612.4 h"));
    assertThat(port.limit("running-temperature").orElseThrow().highest())
        .isEqualTo(quantity("85 °C"));
    assertThat(port.limit("engine-oil-change").orElseThrow().months()).isEqualTo(quantity("12 mo"));
    assertThat(survey.engines().get(1).circuit()).contains(Circuit.CLOSED_CIRCUIT);
  }

  @Test
  void batteries_and_pumps_are_read() {
    var battery = survey.outfit().batteries().get(0);
    assertThat(battery.chemistry()).contains(Chemistry.FLOODED);
    assertThat(battery.cranking()).isEqualTo(quantity("720 A"));
    assertThat(battery.serves()).containsExactly("port");
    assertThat(survey.outfit().pumps().get(0).fedBy()).contains("start-port");
  }

  @Test
  void what_was_seen_is_read() {
    var oil = survey.finding("oil-appearance", "port").orElseThrow();
    assertThat(oil.evidence().words()).containsExactly("black", "milky");
    assertThat(oil.photos()).containsExactly("p1");
    var level = survey.finding("oil-level", "port").orElseThrow();
    assertThat(level.evidence().reading("position")).isEqualTo(quantity("0.75"));
    assertThat(level.evidence().conditions()).containsExactly("read-as-the-manual-says");
    var change = survey.finding("engine-oil-change", "port").orElseThrow();
    assertThat(change.evidence().last().orElseThrow().at()).isEqualTo(quantity("540 h"));
    assertThat(survey.finding("compression", "port").orElseThrow().evidence().all("pressure"))
        .hasSize(4);
    assertThat(survey.finding("coolant-level", "starboard").orElseThrow().done()).isPresent();
  }

  @Test
  void a_finding_on_the_only_thing_of_its_kind_need_not_name_it() {
    assertThat(survey.finding("battery-rest-voltage", "start-port")).isPresent();
    assertThat(survey.finding("bilge-pump-runs", "bilge-aft").orElseThrow().state())
        .isEqualTo(new Finding.State.NotInspected("no water to pump"));
    assertThat(survey.finding("bilge-water", "boat").orElseThrow().state())
        .isEqualTo(new Finding.State.Partly("the fore part is closed"));
  }

  @Test
  void photographs_work_and_prices_are_read() {
    assertThat(survey.photos().get(0).marks())
        .containsExactly(new Photo.Mark(0.42, 0.55, Photo.Mark.Shape.RING, "emulsion"));
    assertThat(survey.work().get(0).at()).isEqualTo(quantity("540 h"));
    assertThat(survey.prices().orElseThrow().items().keySet())
        .isEqualTo(new java.util.TreeSet<>(List.of("engine-oil", "oil-filter")));
    assertThat(survey.prices().orElseThrow().item("oil-filter").orElseThrow()).hasToString("14.50");
  }

  @Test
  void accents_are_composed() {
    var json = Surveys.with("Wendeline", "Ren\\u0065\\u0301e");
    assertThat(SurveyReader.bind(json, Surveys.CATALOGUE).boat().name()).isEqualTo("Renée");
  }

  @Test
  void a_missing_reading_is_no_fault() {
    var json = Surveys.with(", \"rested\": \"8 h\"", "");
    assertThat(Surveys.faults(json)).isEmpty();
  }

  private static java.util.Optional<Quantity> quantity(String written) {
    return java.util.Optional.of(Quantity.parse(written));
  }
}

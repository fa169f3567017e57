package org.seafettle.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.seafettle.json.CatalogueReader;

/** That what is to be done goes with what was found. */
class ActionsBesideFindingsTest {

  private static Stream<Outcome.Advice> advice() {
    return CatalogueReader.supplied().checks().stream()
        .flatMap(check -> check.outcomes().stream())
        .flatMap(outcome -> outcome.advice().stream());
  }

  @Test
  void an_engine_that_must_not_be_started_is_not_to_be_warm_for_its_repair() {
    assertThat(
            advice()
                .filter(a -> a.stop().filter(s -> s == StopOrder.DO_NOT_START).isPresent())
                .map(a -> a.action().does()))
        .isNotEmpty()
        .noneMatch(does -> does.contains("warm engine") || does.contains("run the engine to"));
  }

  @Test
  void whoever_measures_compression_is_warned_of_plug_holes_and_the_turning_starter() {
    assertThat(
            advice()
                .map(Outcome.Advice::action)
                .filter(a -> a.does().toLowerCase(Locale.ROOT).contains("measure compression"))
                .distinct())
        .isNotEmpty()
        .allSatisfy(
            a ->
                assertThat(a.cautions())
                    .extracting(Caution::id)
                    .contains("cranking-without-plugs"));
  }

  @Test
  void a_source_that_begins_a_sentence_begins_with_a_capital() {
    assertThat(CatalogueReader.supplied().sources())
        .extracting(Source::title)
        .allMatch(title -> title.isEmpty() || !Character.isLowerCase(title.charAt(0)));
  }
}

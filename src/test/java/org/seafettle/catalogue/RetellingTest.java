package org.seafettle.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.seafettle.json.CatalogueReader;

class RetellingTest {

  private static final Catalogue CATALOGUE = CatalogueReader.supplied();

  /** Every text that is reached through the records of a catalogue. */
  private static List<String> texts(Object told) throws ReflectiveOperationException {
    var texts = new ArrayList<String>();
    if (told instanceof String text) {
      texts.add(text);
    } else if (told instanceof Optional<?> maybe && maybe.isPresent()) {
      texts.addAll(texts(maybe.get()));
    } else if (told instanceof Collection<?> many) {
      for (var one : many) {
        texts.addAll(texts(one));
      }
    } else if (told instanceof Record) {
      for (var component : told.getClass().getRecordComponents()) {
        texts.addAll(texts(component.getAccessor().invoke(told)));
      }
    }
    return texts;
  }

  @Test
  void every_sentence_of_the_catalogue_can_be_told_in_other_words() throws Exception {
    var marked = new HashMap<>(Retelling.texts(CATALOGUE));
    marked.replaceAll((key, text) -> "§" + text);
    var told = Retelling.of(CATALOGUE, marked);
    assertThat(texts(CATALOGUE)).filteredOn(t -> t.contains(" ")).hasSizeGreaterThan(2000);
    assertThat(texts(told)).filteredOn(t -> t.contains(" ") && !t.startsWith("§")).isEmpty();
  }

  @Test
  void without_other_words_it_judges_and_says_the_same() {
    var same = Retelling.of(CATALOGUE, Map.of());
    assertThat(same.checks()).isEqualTo(CATALOGUE.checks());
    assertThat(same.patterns()).isEqualTo(CATALOGUE.patterns());
    assertThat(same.sources()).isEqualTo(CATALOGUE.sources());
    assertThat(same.digest()).isEqualTo(CATALOGUE.digest());
  }

  @Test
  void a_key_names_the_place_in_the_data() {
    assertThat(Retelling.texts(CATALOGUE))
        .containsEntry("check.oil-level.title", "Engine oil level")
        .containsEntry(
            "check.oil-level.how.1",
            CATALOGUE.check("oil-level").orElseThrow().guidance().how().get(0))
        .containsEntry("check.oil-appearance.milky.brief", "water in the engine oil")
        .containsEntry("check.oil-appearance.near-black.2.observed", "The oil is nearly black.")
        .containsEntry("number.freezes-at", "freezes at")
        .containsEntry("number.share-of-interval", "share of interval")
        .containsEntry("number.state-of-charge", "state of charge")
        .containsEntry("part.oil-filter", "oil filter")
        .containsKeys("action.top-up-engine-oil", "caution.hot-oil", "source.oil-use-page");
  }

  @Test
  void a_share_of_an_interval_is_spoken_of_where_something_falls_due_and_nowhere_else() {
    assertThat(Retelling.texts(only("engine-oil-change"))).containsKey("number.share-of-interval");
    assertThat(Retelling.texts(only("oil-appearance")).keySet())
        .noneMatch(key -> key.startsWith("number."));
  }

  private static Catalogue only(String check) {
    return new Catalogue(
        CATALOGUE.version(),
        CATALOGUE.digest(),
        CATALOGUE.check(check).stream().toList(),
        List.of(),
        CATALOGUE.sources());
  }

  @Test
  void readings_and_parts_have_names_in_the_language() {
    var told = Retelling.of(CATALOGUE, Map.of("number.freezes-at", "gefriert bei"));
    assertThat(told.name(Catalogue.Named.NUMBER, "freezes-at")).isEqualTo("gefriert bei");
    assertThat(told.name(Catalogue.Named.PART, "oil-filter")).isEqualTo("oil filter");
  }
}

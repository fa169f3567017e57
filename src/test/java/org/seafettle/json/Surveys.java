package org.seafettle.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.function.IntPredicate;
import org.seafettle.catalogue.Catalogue;
import org.seafettle.problem.Problem;
import org.seafettle.problem.Refused;

/** A small catalogue and a good survey to make bad ones of. */
final class Surveys {

  static final Catalogue CATALOGUE =
      CatalogueReader.read(
          List.of("common", "oil", "cooling", "electrical", "bilge").stream()
              .map(n -> CatalogueText.of(n + ".yaml", text("small-catalogue-" + n + ".yaml")))
              .toList());

  static final String GOOD = text("good-survey.json");

  private Surveys() {}

  static String text(String name) {
    try (var in = Surveys.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The good survey with one passage changed. */
  static String with(String passage, String other) {
    assertThat(GOOD).contains(passage);
    return GOOD.replace(passage, other);
  }

  static List<Problem> faults(String json) {
    return faults(json, c -> true);
  }

  static List<Problem> faults(String json, IntPredicate printable) {
    try {
      new SurveyReader(CATALOGUE, printable, (name, report) -> Map.of()).read(json);
      return List.of();
    } catch (Refused e) {
      return e.problems();
    }
  }
}

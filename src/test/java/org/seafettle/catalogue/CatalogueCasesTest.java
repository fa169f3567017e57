package org.seafettle.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;
import static org.junit.jupiter.api.Assertions.assertAll;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.seafettle.assessment.Sighting;
import org.seafettle.json.CatalogueReader;

/** Every check of the catalogue is tried by its own file of cases. */
class CatalogueCasesTest {

  private static final Catalogue CATALOGUE = CatalogueReader.supplied();

  static List<String> checks() {
    return List.copyOf(CATALOGUE.byId().keySet());
  }

  @ParameterizedTest
  @MethodSource("checks")
  void a_check_gives_what_its_cases_say(String id) {
    var check = CATALOGUE.check(id).orElseThrow();
    var results = new LinkedHashMap<CatalogueCase, CatalogueCase.Result>();
    CatalogueCase.of(check).forEach(c -> results.put(c, c.run(CATALOGUE)));
    assertAll(
        results.entrySet().stream()
            .<Executable>map(
                r -> () -> assertAll(r.getKey().says(), () -> holds(r.getKey(), r.getValue()))));
    complete(check, List.copyOf(results.values()));
  }

  @Test
  void every_file_of_cases_belongs_to_a_check() throws IOException, URISyntaxException {
    var folder = Path.of(CatalogueCase.class.getResource("cases").toURI());
    try (var files = Files.list(folder)) {
      var named = new TreeSet<String>();
      files.forEach(f -> named.add(f.getFileName().toString().replace(".yaml", "")));
      assertThat(CATALOGUE.byId().keySet())
          .as("a file of cases is named by the id of its check")
          .containsAll(named);
    }
  }

  private static void complete(Check check, List<CatalogueCase.Result> results) {
    if (results.isEmpty()) {
      fail("\"" + check.id() + "\" has no cases: write cases/" + check.id() + ".yaml.");
    }
    var gaps = new CatalogueGaps(check, results).find();
    if (!gaps.isEmpty()) {
      fail("cases/" + check.id() + ".yaml forgot something.\n" + String.join("\n", gaps));
    }
  }

  private static void holds(CatalogueCase given, CatalogueCase.Result result) {
    if (result instanceof CatalogueCase.Result.Refusal refusal) {
      assertThat(given.expects("refused"))
          .as(refusal.message())
          .hasValueSatisfying(part -> assertThat(refusal.message()).contains(part));
    } else if (((CatalogueCase.Result.Look) result).sighting() instanceof Sighting.Seen seen) {
      seen(given, seen);
    } else if (((CatalogueCase.Result.Look) result).sighting() instanceof Sighting.Unseen unseen) {
      assertThat(word(unseen.reason().kind()))
          .as(unseen.reason().text())
          .isEqualTo(given.expects("unseen").orElse("seen"));
    } else {
      fail("not applicable");
    }
  }

  private static void seen(CatalogueCase given, Sighting.Seen seen) {
    assertThat(Optional.of(seen.outcome().name())).isEqualTo(given.expects("gives"));
    given
        .expects("class")
        .ifPresent(c -> assertThat(seen.outcome().findingClass().word()).isEqualTo(c));
    given
        .expects("close")
        .ifPresent(
            close ->
                assertThat(seen.measured().orElseThrow().tooCloseToCall())
                    .isEqualTo(Boolean.parseBoolean(close)));
  }

  private static String word(Reason.Kind kind) {
    return kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}

package org.seafettle.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.seafettle.assessment.Sighting;
import org.seafettle.json.CatalogueReader;

/** Every check of the catalogue is tried by its own file of cases. */
class CatalogueCasesTest {

  private static final Catalogue CATALOGUE = CatalogueReader.supplied();

  @TestFactory
  Stream<DynamicNode> every_check_gives_what_its_cases_say() {
    return CATALOGUE.checks().stream().map(CatalogueCasesTest::cases);
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

  private static DynamicNode cases(Check check) {
    var results = new LinkedHashMap<CatalogueCase, CatalogueCase.Result>();
    CatalogueCase.of(check).forEach(c -> results.put(c, c.run(CATALOGUE)));
    var tests = new ArrayList<DynamicNode>();
    results.forEach(
        (c, result) -> tests.add(DynamicTest.dynamicTest(c.says(), () -> holds(c, result))));
    tests.add(
        DynamicTest.dynamicTest(
            "nothing is forgotten", () -> complete(check, List.copyOf(results.values()))));
    return DynamicContainer.dynamicContainer(check.id(), tests);
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

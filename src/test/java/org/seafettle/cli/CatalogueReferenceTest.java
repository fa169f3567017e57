package org.seafettle.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.seafettle.catalogue.Outcome;
import org.seafettle.json.CatalogueReader;

/** The page of reference beside the catalogue's data. */
class CatalogueReferenceTest {

  private static final Path PAGE = Path.of("src/main/resources/org/seafettle/catalogue/README.md");

  private final String page =
      Run.of("catalogue", "--format", "markdown").out().replace(System.lineSeparator(), "\n");

  @Test
  void the_page_beside_the_data_says_what_the_data_say() throws IOException {
    Golden.hold(PAGE, page, "mvn test -Dtest=CatalogueReferenceTest");
  }

  @Test
  void it_begins_by_saying_that_it_is_generated() {
    assertThat(page).startsWith("Generated from the data; do not edit");
  }

  @Test
  void every_link_leads_to_exactly_one_heading() {
    var headings = page.lines().filter(line -> line.startsWith("#")).toList();
    var links = Pattern.compile("\\]\\(#([^)]*)\\)").matcher(page).results().toList();
    assertThat(links).isNotEmpty();
    assertThat(links)
        .allSatisfy(link -> assertThat(headings).containsOnlyOnce("### " + link.group(1)));
  }

  @Test
  void every_row_of_a_table_has_as_many_cells_as_its_head() {
    int expected = 0;
    for (var line : page.lines().toList()) {
      if (!line.startsWith("|")) {
        expected = 0;
        continue;
      }
      int cells = line.split("(?<!\\\\)\\|", -1).length;
      expected = expected == 0 ? cells : expected;
      assertThat(cells).as(line).isEqualTo(expected);
    }
  }

  @Test
  void every_outcome_pattern_and_source_is_told() {
    var catalogue = CatalogueReader.supplied();
    assertThat(page)
        .contains(
            catalogue.checks().stream()
                .flatMap(check -> check.outcomes().stream())
                .map(Outcome::saying)
                .map(saying -> Markdown.text(saying.observed()))
                .toList());
    assertThat(page)
        .contains(catalogue.patterns().stream().map(p -> Markdown.text(p.rulesOut())).toList());
    assertThat(page)
        .contains(catalogue.sources().stream().map(s -> Markdown.text(s.title())).toList());
  }

  @Test
  void the_page_does_not_travel_with_the_program() {
    assertThat(CatalogueReader.class.getResource("/org/seafettle/catalogue/README.md")).isNull();
    assertThat(CatalogueReader.class.getResource("/org/seafettle/catalogue/oil.yaml")).isNotNull();
  }

  @Test
  void a_format_that_there_is_not_is_refused_with_those_there_are() {
    var run = Run.of("catalogue", "--format", "html");
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).containsIgnoringCase("text, markdown").doesNotContain("\tat ");
  }
}

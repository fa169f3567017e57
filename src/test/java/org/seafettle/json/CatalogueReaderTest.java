package org.seafettle.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.seafettle.catalogue.Catalogue;
import org.seafettle.catalogue.Caution;
import org.seafettle.catalogue.Criterion;
import org.seafettle.catalogue.FindingClass;
import org.seafettle.problem.Refused;

class CatalogueReaderTest {

  private static final String COMMON =
      """
      version: "1.0"
      sources:
        common-practice: {rank: common-practice}
      cautions:
        hot-oil: "Let it cool."
      """;

  private static final String OIL =
      """
      actions:
        top-up: {does: "Top the oil up.", who: [owner], parts: [oil], hours: [0.1, 0.2], cautions: [hot-oil]}
      checks:
        - id: level
          on: engine
          for: {engines: [four-stroke]}
          title: "Level"
          how: ["Pull the stick."]
          why: "Oil carries the load."
          instrument: "stick"
          since: "1.0"
          expected: [pre-purchase]
          criterion:
            kind: scale
            reading: {name: position, unit: "1", plausible: [-1, 2], usual-uncertainty: 0.05}
            steps: [low, 0.25, full]
          outcomes:
            - {is: low, class: monitor, observed: "It is low.", brief: "low", do: top-up, by: before-next-use, source: common-practice}
            - {is: full, class: ok, observed: "It is full.", brief: "full", source: {of: common-practice, at: "all"}}
        - id: look
          on: engine
          title: "Look"
          how: ["Look."]
          why: "One sees."
          instrument: "eyes"
          since: "1.0"
          criterion: {kind: choice}
          outcomes:
            - {is: milky, class: stop, stop: do-not-start, observed: "Milky.", brief: "milky", do: top-up, by: at-once, source: common-practice}
            - {is: clear, class: ok, observed: "Clear.", brief: "clear", source: common-practice}
      patterns:
        - id: both
          needs:
            - any: {check: level, is: low}
            - any: [{check: look, is: [milky]}]
          cause: "Something."
          reasoning: "Because."
          confirms: "That."
          rules-out: "This."
          raise: {check: level, to: before-use, by: before-next-start}
      """;

  @Test
  void the_data_becomes_checks_outcomes_actions_and_patterns() {
    var catalogue = read(OIL);
    var level = catalogue.check("level").orElseThrow();
    assertThat(level.criterion()).isInstanceOf(Criterion.Scale.class);
    assertThat(level.scope().engines()).hasSize(5);
    assertThat(level.outcomes())
        .extracting("name", "findingClass", "sayable")
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple("low", FindingClass.MONITOR, false),
            org.assertj.core.groups.Tuple.tuple("full", FindingClass.OK, false));
    assertThat(level.outcomes().get(0).advice().orElseThrow().action().cautions())
        .extracting("text")
        .containsExactly("Let it cool.");
    assertThat(catalogue.check("look").orElseThrow().words()).containsExactly("milky", "clear");
    assertThat(catalogue.patterns()).extracting("id").containsExactly("both");
    assertThat(catalogue.version()).isEqualTo("1.0");
  }

  private static final String OPENING =
      """
        opening:
          - {for: {engines: [outboard]}, text: "Tilt it up."}
          - {for: {engines: [inboard]}, text: "Shut the seacock."}
          - {text: "Have her ashore."}
      actions:
      """;

  @ParameterizedTest
  @CsvSource({
    "outboard-4-stroke, Tilt it up.",
    "inboard-diesel, Shut the seacock.",
    "sterndrive-diesel, Have her ashore."
  })
  void of_the_variants_of_a_caution_the_first_that_covers_is_told(String engine, String told) {
    var data = OIL.replace("actions:\n", "cautions:\n" + OPENING).replace("[hot-oil]", "[opening]");
    var survey =
        SurveyReader.bind(
            """
            {"format": "seafettle-survey/1",
             "survey": {"id": "T", "purpose": "season-end", "date": "2026-10-17", "place": "Quay",
                        "by": {"name": "A. Surveyor"}},
             "boat": {"name": "Case in Point"},
             "engines": [{"id": "port", "type": "%s"}], "findings": []}
            """
                .formatted(engine),
            CatalogueReader.supplied());
    var action =
        read(data).check("look").orElseThrow().outcomes().get(0).advice().orElseThrow().action();
    assertThat(action.cautions()).hasSize(3);
    assertThat(action.on(survey, survey.engines().get(0)).cautions())
        .extracting(Caution::text)
        .containsExactly(told);
  }

  @Test
  void a_pattern_is_told_at_all_of_its_signs_unless_it_names_some() {
    var look = read(OIL).check("look").orElseThrow();
    var level = read(OIL).check("level").orElseThrow();
    var both = read(OIL).patterns().get(0);
    assertThat(both.explains(look) && both.explains(level)).isTrue();
    assertThat(both.onlySettled()).isFalse();
    var one =
        read(OIL.replace("cause: ", "explains: [look]\n    only-settled: true\n    cause: "))
            .patterns()
            .get(0);
    assertThat(one.explains(look)).isTrue();
    assertThat(one.explains(level)).isFalse();
    assertThat(one.onlySettled()).isTrue();
  }

  @Test
  void the_digest_tells_data_apart_and_does_not_depend_on_the_order_of_files() {
    var common = CatalogueText.of("common.yaml", COMMON);
    var oil = CatalogueText.of("oil.yaml", OIL);
    var once = CatalogueReader.read(List.of(common, oil)).digest();
    assertThat(CatalogueReader.read(List.of(oil, common)).digest()).isEqualTo(once).hasSize(64);
    assertThat(read(OIL.replace("It is low.", "It is rather low.")).digest()).isNotEqualTo(once);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          kind: scale             | kind: scales             | is no kind of criterion
          class: monitor          | class: watch             | is no word for "class"
          class: monitor          | grade: monitor           | There is no field "grade"
          do: top-up, by: before  | do: topup, by: before    | Did you mean "top-up"?
          cautions: [hot-oil]     | cautions: [cold-oil]     | There is no caution called "cold-oil"
          source: {of: common-practice | source: {of: a-book | There is no source called "a-book"
          steps: [low, 0.25, full] | steps: [low, 0.25, over] | There is no outcome "over"
          steps: [low, 0.25, full] | steps: [low, 0.25, low] | can neither be reached nor said
          steps: [low, 0.25, full] | steps: [low, 3, full]   | lies outside what is plausible
          steps: [low, 0.25, full] | steps: [low, 1, full, 0.5, low] | do not rise
          steps: [low, 0.25, full] | steps: [low, full]      | by turns
          stop: do-not-start, |                              | has to say what must not be done
          class: ok, observed: "It | class: ok, stop: do-not-start, observed: "It | It says by when, not what to do
          do: top-up, by: before-next-use, |                 | not what to do
          do: top-up, by: before-next-use, | do: top-up,     | It is not said by when
          id: look                | id: level                | There is another check of this id
          is: low}                | is: lower}               | has no outcome "lower"
          {check: look, is        | {check: looks, is        | There is no check "looks"
          cause: "Something."     | explains: [look, stick]  | "stick" is none of its signs
          four-stroke             | five-stroke              | is no kind of engine
          on: engine              | on: motor                | is no kind of component
          unit: "1"               | unit: "furlong"          | furlong
          plausible: [-1, 2]      | plausible: [2, -1]       | No value is plausible
          expected: [pre-purchase] | expected: [hire]        | is no word for "expected"
          title: "Level"          |                          | "title" is missing
          "It is low."            | "It is low"              | does not end
          hours: [0.1, 0.2]       | hours: [0.2, 0.1]        | Such hours of work do not exist
          kind: scale             | kind: derived            | It is not said what is computed
          title: "Level"          | title: "Level", title: "Again" | oil.yaml
          {engines: [four-stroke]} | {engines: [four-stroke], afloat: maybe} | neither true nor false
          class: ok, observed: "It | for: {engines: [diesel]}, class: ok, observed: "It | does not exist for every engine
          """)
  void a_fault_of_the_data_is_told_in_a_sentence(String right, String wrong, String told) {
    var faulty = OIL.replaceFirst(java.util.regex.Pattern.quote(right), quote(wrong));
    assertThat(faulty).isNotEqualTo(OIL);
    assertThatThrownBy(() -> read(faulty))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("oil.yaml")
        .hasMessageContaining(told);
  }

  @Test
  void all_faults_are_told_at_once_with_file_and_entry() {
    var faulty =
        OIL.replace("by: at-once", "by: tomorrow").replace("id: both", "id: neither\n    x: 1");
    assertThatThrownBy(() -> read(faulty))
        .isInstanceOfSatisfying(
            Refused.class,
            refused ->
                assertThat(refused.problems())
                    .extracting(p -> p.place().toString())
                    .containsExactly("oil.yaml: look, milky", "oil.yaml: neither"));
  }

  @Test
  void an_id_that_stands_in_two_files_is_a_fault() {
    var texts = new ArrayList<>(texts(OIL));
    texts.add(CatalogueText.of("fuel.yaml", "cautions: {hot-oil: \"Once more.\"}"));
    assertThatThrownBy(() -> CatalogueReader.read(texts))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("\"hot-oil\" stands in another file too.");
  }

  @Test
  void the_catalogue_that_comes_with_the_program_is_read_without_a_fault() {
    assertThat(CatalogueReader.supplied().checks()).isNotEmpty();
  }

  private static Catalogue read(String oil) {
    return CatalogueReader.read(texts(oil));
  }

  private static List<CatalogueText> texts(String oil) {
    return List.of(CatalogueText.of("common.yaml", COMMON), CatalogueText.of("oil.yaml", oil));
  }

  private static String quote(String text) {
    return java.util.regex.Matcher.quoteReplacement(text == null ? "" : text);
  }
}

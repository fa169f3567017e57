package org.seafettle.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.seafettle.assessment.ConditionWord;
import org.seafettle.assessment.Followed;
import org.seafettle.catalogue.Deadline;
import org.seafettle.catalogue.FindingClass;
import org.seafettle.catalogue.Reason;
import org.seafettle.catalogue.Source;
import org.seafettle.catalogue.StopOrder;
import org.seafettle.catalogue.Subsystem;
import org.seafettle.catalogue.Who;
import org.seafettle.survey.Chemistry;
import org.seafettle.survey.Component;
import org.seafettle.survey.EngineType;
import org.seafettle.survey.Fuel;
import org.seafettle.survey.Purpose;
import org.seafettle.survey.Water;
import org.seafettle.trend.Series;

/** Holds the words against what asks for them, in both directions. */
class WordsInUseTest {

  private static final Pattern SAID =
      Pattern.compile("\\.say\\(\\s*\"([a-z][a-z0-9.-]*[a-z0-9])\"");
  private static final Pattern COUNTED =
      Pattern.compile("\\.count\\(\\s*\"([a-z][a-z0-9.-]*[a-z])\"");
  private static final Pattern LABEL = Pattern.compile("t\\[\"([a-z0-9-]+)\"]");
  private static final Pattern LABEL_ARGUMENT =
      Pattern.compile("<@(?:section|lead) \"([a-z0-9-]+)\"");

  /** Keys that the sources put together from a family and a member of a closed set. */
  private static final Map<String, List<? extends Enum<?>>> FAMILIES =
      Map.ofEntries(
          Map.entry("subsystem", List.of(Subsystem.values())),
          Map.entry("condition", List.of(ConditionWord.values())),
          Map.entry("class", List.of(FindingClass.values())),
          Map.entry("class-short", List.of(FindingClass.values())),
          Map.entry("class-title", List.of(FindingClass.values())),
          Map.entry("class-means", List.of(FindingClass.values())),
          Map.entry("engine", List.of(EngineType.values())),
          Map.entry("fuel", List.of(Fuel.Kind.values())),
          Map.entry("who", List.of(Who.values())),
          Map.entry("by", List.of(Deadline.values())),
          Map.entry("order", List.of(StopOrder.values())),
          Map.entry("order-sentence", List.of(StopOrder.values())),
          Map.entry("stop", List.of(StopOrder.values())),
          Map.entry("rank", List.of(Source.Rank.values())),
          Map.entry("status", List.of(Followed.Status.values())),
          Map.entry("purpose", List.of(Purpose.values())),
          Map.entry("chemistry", List.of(Chemistry.values())),
          Map.entry("boat.water", List.of(Water.values())),
          Map.entry("reason", List.of(Reason.Kind.values())),
          Map.entry("the", List.of(Component.Kind.values())),
          Map.entry("title", List.of(Component.Kind.values())));

  /** Further keys that are put together, each with the place that does so. */
  private static final Set<String> COMPOSED =
      Set.of(
          // Phrases: a name that says what it is
          "the.named",
          "title.named",
          "unit.year.one",
          "unit.year.other",
          "unit.month.one",
          "unit.month.other",
          "unit.per-day.one",
          "unit.per-day.other",
          // VerdictPart: an order that is given on something else than an engine
          "stop.do-not-start.elsewhere",
          "stop.do-not-crank.elsewhere",
          "stop.do-not-switch-on.elsewhere",
          // Manuscript: what a report is about, and by when who is afloat, or may be, has it done
          "subtitle.pre-purchase.one",
          "subtitle.pre-purchase.other",
          "subtitle.season-end.one",
          "subtitle.season-end.other",
          "subtitle.yearly-record.one",
          "subtitle.yearly-record.other",
          "by-hauling-out",
          "by-hauling-out-or-launching",
          "by-next-ashore",
          "by-next-ashore-or-launching",
          // ReadingWords: on which side of the last limit the milder class lies
          "limit.below",
          "limit.to",
          "limit.above",
          "limit.from",
          // FindingPart: an action that raises an index by itself, or does not
          "who-when-action",
          "who-when-gain",
          // Evidenced: the words of ILAC-G8
          "conformity.pass",
          "conformity.fail",
          "conformity.conditional-pass",
          "conformity.conditional-fail",
          "flip.conditional-pass",
          "flip.conditional-fail",
          // MethodPart: the zones of the scale
          "zone.1",
          "zone.2",
          "zone.3",
          // Phrases: dates
          "format.date",
          "format.date-short",
          "format.months",
          "format.months-short",
          // PlanPart: the sums of a class, and of all
          "cost.total",
          "cost.total-partly.one",
          "cost.total-partly.other",
          "cost.all",
          "cost.all-partly.one",
          "cost.all-partly.other",
          // Pipe: what stands inside the file
          "attached.survey",
          "attached.assessment",
          // ReadingScale: what an interval is counted in
          "interval.months",
          "interval.hours");

  private static Set<String> asked() throws IOException {
    var asked = new TreeSet<>(COMPOSED);
    var sources =
        texts(Path.of("src/main/java/org/seafettle/report"), ".java")
            + texts(Path.of("src/main/java/org/seafettle/yard"), ".java");
    find(SAID, sources).forEach(asked::add);
    find(COUNTED, sources).forEach(k -> asked.addAll(List.of(k + ".one", k + ".other")));
    choices(sources).forEach(asked::add);
    FAMILIES.forEach((family, members) -> members.forEach(m -> asked.add(family + "." + word(m))));
    Arrays.stream(FindingClass.values())
        .filter(c -> c != FindingClass.OK)
        .forEach(
            c -> asked.addAll(List.of("count." + word(c) + ".one", "count." + word(c) + ".other")));
    Pattern.compile("(?:add|rows\\.add)\\(\\s*\"([a-z]+)\"|\\? \"(cause)\" : \"(question)\"")
        .matcher(sources)
        .results()
        .flatMap(r -> Stream.of(1, 2, 3).map(r::group))
        .filter(g -> g != null)
        .forEach(g -> asked.add("row." + g));
    FormulaWords.rules().forEach(rule -> asked.add("rule." + rule));
    FormulaWords.quantities().forEach(quantity -> asked.add("computed." + quantity));
    FormulaWords.facts().forEach(fact -> asked.add("fact." + fact));
    var templates = texts(Path.of("templates"), ".ftlh");
    find(LABEL, templates).forEach(k -> asked.add("page." + k));
    find(LABEL_ARGUMENT, templates).forEach(k -> asked.add("page." + k));
    return asked;
  }

  /** {@code say(well ? "a" : "b")} asks for both. */
  private static Stream<String> choices(String sources) {
    return Pattern.compile("\\? \"([a-z.-]+)\"\\s*: \"([a-z.-]+)\"")
        .matcher(sources)
        .results()
        .flatMap(r -> Stream.of(r.group(1), r.group(2)))
        .filter(k -> k.contains(".") && !k.startsWith(".") || k.equals("gain"));
  }

  private static String word(Enum<?> member) {
    return member.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
  }

  private static Stream<String> find(Pattern pattern, String text) {
    return pattern.matcher(text).results().map(r -> r.group(1));
  }

  private static String texts(Path folder, String ending) throws IOException {
    try (var files = Files.walk(folder)) {
      var text = new StringBuilder();
      for (var file : files.filter(f -> f.toString().endsWith(ending)).sorted().toList()) {
        text.append(Files.readString(file)).append('\n');
      }
      return text.toString();
    }
  }

  @Test
  void every_text_that_is_asked_for_is_there_and_every_text_is_asked_for() throws IOException {
    var there = Templates.supplied().words("en").keys();
    assertThat(asked()).as("asked for").isSubsetOf(there);
    assertThat(there.stream().filter(key -> !key.startsWith("glossary.")))
        .as("there")
        .isSubsetOf(asked());
  }

  @Test
  void an_entry_of_the_glossary_is_a_word_a_colon_and_what_it_means() {
    var words = Templates.supplied().words("en");
    assertThat(words.keys().stream().filter(key -> key.startsWith("glossary.")))
        .isNotEmpty()
        .allSatisfy(key -> assertThat(words.say(key)).matches("[^:]+: [^:]+\\."));
  }

  @Test
  void a_formula_that_the_catalogue_reaches_refuses_in_words_that_a_report_can_tell()
      throws IOException {
    assertThat(FormulaWords.reachable()).isNotEmpty();
    FormulaWords.reachable()
        .forEach(
            (file, source) ->
                assertThat(source)
                    .as(file + " refuses with a sentence: use DoesNotHold.because, with its word")
                    .doesNotContain("Refused.because"));
  }

  @Test
  void a_trend_needs_as_many_seasons_as_its_text_says() {
    assertThat(Series.FEWEST_SEASONS).isEqualTo(5);
    assertThat(Templates.supplied().words("en").say("page.series-lead"))
        .contains("fewer than five seasons");
  }
}

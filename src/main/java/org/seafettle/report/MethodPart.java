package org.seafettle.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.seafettle.assessment.ConditionWord;
import org.seafettle.assessment.Result;
import org.seafettle.assessment.Scoring;
import org.seafettle.catalogue.FindingClass;
import org.seafettle.catalogue.Source;

/**
 * How the grade comes about, and from where the limits are.
 *
 * @param words the seven words, best first, each with its band and zone
 * @param classes the classes of finding, gravest first, each with its deduct
 * @param rule the rule in sentences with its numbers
 * @param versions of the rule and of the catalogue
 * @param sources of the limits that were used, the highest rank first
 */
public record MethodPart(
    List<Band> words, List<Band> classes, String rule, String versions, List<SourceLine> sources) {

  public MethodPart {
    words = List.copyOf(words);
    classes = List.copyOf(classes);
    sources = List.copyOf(sources);
  }

  /**
   * A word or class.
   *
   * @param name the word
   * @param number the band, or the deduct
   * @param means what it says
   */
  public record Band(String name, String number, String means) {}

  /**
   * A source.
   *
   * @param title as it is cited
   * @param rank what kind of authority it is
   * @param used for what
   */
  public record SourceLine(String title, String rank, String used) {}

  static MethodPart of(Manuscript m) {
    var catalogue = m.assessment().catalogue();
    return new MethodPart(
        bands(m),
        classes(m),
        m.words().say("method.coverage", m.phrases().percent(Scoring.LEAST_COVERAGE)),
        m.words()
            .say(
                "method.versions",
                Scoring.VERSION,
                catalogue.version(),
                grouped(catalogue.digest())),
        sources(m));
  }

  /** A hash in groups of eight, so that it can be compared by eye, and breaks over lines. */
  static String grouped(String hex) {
    return hex.replaceAll("(.{8})(?=.)", "$1 ");
  }

  private static List<Band> bands(Manuscript m) {
    var bands = new ArrayList<Band>();
    int to = 100;
    for (var word : ConditionWord.values()) {
      bands.add(
          new Band(
              m.words().of("condition", word),
              m.words().say("method.band", word.from() + "", to + ""),
              m.words().say("zone." + word.zone())));
      to = word.from() - 1;
    }
    return bands;
  }

  private static List<Band> classes(Manuscript m) {
    return Arrays.stream(FindingClass.values())
        .sorted(Comparator.reverseOrder())
        .map(
            c ->
                new Band(
                    m.words().of("class", c),
                    Integer.toString(c.deduct()),
                    m.words().of("class-means", c)))
        .toList();
  }

  private static List<SourceLine> sources(Manuscript m) {
    var used =
        new TreeMap<Source, List<String>>(
            Comparator.comparing(Source::rank)
                .thenComparing(Source::title)
                .thenComparing(Source::id));
    for (var result : m.assessment().results()) {
      result
          .seen()
          .ifPresent(
              s ->
                  used.computeIfAbsent(s.outcome().citation().source(), k -> new ArrayList<>())
                      .add(use(m, result)));
    }
    var fromCatalogue =
        used.entrySet().stream().map(e -> source(m, e.getKey(), used(m, e.getValue())));
    return Stream.concat(makers(m), fromCatalogue).toList();
  }

  private static SourceLine source(Manuscript m, Source source, String used) {
    var rank = Phrases.capital(m.words().of("rank", source.rank()));
    return source.title().isBlank()
        ? new SourceLine(rank, m.words().say("source.no-document"), used)
        : new SourceLine(source.title(), rank, used);
  }

  private static Stream<SourceLine> makers(Manuscript m) {
    return m.survey().engines().stream()
        .flatMap(e -> e.limits().stream())
        .map(
            l ->
                new SourceLine(
                    Phrases.capital(l.source()),
                    Phrases.capital(m.words().of("rank", Source.Rank.MAKER)),
                    m.assessment()
                        .catalogue()
                        .check(l.check())
                        .map(c -> c.guidance().title())
                        .orElse(l.check())))
        .distinct();
  }

  private static String use(Manuscript m, Result result) {
    return result.number().isPresent() ? Integer.toString(result.number().getAsInt()) : "";
  }

  private static String used(Manuscript m, List<String> uses) {
    var findings =
        uses.stream()
            .filter(u -> !u.isEmpty())
            .sorted(Comparator.comparing(Integer::valueOf))
            .toList();
    int clean = uses.size() - findings.size();
    var said = new ArrayList<String>();
    if (!findings.isEmpty()) {
      said.add(m.words().count("source.findings", findings.size(), m.phrases().list(findings)));
    }
    if (clean > 0) {
      said.add(m.words().count("source.clean", clean));
    }
    return m.phrases().series(said);
  }
}

package org.seafettle.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.helper.W3CDom;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.seafettle.pdf.Printed;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** Every sample in a language of which not one word stands in the program. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PseudoLanguageTest {

  private static final Pattern PLAIN = Pattern.compile("[A-Za-z]{2,}");

  /** A hash is broken over lines, where a surveyor's words are no longer told from it. */
  private static final Pattern HASH = Pattern.compile("[a-f]+");

  /** {@code content} of what the file says about itself, {@code name} of bookmarks. */
  private static final List<String> ATTRIBUTES = List.of("alt", "title", "content");

  @TempDir static Path folder;

  private final Map<String, String> reports =
      Map.of(
          "neglected", "2026-10-17-marsh-heron-pre-purchase",
          "half-inspected", "2026-11-07-small-beer-pre-purchase",
          "diesel-inboard", "2026-10-29-patient-griet-season-end",
          "sound-pair/2026", "2026-09-26-tern-s-errand-yearly-record");

  @BeforeAll
  void print_all_samples() throws IOException {
    var templates = folder.resolve("templates");
    PseudoLanguage.write(templates);
    for (var sample : samples()) {
      var run =
          Run.of(
              "report",
              "sample-surveys/" + sample,
              "--out",
              folder.toString(),
              "--html",
              "--templates",
              templates.toString(),
              "--lang",
              PseudoLanguage.NAME,
              "--units",
              sample.startsWith("h") || sample.startsWith("d") ? "metric" : "us",
              "--paper",
              sample.startsWith("n") ? "letter" : "a4");
      assertThat(run.code()).as(run.err()).isZero();
      assertThat(run.err()).doesNotContain("texts of the catalogue are missing");
    }
    var kept = Files.createDirectories(Path.of("target", "pages"));
    for (var report : reports.values()) {
      Files.write(kept.resolve("qps-" + report + ".pdf"), pdf(report));
    }
  }

  List<String> samples() {
    return reports.keySet().stream().sorted().toList();
  }

  private static byte[] pdf(String report) throws IOException {
    return Files.readAllBytes(folder.resolve(report + ".pdf"));
  }

  private static SurveyorsWords surveyor(String sample) throws IOException {
    return SurveyorsWords.of(Path.of("sample-surveys", sample, "survey.json"));
  }

  /** Every text of the page with the attributes that are read aloud or listed. */
  private static List<String> texts(String report) throws Exception {
    var texts = new ArrayList<String>();
    collect(page(report), true, texts);
    return texts;
  }

  /** What has to stand on paper: texts but those of drawings and of head and foot. */
  private static List<String> printed(String report) throws Exception {
    var texts = new ArrayList<String>();
    collect(page(report).getElementsByTagName("body").item(0), false, texts);
    return texts;
  }

  private static Element page(String report) throws Exception {
    var html = Jsoup.parse(Files.readString(folder.resolve(report + ".html")));
    // what the browser is told about itself is no text
    html.select("meta[http-equiv], meta[name=viewport], meta[name=referrer]").remove();
    html.select("meta[name=color-scheme], meta[name=format-detection]").remove();
    return new W3CDom().fromJsoup(html).getDocumentElement();
  }

  private static void collect(Node node, boolean all, List<String> texts) {
    if (node instanceof Element element) {
      var isAside =
          element.getTagName().equals("svg")
              || element.getAttribute("class").matches("(head|foot)-.*");
      if (element.getTagName().equals("style") || (!all && isAside)) {
        return;
      }
      if (all) {
        ATTRIBUTES.forEach(attribute -> texts.add(element.getAttribute(attribute)));
      }
    } else if (node.getNodeType() == Node.TEXT_NODE) {
      texts.add(node.getTextContent());
    }
    for (var child = node.getFirstChild(); child != null; child = child.getNextSibling()) {
      collect(child, all, texts);
    }
  }

  @ParameterizedTest
  @MethodSource("samples")
  void no_sentence_stands_in_the_program_or_in_a_template(String sample) throws Exception {
    var surveyor = surveyor(sample);
    assertThat(texts(reports.get(sample)).stream().map(surveyor::without))
        .filteredOn(left -> PLAIN.matcher(left).find())
        .isEmpty();
  }

  @ParameterizedTest
  @MethodSource("samples")
  void nor_in_what_the_file_says_about_itself(String sample) throws IOException {
    var surveyor = surveyor(sample);
    try (var printed = new Printed(pdf(reports.get(sample)))) {
      var info = printed.document().getDocumentInformation();
      var said = new ArrayList<>(List.of(String.join("", printed.readAloud())));
      said.addAll(List.of(info.getTitle(), info.getSubject(), info.getKeywords()));
      said.addAll(printed.bookmarks());
      printed.attachments().values().forEach(f -> said.add(f.getFileDescription()));
      assertThat(
              said.stream()
                  .map(surveyor::without)
                  .flatMap(left -> PLAIN.matcher(left).results().map(MatchResult::group)))
          .filteredOn(left -> !HASH.matcher(left).matches())
          .isEmpty();
      assertThat(printed.document().getDocumentCatalog().getLanguage())
          .isEqualTo(PseudoLanguage.NAME);
    }
  }

  @ParameterizedTest
  @MethodSource("samples")
  void long_words_stay_within_the_margins_and_off_each_other(String sample) throws IOException {
    try (var printed = new Printed(pdf(reports.get(sample)))) {
      for (int page = 1; page <= printed.pages(); page++) {
        assertThat(printed.outsideMargins(page, 20)).as("page " + page).isEmpty();
        assertThat(printed.overprinted(page)).as("page " + page).isEmpty();
      }
    }
  }

  @ParameterizedTest
  @MethodSource("samples")
  void no_text_of_the_page_is_lost_on_paper(String sample) throws Exception {
    try (var printed = new Printed(pdf(reports.get(sample)))) {
      var paper = bare(String.join("", printed.readAloud()) + printed.text());
      assertThat(printed(reports.get(sample)).stream().map(PseudoLanguageTest::bare))
          .isNotEmpty()
          .filteredOn(text -> !text.isEmpty() && !paper.contains(text))
          .isEmpty();
    }
  }

  private static String bare(String text) {
    return text.replaceAll("[\\s\u00a0]+", "");
  }
}

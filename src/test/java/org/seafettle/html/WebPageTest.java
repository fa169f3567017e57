package org.seafettle.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.Node;
import org.jsoup.nodes.TextNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.seafettle.assessment.Assessment;
import org.seafettle.assessment.Assessor;
import org.seafettle.pdf.Metadata;
import org.seafettle.pdf.PdfPrinter;
import org.seafettle.pdf.Printed;
import org.seafettle.pdf.Typefaces;
import org.seafettle.report.Options;
import org.seafettle.report.Report;
import org.seafettle.report.SedgeWarbler;

class WebPageTest {

  private static final Templates TEMPLATES = Templates.supplied();
  private static final Map<String, String> PAGES = new HashMap<>();

  static List<String> purposes() {
    return SedgeWarbler.purposes();
  }

  private static String xhtml(Assessment assessment) {
    var facts = SedgeWarbler.photoFacts(assessment.survey());
    return new Typesetter(TEMPLATES)
        .set(Report.of(assessment, TEMPLATES.words("en"), facts, Options.USUAL));
  }

  private static String page(Assessment assessment) {
    var pictures = SedgeWarbler.pictures(assessment.survey());
    return new WebPage(TEMPLATES).of(xhtml(assessment), pictures);
  }

  private static Document page(String purpose) {
    return Jsoup.parse(PAGES.computeIfAbsent(purpose, p -> page(SedgeWarbler.assessment(p, 5))));
  }

  private static Document pageWith(UnaryOperator<String> changed) {
    var survey = SedgeWarbler.survey(changed);
    return Jsoup.parse(page(new Assessor(SedgeWarbler.CATALOGUE).assess(survey, List.of())));
  }

  @ParameterizedTest
  @MethodSource("purposes")
  void says_the_same_as_the_paper_in_the_same_order_save_for_page_numbers(String purpose) {
    var assessment = SedgeWarbler.assessment(purpose, 5);
    var metadata =
        new Metadata(
            "t", "a", "s", List.of(), Locale.ENGLISH, OffsetDateTime.parse("2026-10-17T00:00:00Z"));
    var pdf =
        new PdfPrinter(new Typefaces())
            .print(
                xhtml(assessment), SedgeWarbler.pictures(assessment.survey()), List.of(), metadata);
    try (var printed = new Printed(pdf)) {
      var paper =
          unspaced(String.join("", printed.words())).replaceAll("(?<=\\()page\\d+(?=\\))", "");
      var screen = aloud(page(purpose).selectFirst("main"));
      // the printer's structure tells what floats somewhat later than what it floats beside
      for (var floating : page(purpose).select(".side-column")) {
        assertThat(paper).contains(aloud(floating));
        paper = without(paper, aloud(floating));
        screen = without(screen, aloud(floating));
      }
      var difference = difference(screen, paper);
      assertThat(difference).isEmpty();
    }
  }

  private static void readAloud(Node node, List<String> spoken) {
    if (node instanceof TextNode text) {
      spoken.add(text.getWholeText());
    } else if (node instanceof Element element) {
      if (element.normalName().equals("img")) {
        spoken.add(element.attr("alt"));
      } else if (element.normalName().equals("svg")) {
        spoken.add(element.attr("aria-label"));
      } else if (!element.hasClass("page-of")) {
        inPrintersOrder(element).forEach(child -> readAloud(child, spoken));
      }
    }
  }

  private static String aloud(Element element) {
    var spoken = new ArrayList<String>();
    readAloud(element, spoken);
    return unspaced(String.join("", spoken));
  }

  private static String without(String text, String part) {
    int at = text.indexOf(part);
    return text.substring(0, at) + text.substring(at + part.length());
  }

  /** The printer's structure tells the words of a line before a block or a drawing in it. */
  private static List<Node> inPrintersOrder(Element element) {
    var children = new ArrayList<>(element.childNodes());
    if (element.normalName().equals("h3")) {
      children.sort(Comparator.comparing(c -> c instanceof Element e && e.hasClass("class")));
    } else if (element.hasClass("course")) {
      children.sort(Comparator.comparing(c -> c instanceof Element));
    }
    return children;
  }

  /** Where two long texts part, with what stands around it; empty where they do not. */
  private static String difference(String screen, String paper) {
    int at = Arrays.mismatch(screen.toCharArray(), paper.toCharArray());
    return at < 0 ? "" : "screen: " + around(screen, at) + "\npaper:  " + around(paper, at);
  }

  private static String around(String text, int at) {
    return text.substring(Math.max(0, at - 60), Math.min(text.length(), at + 60));
  }

  /** Lines are broken elsewhere on paper, and a blank there is none. */
  private static String unspaced(String text) {
    return text.replaceAll("[\\s\\u00a0\\u202f]+", "");
  }

  @ParameterizedTest
  @MethodSource("purposes")
  void brings_all_that_it_shows_and_fetches_and_runs_nothing(String purpose) {
    var page = page(purpose);
    assertThat(page.select("script, link, iframe, object, embed, base, form")).isEmpty();
    assertThat(page.select("[src]")).isNotEmpty();
    assertThat(page.select("[src]")).allMatch(e -> e.attr("src").startsWith("data:image/"));
    assertThat(page.select("[href]")).allMatch(e -> e.attr("href").startsWith("#"));
    assertThat(page.select("style")).hasSize(1);
    assertThat(page.select("style").first().data())
        .doesNotContain("url(")
        .doesNotContain("@import");
    assertThat(page.select("meta[http-equiv=Content-Security-Policy]").attr("content"))
        .isEqualTo(
            "default-src 'none'; style-src 'unsafe-inline'; img-src data:; base-uri 'none';"
                + " form-action 'none'");
  }

  @ParameterizedTest
  @MethodSource("purposes")
  void is_told_to_browsers_telephones_and_screen_readers(String purpose) {
    var page = page(purpose);
    assertThat(page.selectFirst("html").attr("lang")).isEqualTo("en");
    assertThat(page.documentType().name()).isEqualTo("html");
    assertThat(page.title()).contains("Sedge Warbler");
    assertThat(page.select("meta[name=viewport]").attr("content")).contains("width=device-width");
    assertThat(page.selectFirst("head").child(0).attr("charset")).isEqualTo("utf-8");
    assertThat(page.select("img")).allMatch(e -> !e.attr("alt").isBlank());
    assertThat(page.select("svg")).isNotEmpty();
    assertThat(page.select("svg"))
        .allMatch(e -> e.attr("role").equals("img") && !e.attr("aria-label").isBlank());
    assertThat(page.select("header, nav, main, footer")).hasSize(4);
  }

  @ParameterizedTest
  @MethodSource("purposes")
  void headings_skip_no_level_and_every_link_leads_somewhere(String purpose) {
    var page = page(purpose);
    int level = 0;
    for (var heading : page.select("h1, h2, h3, h4, h5, h6")) {
      int next = heading.normalName().charAt(1) - '0';
      assertThat(next).as(heading.text()).isLessThanOrEqualTo(level + 1);
      level = next;
    }
    assertThat(level).isPositive();
    var ids = page.select("[id]").eachAttr("id");
    assertThat(ids).doesNotHaveDuplicates();
    assertThat(page.select("nav a")).hasSizeGreaterThan(4);
    for (var link : page.select("a")) {
      assertThat(ids).contains(link.attr("href").substring(1));
      assertThat(link.text()).isNotBlank();
    }
  }

  @Test
  void a_page_number_is_a_link_by_the_name_of_what_it_leads_to() {
    assertThat(page("pre-purchase").select("a.page-of").eachText())
        .containsExactly("What was not seen, and what to look at next");
  }

  @Test
  void a_cell_that_stands_alone_on_a_telephone_carries_the_head_of_its_column() {
    var row = page("pre-purchase").selectFirst("table.tasks tbody tr");
    assertThat(row.select("td").eachAttr("data-label"))
        .containsExactly("Action", "Who, by when", "Finding", "Gain", "Cost");
    assertThat(row.selectFirst("th").attr("role")).isEqualTo("rowheader");
  }

  @Test
  void what_stands_on_every_sheet_stands_once_around_the_page() {
    var page = page("season-end");
    assertThat(page.select("header").text()).contains("QH-2026-041").contains("Sedge Warbler");
    assertThat(page.select("footer").text()).isNotBlank().doesNotContain("page");
    assertThat(page.select(".this-page, .all-pages")).isEmpty();
  }

  @Test
  void text_from_the_survey_is_never_markup() {
    var hostile = "</style></title><script>alert(1)</script><img src=x onerror=alert(2)> & 'x";
    var page = pageWith(text -> text.replace("Sedge Warbler", hostile));
    assertThat(page.selectFirst("h1").text()).isEqualTo(hostile);
    assertThat(page.title()).contains(hostile);
    assertThat(page.select("script, [onerror], img[src=x]")).isEmpty();
  }

  @Test
  void a_quotation_mark_ends_no_attribute() {
    var page = pageWith(text -> text.replace("Sedge Warbler", "Sedge\\\" onload=\\\"alert(1)"));
    assertThat(page.select("[onload]")).isEmpty();
    assertThat(page.selectFirst("nav").attr("aria-label")).isEqualTo("Sedge\" onload=\"alert(1)");
  }

  @Test
  void the_same_report_gives_the_same_page() {
    var assessment = SedgeWarbler.assessment("season-end", 0);
    assertThat(page(assessment)).isEqualTo(page(assessment));
  }
}

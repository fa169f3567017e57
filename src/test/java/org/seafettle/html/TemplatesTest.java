package org.seafettle.html;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.seafettle.problem.Refused;
import org.seafettle.report.Options;
import org.seafettle.report.Report;
import org.seafettle.report.SedgeWarbler;

class TemplatesTest {

  private static final Pattern PROGRAM =
      Pattern.compile(
          "\\?\\s*(interpret|no_esc|eval|eval_json|new|api|esc|absolute_template_name)\\b|<#(noautoesc|function|ftl|setting)");

  /** Sums, products and counted-up numbers within an expression; a dash within a text is none. */
  private static final Pattern ARITHMETIC =
      Pattern.compile(
          "\\$\\{[^}\"]*[-+*/%][^}\"]*}|<#assign[^>]*=[^>\"]*\\d\\s*[-+*/%]\\s*\\d|\\?counter");

  @TempDir Path folder;

  private static Report report() {
    var assessment = SedgeWarbler.assessment("season-end", 0);
    return Report.of(
        assessment,
        Templates.supplied().words("en"),
        SedgeWarbler.photoFacts(assessment.survey()),
        Options.USUAL);
  }

  private void write(String name, String text) throws IOException {
    var file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }

  private Refused refusedFolder() {
    return catchThrowableOfType(Refused.class, () -> Templates.with(folder));
  }

  private Refused refusedPage() {
    return catchThrowableOfType(
        Refused.class, () -> new Typesetter(Templates.with(folder)).set(report()));
  }

  @Test
  void no_supplied_template_escapes_its_bounds_or_reckons() {
    for (var name : Templates.NAMES) {
      var text = Templates.supplied().text(name);
      if (name.endsWith(".ftlh")) {
        assertThat(PROGRAM.matcher(text).find()).as(name).isFalse();
        assertThat(ARITHMETIC.matcher(text).find()).as(name).isFalse();
      }
    }
  }

  @Test
  void every_file_of_the_folder_is_supplied() throws IOException {
    try (var files = Files.walk(Path.of("templates"))) {
      assertThat(
              files
                  .filter(Files::isRegularFile)
                  .map(f -> Path.of("templates").relativize(f).toString().replace('\\', '/')))
          .containsExactlyInAnyOrderElementsOf(Templates.NAMES);
    }
  }

  @Test
  void a_file_of_the_users_own_replaces_the_supplied_one_alone() throws IOException {
    write(
        "parts/page-one.ftlh",
        "<#macro pageOne unseenAt=\"\"><h1>Ours: ${first.boat}</h1></#macro>");
    var page = new Typesetter(Templates.with(folder)).set(report());
    assertThat(page).contains("<h1>Ours: Sedge Warbler</h1>").contains("What we did");
  }

  @Test
  void a_file_of_a_name_that_nothing_uses_is_refused_with_the_nearest() throws IOException {
    write("parts/page-on.ftlh", "");
    write("styles.css", "");
    assertThat(refusedFolder().problems())
        .extracting(p -> p.fault() + " " + p.remedy())
        .containsExactly(
            "No template is called parts/page-on.ftlh. Did you mean \"parts/page-one.ftlh\"?",
            "No template is called styles.css. Did you mean \"style.css\"?");
  }

  @Test
  void a_folder_that_is_not_there_is_refused() {
    var refused =
        catchThrowableOfType(Refused.class, () -> Templates.with(folder.resolve("nowhere")));
    assertThat(refused.problems()).hasSize(1);
  }

  @Test
  void a_part_that_cannot_be_read_is_refused_with_its_own_name_and_line() throws IOException {
    write("parts/years.ftlh", "<#macro laidUp>\n<#if >\n</#macro>");
    var place = refusedPage().problems().get(0).place();
    assertThat(place.file()).endsWith("years.ftlh");
    assertThat(place.line()).hasValue(2);
  }

  @Test
  void a_template_that_asks_for_what_no_report_has_is_refused_with_its_line() throws IOException {
    write("season-end.ftlh", "<p>\n${first.colour}</p>");
    var problem = refusedPage().problems().get(0);
    assertThat(problem.place().line()).hasValue(2);
    assertThat(problem.fault()).contains("first.colour");
  }

  @Test
  void a_template_reaches_neither_classes_nor_files() throws IOException {
    write("season-end.ftlh", "${'freemarker.template.utility.Execute'?new()('id')}");
    assertThat(refusedPage().problems()).hasSize(1);
    write("season-end.ftlh", "${first?api.class}");
    assertThat(refusedPage().problems()).hasSize(1);
    write("season-end.ftlh", "${first.class}");
    assertThat(refusedPage().problems()).hasSize(1);
    write("season-end.ftlh", "<#include '/etc/passwd'>");
    assertThat(refusedPage().problems()).hasSize(1);
  }

  @Test
  void text_from_the_survey_is_never_markup() {
    var survey = SedgeWarbler.survey(text -> text.replace("Sedge Warbler", "<b>&amp; ${1+1}"));
    var assessment =
        new org.seafettle.assessment.Assessor(SedgeWarbler.CATALOGUE)
            .assess(survey, java.util.List.of());
    var words = Templates.supplied().words("en");
    var report = Report.of(assessment, words, SedgeWarbler.photoFacts(survey), Options.USUAL);
    assertThat(new Typesetter(Templates.supplied()).set(report))
        .contains("&lt;b&gt;&amp;amp; ${1+1}")
        .doesNotContain("<b>&amp;amp;");
  }

  @Test
  void words_of_another_language_have_to_be_complete() throws IOException {
    write(
        "words-de.properties", "page.findings=Befunde\npage.finding=Befund\npage.findngs=Befunde");
    var refused = catchThrowableOfType(Refused.class, () -> Templates.with(folder).words("de"));
    assertThat(refused.problems())
        .anyMatch(p -> p.place().field().equals("page.unseen"))
        .anyMatch(p -> p.remedy().equals("Did you mean \"page.findings\"?"));
  }

  @Test
  void a_language_without_words_is_refused() {
    var refused = catchThrowableOfType(Refused.class, () -> Templates.supplied().words("fr"));
    assertThat(refused.problems().get(0).remedy()).contains("words-fr.properties");
  }
}

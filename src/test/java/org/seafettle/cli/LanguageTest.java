package org.seafettle.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.seafettle.pdf.Printed;

/** Language, paper and units as they are asked for on the command line. */
class LanguageTest {

  private static final String REPORT = "2026-11-07-small-beer-pre-purchase";

  @TempDir private Path folder;

  private Run report(String... more) {
    var arguments = new java.util.ArrayList<String>();
    arguments.addAll(
        java.util.List.of(
            "report",
            "sample-surveys/half-inspected",
            "--html",
            "--out",
            folder.resolve("out").toString(),
            "--templates",
            folder.toString()));
    arguments.addAll(java.util.List.of(more));
    return Run.of(arguments.toArray(String[]::new));
  }

  private String page() throws IOException {
    return Files.readString(folder.resolve("out").resolve(REPORT + ".html"));
  }

  @ParameterizedTest
  @CsvSource({
    "--lang, xx, 'there are en.', words-xx.properties",
    "--paper, a5, 'a4, letter', a5",
    "--units, imperial, 'as-recorded, metric, us', imperial"
  })
  void a_value_that_there_is_not_is_met_with_those_that_there_are(
      String option, String value, String there, String told) {
    var run = report(option, value);
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains(option).contains(there).contains(told).contains("--help");
    assertThat(folder.resolve("out")).doesNotExist();
  }

  @Test
  void capital_letters_make_no_difference_to_a_paper() throws IOException {
    assertThat(report("--paper", "Letter", "--units", "US").code()).isZero();
    var pdf = Files.readAllBytes(folder.resolve("out").resolve(REPORT + ".pdf"));
    try (var printed = new Printed(pdf)) {
      assertThat(printed.document().getPage(0).getMediaBox().getWidth()).isEqualTo(612);
    }
  }

  @Test
  void a_yard_replaces_single_words_and_keeps_the_others() throws IOException {
    Files.writeString(folder.resolve("words-en.properties"), "page.statement=Our word\n");
    assertThat(report().code()).isZero();
    assertThat(page()).contains(">Our word<").contains("What to do");
  }

  @Test
  void a_word_that_no_report_asks_for_is_refused_with_the_nearest() throws IOException {
    Files.writeString(folder.resolve("words-en.properties"), "page.statment=Our word\n");
    var run = report();
    assertThat(run.code()).isEqualTo(3);
    assertThat(run.err()).contains("Did you mean \"page.statement\"?");
  }

  @Test
  void a_new_language_needs_every_word() throws IOException {
    Files.writeString(folder.resolve("words-xx.properties"), "page.statement=Word\n");
    var run = report("--lang", "xx");
    assertThat(run.code()).isEqualTo(3);
    assertThat(run.err()).contains("page.actions").contains("in English it is: What to do");
  }

  @Test
  void months_that_are_not_twelve_are_refused() throws IOException {
    Files.writeString(folder.resolve("words-en.properties"), "format.months=January, February\n");
    var run = report();
    assertThat(run.code()).isEqualTo(3);
    assertThat(run.err()).contains("format.months").contains("twelve");
  }

  @Test
  void what_the_catalogue_lacks_in_a_language_is_printed_in_English_and_said_so()
      throws IOException {
    Files.copy(Path.of("templates/words-en.properties"), folder.resolve("words-xx.properties"));
    Files.writeString(
        folder.resolve("catalogue-xx.properties"), "check.bilge-vapour.title=Dampf in der Bilge\n");
    var run = report("--lang", "xx");
    assertThat(run.code()).isZero();
    assertThat(run.err())
        .contains("catalogue-xx.properties")
        .contains("texts of the catalogue are missing")
        .contains("seafettle catalogue --format properties --lang xx");
    assertThat(page()).contains("lang=\"xx\"").contains("Dampf in der Bilge");
    assertThat(page()).contains("Engine oil level");
  }

  @Test
  void a_translator_gets_every_text_or_only_those_that_are_missing() throws IOException {
    Files.writeString(
        folder.resolve("catalogue-xx.properties"), "check.oil-level.title=Motorenöl\n");
    var all = Run.of("catalogue", "--format", "properties");
    assertThat(all.out()).contains("check.oil-level.title=Engine oil level\n");
    var missing =
        Run.of(
            "catalogue",
            "--format",
            "properties",
            "--lang",
            "xx",
            "--templates",
            folder.toString());
    assertThat(missing.out())
        .doesNotContain("check.oil-level.title")
        .contains("check.oil-level.why=");
    assertThat(missing.out().lines().count()).isEqualTo(all.out().lines().count() - 1);
  }

  @Test
  void a_text_that_the_catalogue_has_not_is_refused_with_the_nearest() throws IOException {
    Files.writeString(folder.resolve("catalogue-en.properties"), "check.oil-levle.title=x\n");
    var run = report();
    assertThat(run.code()).isEqualTo(3);
    assertThat(run.err()).contains("Did you mean \"check.oil-level.title\"?");
  }
}

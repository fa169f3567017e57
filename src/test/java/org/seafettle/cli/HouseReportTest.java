package org.seafettle.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.seafettle.pdf.Printed;
import org.seafettle.pdf.Validation;

/** A report with the face of a house. */
class HouseReportTest {

  private static final String SURVEY = "sample-surveys/diesel-inboard";
  private static final String NAME = "2026-10-29-patient-griet-season-end";
  private static final String CLOSING = "Parts that we take out lie in a box";

  @TempDir private Path folder;

  private byte[] report(String... options) throws IOException {
    var all = new java.util.ArrayList<>(java.util.List.of("report", SURVEY, "--html", "--out"));
    all.add(folder.toString());
    all.addAll(java.util.List.of(options));
    var run = Run.of(all.toArray(String[]::new));
    assertThat(run.code()).as(run.err()).isZero();
    return Files.readAllBytes(folder.resolve(NAME + ".pdf"));
  }

  private static String plain(String text) {
    return text.replaceAll("[\\s\\u00a0]+", " ");
  }

  @Test
  void shows_the_house_first_and_lets_it_speak_before_the_signature() throws IOException {
    var pdf =
        report("--house", "sample-surveys/house", "--templates", "sample-surveys/house/templates");
    assertThat(Validation.faults(pdf)).isEmpty();
    try (var printed = new Printed(pdf)) {
      var text = plain(String.join(" ", printed.readAloud()));
      assertThat(text).startsWith("Fjellhamn Boatyard").contains("555 0117");
      assertThat(text).contains(CLOSING);
      assertThat(printed.alternativeTexts().get(0)).isEqualTo("Fjellhamn Boatyard");
      assertThat(printed.attachments()).containsOnlyKeys("survey.json", "assessment.json");
      assertThat(printed.bookmarks().get(1)).isEqualTo("1 Whom to ask");
    }
    var page = Jsoup.parse(Files.readString(folder.resolve(NAME + ".html")));
    assertThat(page.selectFirst(".house svg").attr("aria-label")).isEqualTo("Fjellhamn Boatyard");
    assertThat(page.select(".house-closing").text()).contains(CLOSING);
    assertThat(page.select("style").first().data()).contains("--accent: #1F5F7A");
  }

  @Test
  void speaks_before_the_signature_where_a_statement_is_signed() throws IOException {
    var run =
        Run.of(
            "report",
            "sample-surveys/neglected",
            "--house",
            "sample-surveys/house",
            "--out",
            folder.toString());
    assertThat(run.code()).as(run.err()).isZero();
    var pdf = Files.readAllBytes(folder.resolve("2026-10-17-marsh-heron-pre-purchase.pdf"));
    assertThat(Validation.faults(pdf)).isEmpty();
    try (var printed = new Printed(pdf)) {
      var text = plain(String.join(" ", printed.readAloud()));
      assertThat(text.indexOf(CLOSING)).isPositive().isLessThan(text.indexOf("signature:"));
    }
  }

  @Test
  void a_logo_of_pixels_is_printed_with_the_name_of_the_house() throws IOException {
    var image = new BufferedImage(320, 80, BufferedImage.TYPE_INT_ARGB);
    var pen = image.createGraphics();
    pen.setColor(new Color(0x1F5F7A));
    pen.fillOval(10, 10, 60, 60);
    pen.dispose();
    ImageIO.write(image, "png", folder.resolve("logo.png").toFile());
    var house =
        Files.writeString(
            folder.resolve("house.json"),
            """
            {"format": "seafettle-house/1", "name": "<b>& \\"Hall\\"", "logo": "logo.png"}""");
    var pdf = report("--house", house.toString());
    assertThat(Validation.faults(pdf)).isEmpty();
    try (var printed = new Printed(pdf)) {
      assertThat(printed.alternativeTexts().get(0)).isEqualTo("<b>& \"Hall\"");
    }
    var page = Jsoup.parse(Files.readString(folder.resolve(NAME + ".html")));
    assertThat(page.selectFirst(".house img").attr("src")).startsWith("data:image/png;base64,");
    assertThat(page.selectFirst(".house-name").text()).isEqualTo("<b>& \"Hall\"");
  }

  @Test
  void a_faulty_house_stops_the_report_before_anything_is_written() throws IOException {
    var house = Files.writeString(folder.resolve("house.json"), "{\"name\": \"\"}");
    var run = Run.of("report", SURVEY, "--house", house.toString(), "--out", folder + "/none");
    assertThat(run.code()).isEqualTo(3);
    assertThat(run.err()).contains("\"format\" is missing").contains("2 faults.");
    assertThat(folder.resolve("none")).doesNotExist();
  }
}

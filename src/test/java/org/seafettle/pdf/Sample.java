package org.seafettle.pdf;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import javax.imageio.ImageIO;

/** An invented document that uses everything a report uses. */
final class Sample {

  static final Metadata METADATA =
      new Metadata(
          "Condition of the engines of Heron & Hare",
          "I. N. Vented",
          "Invented for a test <only>",
          List.of("engines", "condition"),
          Locale.forLanguageTag("en-GB"),
          OffsetDateTime.parse("2026-10-17T10:42:11.5+02:00"));

  static final Attachment SURVEY =
      new Attachment(
          "survey.json",
          "application/json",
          "What was recorded",
          Relationship.SOURCE,
          "{\"boat\": \"Heron & Hare\"}".getBytes(StandardCharsets.UTF_8));

  static final Attachment ASSESSMENT =
      new Attachment(
          "assessment.json",
          "application/json",
          "What was judged",
          Relationship.DATA,
          "{\"verdict\": \"fit\"}".getBytes(StandardCharsets.UTF_8));

  private Sample() {}

  static byte[] print(PdfPrinter printer) {
    return printer.print(xhtml(), pictures(), List.of(SURVEY, ASSESSMENT), METADATA);
  }

  static String xhtml() {
    try (var in = Sample.class.getResourceAsStream("sample.xhtml")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static Map<String, byte[]> pictures() {
    var pictures = new TreeMap<String, byte[]>();
    pictures.put("p1", jpeg(Color.GRAY));
    pictures.put("p2", jpeg(Color.ORANGE));
    return pictures;
  }

  static byte[] jpeg(Color colour) {
    var image = new BufferedImage(160, 120, BufferedImage.TYPE_INT_RGB);
    var pen = image.createGraphics();
    pen.setColor(colour);
    pen.fillRect(20, 20, 100, 60);
    pen.dispose();
    var out = new ByteArrayOutputStream();
    try {
      ImageIO.write(image, "jpeg", out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  /** A document with this in its body, set in a family that exists. */
  static String page(String body) {
    return page("", body);
  }

  static String page(String css, String body) {
    return "<html><head><style>* { font-family: Roboto, 'DejaVu Sans' } "
        + css
        + "</style></head><body><h1>Report</h1>"
        + body
        + "</body></html>";
  }
}

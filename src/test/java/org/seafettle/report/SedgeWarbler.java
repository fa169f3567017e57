package org.seafettle.report;

import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.seafettle.assessment.Assessment;
import org.seafettle.assessment.Assessor;
import org.seafettle.catalogue.Catalogue;
import org.seafettle.json.CatalogueReader;
import org.seafettle.json.SurveyReader;
import org.seafettle.photo.Original;
import org.seafettle.photo.Print;
import org.seafettle.photo.PrintOrder;
import org.seafettle.problem.Place;
import org.seafettle.survey.Survey;

/** An invented boat with two engines, surveyed by an invented surveyor, in pictures we draw. */
public final class SedgeWarbler {

  public static final Catalogue CATALOGUE = CatalogueReader.supplied();

  private SedgeWarbler() {}

  /** Her survey's text, changed as a test needs it. */
  public static Survey survey(UnaryOperator<String> changed) {
    return SurveyReader.bind(changed.apply(text()), CATALOGUE);
  }

  private static final Pattern METER = Pattern.compile("\"hours\": \"([4-6]\\d\\d(?:\\.\\d)?) h\"");

  /** Judged for a purpose, beside as many earlier years. */
  public static Assessment assessment(String purpose, int earlierYears) {
    UnaryOperator<String> forPurpose = text -> text.replace("pre-purchase", purpose);
    var earlier = new ArrayList<Survey>();
    for (int ago = 1; ago <= earlierYears; ago++) {
      earlier.add(survey(forPurpose.andThen(yearsAgo(ago))::apply));
    }
    return new Assessor(CATALOGUE).assess(survey(forPurpose), earlier);
  }

  /** The same boat some years ago: good oil, a younger battery, fewer hours. */
  private static UnaryOperator<String> yearsAgo(int years) {
    return text ->
        younger(text, years)
            .replace("2026-10-17", (2026 - years) + "-10-1" + years)
            .replace("QH-2026-041", "QH-" + (2026 - years) + "-03" + years)
            .replace("\"milky\"", "\"golden\"")
            .replace("\"position\": 1.6", "\"position\": 0.8")
            .replace("2025-09-20", (2025 - years) + "-09-20")
            .replace("2026-06-11", (2026 - years) + "-06-11")
            .replace("2024-10-02", (2024 - years) + "-10-02")
            .replace("2025-04-12", (2025 - years) + "-04-12")
            .replace("2023-04-12", (2023 - years) + "-04-12")
            .replaceAll("11\\.92", "12." + (20 + 10 * years));
  }

  /** Sixty hours a year less on every meter; a maker's interval stays. */
  private static String younger(String text, int years) {
    return METER
        .matcher(text)
        .replaceAll(m -> "\"hours\": \"" + (Double.parseDouble(m.group(1)) - 60 * years) + " h\"");
  }

  private static String text() {
    try (var in = SedgeWarbler.class.getResourceAsStream("sedge-warbler.json")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public static Map<String, PhotoFacts> photoFacts(Survey survey) {
    var facts = new TreeMap<String, PhotoFacts>();
    survey.photos().forEach(p -> facts.put(p.id(), PhotoFacts.of(original(p.id()), survey)));
    return facts;
  }

  /** The pictures as they go into the document, by the names that pages ask for. */
  public static Map<String, byte[]> pictures(Survey survey) {
    var pictures = new TreeMap<String, byte[]>();
    for (var photo : survey.photos()) {
      var order = new PrintOrder(800, Photographs.marks(photo), false);
      pictures.put(Photographs.name(survey, photo), Print.of(original(photo.id()), order).bytes());
    }
    return pictures;
  }

  private static Original original(String id) {
    boolean tall = id.equals("p6");
    return Original.read(drawn(id, tall ? 480 : 640, tall ? 640 : 480), Place.NOWHERE, id);
  }

  private static byte[] drawn(String id, int width, int height) {
    var image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    var pen = image.createGraphics();
    pen.setPaint(new GradientPaint(0, 0, new Color(0xD8D2C4), width, height, new Color(0x8C9299)));
    pen.fillRect(0, 0, width, height);
    pen.setColor(new Color(0x5B4A32 + 0x112233 * (id.charAt(1) - '0')));
    pen.fillRoundRect(width / 6, height / 3, width / 2, height / 6, 40, 40);
    pen.dispose();
    var out = new ByteArrayOutputStream();
    try {
      ImageIO.write(image, "jpeg", out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  public static List<String> purposes() {
    return List.of("pre-purchase", "season-end", "yearly-record");
  }
}

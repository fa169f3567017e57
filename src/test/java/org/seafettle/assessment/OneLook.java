package org.seafettle.assessment;

import java.util.List;
import java.util.Locale;
import org.seafettle.catalogue.Catalogue;
import org.seafettle.catalogue.Check;
import org.seafettle.catalogue.FindingClass;
import org.seafettle.catalogue.Outcome;
import org.seafettle.catalogue.Reason;
import org.seafettle.json.CatalogueReader;
import org.seafettle.json.SurveyReader;
import org.seafettle.survey.Survey;

/** A small survey with a finding or two, by the real catalogue. */
final class OneLook {

  static final Catalogue CATALOGUE = CatalogueReader.supplied();

  private static final String SURVEY =
      """
      {
        "format": "seafettle-survey/1",
        "survey": {
          "id": "T-2", "purpose": "pre-purchase", "date": "2026-10-17", "place": "yard",
          "by": { "name": "Ida Holm" }, "lowest-expected": "-15 Cel"
        },
        "boat": { "name": "Sedge", "length": "7 m", "water": "salt", "features": { "closed-engine-space": true, "built-in-tank": true } },
        "engines": [ { "id": "port", "type": "%s", "cooling": "%s", "hours": "600 h"%s } ],
        "batteries": [
          { "id": "start", "serves": ["port"], "cranking": "500 A"%s }
        ],
        "pumps": [ { "id": "bilge-aft", "rated": "30 L/min", "draws": "2.0 A", "fed-by": "start" } ],
        "findings": [%s]
      }
      """;

  private final String engine;
  private final String limits;
  private final String battery;

  private OneLook(String engine, String limits, String battery) {
    this.engine = engine;
    this.limits = limits;
    this.battery = battery;
  }

  /** Aboard a boat with one engine of this kind and a flooded 12 V battery. */
  static OneLook aboard(String engine) {
    return new OneLook(engine, "", "").battery("\"chemistry\": \"flooded\"");
  }

  /** The same with a battery whose fields are these, over those of a 12 V one. */
  OneLook battery(String fields) {
    var volts = fields.contains("nominal") ? "" : ", \"nominal\": \"12 V\"";
    return new OneLook(engine, limits, volts + ", " + fields);
  }

  /** The same with a limit of the engine maker. */
  OneLook makersLimit(String check, String limit) {
    var text =
        ", \"limits\": [{ \"check\": \"%s\", %s, \"source\": \"engine manual, p. 9\" }]"
            .formatted(check, limit);
    return new OneLook(engine, text, battery);
  }

  Survey survey(String... findings) {
    var cooling = engine.startsWith("outboard") ? "raw-water" : "closed-circuit";
    return SurveyReader.bind(
        String.format(
            Locale.ROOT, SURVEY, engine, cooling, limits, battery, String.join(",", findings)),
        CATALOGUE);
  }

  Assessment assess(String... findings) {
    return new Assessor(CATALOGUE).assess(survey(findings), List.of());
  }

  /** What the check says of readings such as {@code "voltage": "12.4 V"}. */
  Result read(String check, String readings) {
    return result(check, "\"readings\": {" + readings + "}");
  }

  Result say(String check, String word) {
    return result(check, "\"is\": \"" + word + "\"");
  }

  Result result(String check, String finding) {
    return assess("{\"check\": \"%s\", %s}".formatted(check, finding)).results().stream()
        .filter(r -> r.check().id().equals(check) && r.finding().isPresent())
        .findFirst()
        .orElseThrow();
  }

  static Outcome outcome(Result result) {
    return result.seen().orElseThrow().outcome();
  }

  static FindingClass findingClass(Result result) {
    return outcome(result).findingClass();
  }

  /** Why it could not be judged. */
  static Reason unseen(Result result) {
    return ((Sighting.Unseen) result.sighting()).reason();
  }

  static double number(Result result) {
    return result.seen().orElseThrow().measured().orElseThrow().measure().value();
  }

  /** Everything that tells how a check is done and why. */
  static String guidance(String check) {
    var guidance = check(check).guidance();
    return String.join(" ", guidance.how()) + " " + guidance.why();
  }

  static Check check(String id) {
    return CATALOGUE.check(id).orElseThrow();
  }

  /** What stands behind one of a check's outcomes. */
  static Outcome outcome(String check, String name) {
    return check(check).outcomes().stream()
        .filter(o -> o.name().equals(name))
        .findFirst()
        .orElseThrow();
  }
}

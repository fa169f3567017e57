package org.seafettle.catalogue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.seafettle.assessment.Assessor;
import org.seafettle.assessment.Sighting;
import org.seafettle.json.SurveyReader;
import org.seafettle.problem.Refused;
import org.seafettle.survey.Component;
import org.seafettle.survey.Survey;

/**
 * One case of a check: a survey with a single finding, and what it has to give.
 *
 * <p>The survey is {@code base-survey.json}, its engine and battery changed to the first kind that
 * the check is for, with the case's own {@code survey} laid over it; lists are laid over each other
 * item by item.
 */
record CatalogueCase(Check check, JsonNode fields) {

  private static final Set<String> FIELDS =
      Set.of("says", "survey", "on", "finding", "gives", "class", "close", "unseen", "refused");
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final ObjectMapper YAML = new ObjectMapper(new YAMLFactory());

  /** The cases of a check; none where it has no file. */
  static List<CatalogueCase> of(Check check) {
    try (var in = CatalogueCase.class.getResourceAsStream("cases/" + check.id() + ".yaml")) {
      var cases = new ArrayList<CatalogueCase>();
      if (in != null) {
        YAML.readTree(in).forEach(fields -> cases.add(new CatalogueCase(check, fields)));
      }
      return cases;
    } catch (IOException e) {
      throw new UncheckedIOException(check.id() + ".yaml", e);
    }
  }

  CatalogueCase {
    fields
        .fieldNames()
        .forEachRemaining(
            name -> {
              if (!FIELDS.contains(name)) {
                throw new IllegalArgumentException("a case of " + check.id() + " has " + name);
              }
            });
  }

  String says() {
    return fields.path("says").asText();
  }

  /** What a case has to give; empty where it does not ask. */
  Optional<String> expects(String field) {
    return Optional.ofNullable(fields.get(field)).map(JsonNode::asText);
  }

  /** What the survey and its one finding give. */
  Result run(Catalogue whole) {
    // the check alone: what the others find is none of its business, and takes time
    var catalogue =
        new Catalogue(whole.version(), whole.digest(), List.of(check), List.of(), whole.sources());
    Survey survey;
    try {
      survey = SurveyReader.bind(JSON.writeValueAsString(document()), catalogue);
    } catch (Refused refused) {
      return new Result.Refusal(refused.getMessage());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return new Assessor(catalogue)
        .assess(survey, List.of()).results().stream()
            .filter(r -> r.check().equals(check) && r.component().id().equals(on()))
            .findFirst()
            .<Result>map(r -> new Result.Look(survey, r.component(), r.sighting()))
            .orElseThrow(() -> new IllegalStateException("no result on " + on()));
  }

  /** What became of a case. */
  sealed interface Result {

    /** The survey was refused. */
    record Refusal(String message) implements Result {}

    /** The survey was assessed. */
    record Look(Survey survey, Component component, Sighting sighting) implements Result {}
  }

  /** The component of a kind in {@code base-survey.json}. */
  static String usual(Component.Kind kind) {
    return switch (kind) {
      case ENGINE -> "port";
      case BATTERY -> "start";
      case PUMP -> "bilge-aft";
      case BOAT -> "boat";
    };
  }

  /** {@code base-survey.json} with a case's own {@code survey} laid over it. */
  static ObjectNode survey(JsonNode given) throws IOException {
    var survey = base();
    if (given.has("survey")) {
      lay(survey, (ObjectNode) given.get("survey"));
    }
    return survey;
  }

  static ObjectNode base() throws IOException {
    try (var in = CatalogueCase.class.getResourceAsStream("base-survey.json")) {
      return (ObjectNode) JSON.readTree(in);
    }
  }

  String on() {
    return expects("on").orElseGet(() -> usual(check.on()));
  }

  private ObjectNode document() throws IOException {
    var survey = base();
    fit((ObjectNode) survey.at("/engines/0"), (ObjectNode) survey.at("/batteries/0"));
    lay(survey, facts());
    survey.withArray("findings").add(finding());
    return survey;
  }

  /** What it says of the boat beyond {@code base-survey.json}. */
  ObjectNode facts() {
    return fields.has("survey") ? fields.get("survey").deepCopy() : JSON.createObjectNode();
  }

  /** What was found, as a survey says it. */
  ObjectNode finding() {
    var finding = JSON.createObjectNode().put("check", check.id()).put("on", on());
    finding.setAll((ObjectNode) fields.path("finding").deepCopy());
    return finding;
  }

  private void fit(ObjectNode engine, ObjectNode battery) {
    var scope = check.scope();
    scope.engines().stream()
        .min(Comparator.naturalOrder())
        .ifPresent(type -> engine.put("type", type.word()));
    scope.circuits().stream()
        .min(Comparator.naturalOrder())
        .ifPresent(circuit -> engine.put("cooling", circuit.word()));
    scope.chemistries().stream()
        .min(Comparator.naturalOrder())
        .ifPresent(chemistry -> battery.put("chemistry", chemistry.word()));
  }

  static void lay(ObjectNode below, ObjectNode above) {
    above
        .fieldNames()
        .forEachRemaining(name -> below.set(name, laid(below.path(name), above.get(name))));
  }

  private static JsonNode laid(JsonNode below, JsonNode above) {
    if (below instanceof ObjectNode fields && above instanceof ObjectNode more) {
      lay(fields, more);
      return fields;
    }
    if (below instanceof ArrayNode items && above instanceof ArrayNode more) {
      for (int i = 0; i < more.size(); i++) {
        if (i < items.size()) {
          items.set(i, laid(items.get(i), more.get(i)));
        } else {
          items.add(more.get(i));
        }
      }
      return items;
    }
    return above;
  }
}

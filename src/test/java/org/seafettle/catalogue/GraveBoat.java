package org.seafettle.catalogue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.seafettle.assessment.Assessment;
import org.seafettle.assessment.Assessor;
import org.seafettle.assessment.Result;
import org.seafettle.assessment.Sighting;
import org.seafettle.json.SurveyReader;
import org.seafettle.problem.Refused;
import org.seafettle.survey.Chemistry;
import org.seafettle.survey.EngineType;
import org.seafettle.survey.Word;

/** A boat on which everything that is looked at is as bad as the cases of its checks make it. */
final class GraveBoat {

  private static final ObjectMapper JSON = new ObjectMapper();

  private final Catalogue catalogue;
  private final List<CatalogueCase> cases = new ArrayList<>();
  private ObjectNode facts;

  private GraveBoat(Catalogue catalogue, ObjectNode facts) {
    this.catalogue = catalogue;
    this.facts = facts;
  }

  /** Boats that share all checks out among them: one for each kind of engine, and a few more. */
  static List<GraveBoat> fleet(Catalogue catalogue) {
    var fleet = new ArrayList<GraveBoat>();
    var chemistries = Word.all(Chemistry.class);
    for (var engine : Word.all(EngineType.class)) {
      var facts = JSON.createObjectNode();
      facts.putArray("engines").addObject().put("type", engine);
      var chemistry = chemistries.get(fleet.size() % chemistries.size());
      facts.putArray("batteries").addObject().put("chemistry", chemistry);
      fleet.add(new GraveBoat(catalogue, facts));
    }
    for (var check : catalogue.checks()) {
      var gravest = gravest(catalogue, check);
      fleet.sort(Comparator.comparing(boat -> boat.cases.size()));
      if (fleet.stream().noneMatch(boat -> boat.takes(gravest))) {
        var own = new GraveBoat(catalogue, JSON.createObjectNode());
        if (!own.takes(gravest)) {
          throw new IllegalStateException("no boat for " + gravest);
        }
        fleet.add(own);
      }
    }
    return fleet;
  }

  private static CatalogueCase gravest(Catalogue catalogue, Check check) {
    var bad = new ArrayList<CatalogueCase>();
    var classes = new ArrayList<FindingClass>();
    for (var given : CatalogueCase.of(check)) {
      if (given.run(catalogue) instanceof CatalogueCase.Result.Look look
          && look.sighting() instanceof Sighting.Seen seen) {
        bad.add(given);
        classes.add(seen.outcome().findingClass());
      }
    }
    return IntStream.range(0, bad.size())
        .boxed()
        .max(Comparator.comparing(classes::get))
        .map(bad::get)
        .orElseThrow();
  }

  /** Adds a case where neither the boat's facts nor any of its findings suffer from it. */
  private boolean takes(CatalogueCase given) {
    var more = facts.deepCopy();
    if (!agree(more, given.facts())) {
      return false;
    }
    CatalogueCase.lay(more, given.facts());
    var all = Stream.concat(cases.stream(), Stream.of(given)).toList();
    if (!judged(document(more, all)).map(a -> tells(a.findings(), all)).orElse(false)) {
      return false;
    }
    facts = more;
    cases.add(given);
    return true;
  }

  private static boolean agree(JsonNode one, JsonNode other) {
    if (one.isMissingNode() || other.isMissingNode()) {
      return true;
    }
    if (one.isArray() && other.isArray()) {
      return IntStream.range(0, other.size()).allMatch(i -> agree(one.path(i), other.get(i)));
    }
    if (one.isObject() && other.isObject()) {
      return other.properties().stream().allMatch(f -> agree(one.path(f.getKey()), f.getValue()));
    }
    return one.equals(other);
  }

  private static boolean tells(List<Result> found, List<CatalogueCase> cases) {
    return cases.stream()
        .allMatch(
            c ->
                found.stream()
                    .anyMatch(
                        r -> r.check().equals(c.check()) && r.component().id().equals(c.on())));
  }

  private Optional<Assessment> judged(String document) {
    try {
      var survey = SurveyReader.bind(document, catalogue);
      return Optional.of(new Assessor(catalogue).assess(survey, List.of()));
    } catch (Refused refused) {
      return Optional.empty();
    }
  }

  private static String document(ObjectNode facts, List<CatalogueCase> cases) {
    try {
      var survey = CatalogueCase.base();
      CatalogueCase.lay(survey, facts);
      var findings = survey.withArray("findings");
      cases.forEach(c -> findings.add(c.finding()));
      return survey.toString();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Her survey. */
  String document() {
    return document(facts, cases);
  }

  /** What an assessment finds. */
  Assessment judged() {
    return judged(document()).orElseThrow();
  }

  /** The checks that were made on her. */
  List<String> checks() {
    return cases.stream().map(c -> c.check().id()).toList();
  }

  @Override
  public String toString() {
    return facts.at("/engines/0/type").asText("any engine") + ", " + cases.size() + " findings";
  }
}

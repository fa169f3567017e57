package org.seafettle.json;

import java.util.Locale;
import java.util.Optional;
import org.seafettle.assessment.Comparison;
import org.seafettle.assessment.Measured;
import org.seafettle.assessment.Result;
import org.seafettle.assessment.Sighting;
import org.seafettle.catalogue.Citation;
import org.seafettle.catalogue.Deadline;
import org.seafettle.catalogue.Measure;
import org.seafettle.catalogue.Outcome;
import org.seafettle.catalogue.Reason;
import org.seafettle.catalogue.StopOrder;
import org.seafettle.survey.Evidence;
import org.seafettle.survey.Finding;

/** One check on one component, as the assessment file tells it. */
final class ResultPart {

  private ResultPart() {}

  /** By what other parts of the file name a result. */
  static JsonRecord reference(Result result) {
    return new JsonRecord()
        .text("check", result.check().id())
        .text("on", result.component().id())
        .whole("number", result.number());
  }

  static JsonRecord result(Result result) {
    var check = result.check();
    var record =
        reference(result)
            .text("subsystem", check.subsystem().word())
            .text("title", check.guidance().title())
            .text("why", check.guidance().why())
            .flag("expected", result.expected())
            .text("worst-possible", result.worst().findingClass().word());
    sighting(record, result.sighting());
    return record.object("recorded", result.finding().map(ResultPart::recorded));
  }

  private static void sighting(JsonRecord record, Sighting sighting) {
    record.text("state", state(sighting));
    if (sighting instanceof Sighting.Seen seen) {
      seen(record, seen);
    } else if (sighting instanceof Sighting.Unseen unseen) {
      record.object("reason", reason(unseen.reason()));
    } else if (sighting instanceof Sighting.NotApplicable not) {
      record.object("reason", reason(new Reason(Reason.Kind.STATED, not.reason())));
    }
  }

  static String state(Sighting sighting) {
    if (sighting instanceof Sighting.Seen seen) {
      return seen.partly().isPresent() ? "partly" : "seen";
    }
    return sighting instanceof Sighting.NotApplicable ? "not-applicable" : "not-inspected";
  }

  private static JsonRecord reason(Reason reason) {
    return new JsonRecord()
        .text("kind", word(reason.kind()))
        .text("text", reason.text())
        .text("of", Optional.of(reason.of()).filter(of -> !of.isEmpty()))
        .list("values", reason.values().stream().map(JsonRecord::quantity));
  }

  private static void seen(JsonRecord record, Sighting.Seen seen) {
    record
        .object("reason", seen.partly().map(ResultPart::reason))
        .text("class", seen.found().word())
        .text("counts-as", seen.counts().word())
        .flag("settled", seen.settled())
        .object("outcome", outcome(seen.outcome()))
        .text("raised-by", seen.raisedBy().map(p -> p.id()))
        .text("by", seen.by().map(Deadline::word))
        .text("stop", seen.stop().map(StopOrder::word))
        .object("measured", seen.measured().map(ResultPart::measured));
  }

  static JsonRecord outcome(Outcome outcome) {
    var record =
        new JsonRecord()
            .text("name", outcome.name())
            .text("class", outcome.findingClass().word())
            .text("observed", outcome.saying().observed())
            .text("brief", outcome.saying().brief())
            .text("means", outcome.saying().means());
    outcome
        .advice()
        .ifPresent(
            a ->
                record
                    .text("action", a.action().id())
                    .text("by", a.by().word())
                    .text("stop", a.stop().map(StopOrder::word))
                    .flag("required-by-law", a.requiredByLaw()));
    return record.object("citation", citation(outcome.citation()));
  }

  private static JsonRecord citation(Citation citation) {
    return new JsonRecord()
        .text("source", citation.source().id())
        .text("rank", citation.source().rank().word())
        .text("title", citation.source().title())
        .text("at", citation.at());
  }

  private static JsonRecord measured(Measured measured) {
    var measure = measured.measure();
    return new JsonRecord()
        .text("name", measure.name())
        .number("value", measure.value())
        .text("unit", measure.unit().code())
        .number("uncertainty", measure.uncertainty())
        .object("limits", limits(measure))
        .object("makers-limit", measure.maker().map(SurveyPart::limit))
        .list("shown", measure.shown().stream().map(ResultPart::shown))
        .object("comparison", measured.comparison().map(ResultPart::comparison))
        .flag("too-close-to-call", measured.tooCloseToCall())
        .object("by-the-catalogue-alone", measured.hidden().map(ResultPart::outcome));
  }

  private static JsonRecord limits(Measure measure) {
    return new JsonRecord()
        .texts("outcomes", measure.steps().names())
        .numbers("between", measure.steps().edges());
  }

  private static JsonRecord shown(Measure.Shown shown) {
    return new JsonRecord()
        .text("name", shown.name())
        .object("quantity", JsonRecord.quantity(shown.quantity()));
  }

  private static JsonRecord comparison(Comparison comparison) {
    return new JsonRecord()
        .number("limit", comparison.limit())
        .text("verdict", word(comparison.verdict()))
        .number("probability-of-the-milder-side", comparison.conformity())
        .text("other-side", comparison.otherSide().name())
        .text("class-of-the-other-side", comparison.otherSide().findingClass().word());
  }

  private static JsonRecord recorded(Finding finding) {
    var evidence = finding.evidence();
    return new JsonRecord()
        .texts("is", evidence.words())
        .object("readings", readings(evidence))
        .texts("conditions", evidence.conditions())
        .object("last", evidence.last().map(ResultPart::last))
        .texts("photos", finding.photos())
        .text("note", finding.note())
        .text("done", finding.done())
        .text("begun", finding.begun());
  }

  private static JsonRecord readings(Evidence evidence) {
    var readings = new JsonRecord();
    evidence
        .readings()
        .forEach((name, values) -> readings.list(name, values.stream().map(JsonRecord::quantity)));
    return readings;
  }

  static JsonRecord last(Evidence.LastDone last) {
    return new JsonRecord().text("date", last.date().toString()).quantity("hours", last.at());
  }

  /** As all words of the file are written. */
  static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}

package org.seafettle.json;

import java.time.LocalDate;
import java.util.OptionalInt;
import org.seafettle.assessment.Assessment;
import org.seafettle.assessment.Cause;
import org.seafettle.assessment.Exchange;
import org.seafettle.assessment.Followed;
import org.seafettle.assessment.History;
import org.seafettle.assessment.Meter;
import org.seafettle.assessment.NextLook;
import org.seafettle.assessment.Result;
import org.seafettle.assessment.Task;
import org.seafettle.assessment.Verdict;
import org.seafettle.catalogue.Action;
import org.seafettle.catalogue.Caution;
import org.seafettle.catalogue.Check;
import org.seafettle.catalogue.FindingClass;
import org.seafettle.catalogue.Pattern;
import org.seafettle.catalogue.Who;
import org.seafettle.trend.Series;

/** What it comes to, why, what to do, and how it was in earlier years. */
final class PlanPart {

  private PlanPart() {}

  static JsonRecord verdict(Verdict verdict) {
    var counts = new JsonRecord();
    for (var c : FindingClass.values()) {
      counts.whole(c.word(), verdict.counts().get(c));
    }
    return new JsonRecord()
        .text("readiness", ResultPart.word(verdict.readiness()))
        .list(
            "stops",
            verdict.stops().stream()
                .map(
                    s ->
                        new JsonRecord()
                            .text("order", s.order().word())
                            .object("because", ResultPart.reference(s.because()))))
        .object("counts", counts);
  }

  static JsonRecord cause(Cause cause) {
    var pattern = cause.pattern();
    return new JsonRecord()
        .text("pattern", pattern.id())
        .text("engine", cause.engine().id())
        .flag("settled", cause.settled())
        .text("cause", pattern.cause())
        .text("reasoning", pattern.reasoning())
        .text("confirms", pattern.confirms())
        .text("rules-out", pattern.rulesOut())
        .list("from", cause.from().stream().map(ResultPart::reference))
        .object("missing", cause.missing().map(PlanPart::need));
  }

  private static JsonRecord need(Pattern.Need need) {
    return new JsonRecord()
        .list(
            "any-of",
            need.anyOf().stream()
                .map(
                    s ->
                        new JsonRecord()
                            .text("check", s.check())
                            .texts("outcomes", s.outcomes().stream().sorted().toList())));
  }

  static JsonRecord task(Task task) {
    return new JsonRecord()
        .object("action", action(task.action()))
        .text("on", task.component().id())
        .text("class", task.gravest().word())
        .text("by", task.by().word())
        .text("until", task.until().map(LocalDate::toString))
        .list("settles", task.settles().stream().map(ResultPart::reference))
        .object("gain", gain(task.gain()))
        .object("cost", task.cost().map(PlanPart::cost));
  }

  private static JsonRecord action(Action action) {
    return new JsonRecord()
        .text("id", action.id())
        .text("does", action.does())
        .texts("who", action.who().stream().map(Who::word).toList())
        .texts("parts", action.parts())
        .object(
            "hours",
            action
                .hours()
                .map(h -> new JsonRecord().number("least", h.least()).number("most", h.most())))
        .texts("cautions", action.cautions().stream().map(Caution::text).toList());
  }

  private static JsonRecord gain(Task.Gain gain) {
    return new JsonRecord()
        .text("subsystem", gain.subsystem().word())
        .number("from", gain.from())
        .number("to", gain.to())
        .number("points", gain.points());
  }

  private static JsonRecord cost(Task.Cost cost) {
    return new JsonRecord()
        .text("currency", cost.currency())
        .number("least", cost.least())
        .number("most", cost.most())
        .texts("unpriced", cost.unpriced());
  }

  static JsonRecord look(NextLook look) {
    return new JsonRecord()
        .object("look", ResultPart.reference(look.result()))
        .text("subsystem", look.subsystem().word())
        .number("raises-index-at-worst-by", look.raisesLowBy());
  }

  static JsonRecord furtherTest(Check check) {
    return new JsonRecord()
        .text("check", check.id())
        .text("title", check.guidance().title())
        .text("subsystem", check.subsystem().word());
  }

  static JsonRecord history(History history) {
    return new JsonRecord()
        .list("past", history.past().stream().map(PlanPart::past))
        .list("followed", history.followed().stream().map(PlanPart::followed))
        .list("exchanged", history.exchanged().stream().map(PlanPart::exchange))
        .list("series", history.series().stream().map(PlanPart::series));
  }

  private static JsonRecord past(History.Past past) {
    return new JsonRecord()
        .text("id", past.id())
        .text("date", past.date().toString())
        .list("engines", past.engines().stream().map(GradePart::engine));
  }

  private static JsonRecord followed(Followed followed) {
    return new JsonRecord()
        .whole("number", OptionalInt.of(followed.number()))
        .text("check", followed.then().check().id())
        .text("on", followed.then().component().id())
        .text("status", followed.status().word())
        .text("class-then", followed.then().counts().word())
        .text("class-now", followed.now().flatMap(Result::seen).map(s -> s.counts().word()))
        .text("since", followed.since().toString());
  }

  private static JsonRecord exchange(Exchange exchange) {
    var record = new JsonRecord().text("on", exchange.now().id());
    if (exchange instanceof Exchange.SetBack meter) {
      return record
          .text("what", "meter")
          .object("before", shown(meter.before()))
          .object("after", shown(meter.after()));
    }
    var renewed = (Exchange.Renewed) exchange;
    return record
        .text("what", ResultPart.word(exchange.now().kind()))
        .text("seen", renewed.seen().toString());
  }

  private static JsonRecord shown(Meter.Point point) {
    return new JsonRecord().text("date", point.day().toString()).number("hours", point.hours());
  }

  private static JsonRecord series(Series series) {
    return new JsonRecord()
        .text("check", series.check())
        .text("on", series.on())
        .text("reading", series.reading())
        .flag("enough-for-a-trend", series.enough())
        .list(
            "points",
            series.points().stream()
                .map(
                    p ->
                        new JsonRecord()
                            .text("date", p.date().toString())
                            .object("quantity", JsonRecord.quantity(p.quantity()))));
  }

  /** What the file says of the assessment as a whole, after its engines and results. */
  static void put(JsonRecord file, Assessment assessment) {
    var plan = assessment.plan();
    file.list("causes", assessment.causes().stream().map(PlanPart::cause))
        .list("tasks", plan.tasks().stream().map(PlanPart::task))
        .list("next-looks", plan.looks().stream().map(PlanPart::look))
        .list("further-tests", plan.furtherTests().stream().map(PlanPart::furtherTest))
        .list("due", plan.dues().stream().map(DuePart::due))
        .object("history", history(assessment.history()));
  }
}

package org.seafettle.json;

import java.util.TreeMap;
import org.seafettle.survey.Battery;
import org.seafettle.survey.Boat;
import org.seafettle.survey.Engine;
import org.seafettle.survey.Feature;
import org.seafettle.survey.Fuel;
import org.seafettle.survey.MakersLimit;
import org.seafettle.survey.Occasion;
import org.seafettle.survey.Person;
import org.seafettle.survey.Photo;
import org.seafettle.survey.Prices;
import org.seafettle.survey.Pump;
import org.seafettle.survey.Season;
import org.seafettle.survey.Water;
import org.seafettle.survey.Work;

/** What was surveyed, as the assessment file repeats it. */
final class SurveyPart {

  private SurveyPart() {}

  static JsonRecord occasion(Occasion occasion) {
    var conditions = occasion.conditions();
    return new JsonRecord()
        .text("id", occasion.id())
        .text("purpose", occasion.purpose().word())
        .text("date", occasion.date().toString())
        .text("place", occasion.place())
        .flag("afloat", conditions.afloat())
        .flag("engines-cold", conditions.enginesCold())
        .quantity("air", conditions.air())
        .quantity("lowest-expected", conditions.lowestExpected())
        .texts("instruments", conditions.instruments())
        .object("season", occasion.season().map(SurveyPart::season))
        .object("by", person(occasion.by()))
        .object("for", occasion.orderedBy().map(SurveyPart::person));
  }

  private static JsonRecord season(Season season) {
    return new JsonRecord()
        .text("from", season.from().toString().substring(2))
        .text("to", season.to().toString().substring(2));
  }

  private static JsonRecord person(Person person) {
    return new JsonRecord()
        .text("name", person.name())
        .text("role", person.role())
        .text("contact", person.contact());
  }

  static JsonRecord boat(Boat boat) {
    var features = new JsonRecord();
    for (var feature : Feature.values()) {
      features.flag(feature.word(), boat.has(feature));
    }
    return new JsonRecord()
        .text("name", boat.name())
        .text("hin", boat.hin())
        .quantity("length", boat.length())
        .whole("built", boat.built())
        .text("water", boat.water().map(Water::word))
        .object("fuel", boat.fuel().map(SurveyPart::fuel))
        .object("features", features);
  }

  private static JsonRecord fuel(Fuel fuel) {
    return new JsonRecord()
        .text("kind", SurveyWords.fuel(fuel.kind()))
        .quantity("tank", fuel.tank());
  }

  static JsonRecord engine(Engine engine) {
    var plate = engine.plate();
    return new JsonRecord()
        .text("id", engine.id())
        .text("type", engine.type().word())
        .text("maker", plate.maker())
        .text("model", plate.model())
        .text("serial", plate.serial())
        .whole("year", plate.year())
        .whole("cylinders", engine.cylinders())
        .quantity("power", engine.power())
        .quantity("hours", engine.hours())
        .text("cooling", engine.circuit().map(c -> c.word()))
        .list("limits", engine.limits().stream().map(SurveyPart::limit));
  }

  static JsonRecord limit(MakersLimit limit) {
    return new JsonRecord()
        .text("check", limit.check())
        .quantity("lowest", limit.lowest())
        .quantity("highest", limit.highest())
        .quantity("hours", limit.hours())
        .quantity("months", limit.months())
        .text("source", limit.source());
  }

  static JsonRecord battery(Battery battery) {
    return new JsonRecord()
        .text("id", battery.id())
        .texts("serves", battery.serves())
        .text("chemistry", battery.chemistry().map(c -> c.word()))
        .quantity("nominal", battery.nominal())
        .quantity("capacity", battery.capacity())
        .quantity("cranking", battery.cranking())
        .whole("installed", battery.installed());
  }

  static JsonRecord pump(Pump pump) {
    return new JsonRecord()
        .text("id", pump.id())
        .quantity("rated", pump.rated())
        .quantity("draws", pump.draws())
        .text("fed-by", pump.fedBy());
  }

  static JsonRecord photo(Photo photo) {
    return new JsonRecord()
        .text("id", photo.id())
        .text("file", photo.file())
        .text("caption", photo.caption())
        .list("marks", photo.marks().stream().map(SurveyPart::mark));
  }

  private static JsonRecord mark(Photo.Mark mark) {
    return new JsonRecord()
        .numbers("at", java.util.List.of(mark.x(), mark.y()))
        .text("shape", mark.shape().word())
        .text("says", mark.says());
  }

  static JsonRecord work(Work work) {
    return new JsonRecord()
        .text("date", work.date().toString())
        .text("on", work.on())
        .text("what", work.what())
        .text("by", work.by())
        .quantity("hours", work.at());
  }

  static JsonRecord prices(Prices prices) {
    var items = new JsonRecord();
    new TreeMap<>(prices.items()).forEach(items::number);
    var record = new JsonRecord().text("currency", prices.currency());
    prices.labour().ifPresent(l -> record.number("labour", l));
    return record
        .object("items", items)
        .object(
            "tax",
            prices
                .tax()
                .map(
                    t ->
                        new JsonRecord()
                            .number("percent", t.percent())
                            .flag("included", t.included())));
  }
}

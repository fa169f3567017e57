package org.seafettle.json;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.stream.Collectors;
import org.seafettle.catalogue.Who;
import org.seafettle.yard.Amounts;
import org.seafettle.yard.Fleet;
import org.seafettle.yard.Job;
import org.seafettle.yard.Span;
import org.seafettle.yard.Surveyed;

/** Writes the work list of a season: one object a line, so that it can also be read by lines. */
public final class WorkListWriter {

  private static final String FORMAT = "seafettle-season-work/1";

  private WorkListWriter() {}

  /** UTF-8; the same fleet gives the same bytes. */
  public static byte[] write(Fleet fleet) {
    return fleet.surveyed().stream()
        .flatMap(boat -> boat.jobs().stream().map(job -> job(boat, job).node().toString()))
        .collect(
            Collectors.joining(",\n", "{ \"format\": \"" + FORMAT + "\", \"work\": [\n", "\n] }\n"))
        .getBytes(StandardCharsets.UTF_8);
  }

  private static JsonRecord job(Surveyed boat, Job job) {
    var about = boat.boat();
    return new JsonRecord()
        .text("boat", about.name())
        .text("hin", about.hin())
        .text("survey", about.survey())
        .text("date", about.date().toString())
        .texts("engines", job.where().engines())
        .text("on", job.where().component())
        .text("title", job.where().title())
        .text("action", job.action())
        .text("does", job.does())
        .text("class", job.findingClass().word())
        .texts("who", job.who().stream().map(Who::word).toList())
        .text("by", job.by().word())
        .object("hours", span(job.effort().hours()))
        .list("parts", job.parts().stream().map(WorkListWriter::part))
        .list("price", prices(job.effort().cost()))
        .text("report", boat.report());
  }

  private static JsonRecord part(Job.Need need) {
    return new JsonRecord().text("part", need.part()).list("price", prices(need.price()));
  }

  private static java.util.stream.Stream<JsonRecord> prices(Amounts amounts) {
    return amounts.byCurrency().entrySet().stream().map(WorkListWriter::price);
  }

  private static JsonRecord price(Map.Entry<String, Span> price) {
    return new JsonRecord()
        .text("currency", price.getKey())
        .number("least", price.getValue().least())
        .number("most", price.getValue().most());
  }

  private static JsonRecord span(Span span) {
    return new JsonRecord().number("least", span.least()).number("most", span.most());
  }
}

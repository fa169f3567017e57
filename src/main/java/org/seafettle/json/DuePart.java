package org.seafettle.json;

import java.time.LocalDate;
import java.time.MonthDay;
import org.seafettle.assessment.Due;
import org.seafettle.assessment.Pace;

/** What falls due, as the assessment file tells it. */
final class DuePart {

  private DuePart() {}

  static JsonRecord due(Due due) {
    return new JsonRecord()
        .object("what", ResultPart.reference(due.result()))
        .object("last", due.last().map(ResultPart::last))
        .object(
            "interval",
            new JsonRecord()
                .number("hours", due.interval().hours())
                .number("months", due.interval().months()))
        .object("by-calendar", due.byCalendar().map(DuePart::between))
        .object("by-hours", due.byHours().map(DuePart::running))
        .object("by-wear", due.byWear().map(DuePart::wearing))
        .object("overdue", due.overdue().map(DuePart::overdue))
        .text("next", due.next().map(LocalDate::toString))
        .text("latest", due.latest().map(LocalDate::toString));
  }

  private static JsonRecord between(Due.Between between) {
    return new JsonRecord()
        .text("earliest", between.earliest().toString())
        .text("latest", between.latest().toString());
  }

  private static JsonRecord running(Due.Running running) {
    return new JsonRecord()
        .number("left", running.left())
        .number("meter", running.meter())
        .object("pace", running.pace().map(DuePart::pace))
        .text("earliest", running.fast().map(LocalDate::toString))
        .text("latest", running.slow().map(LocalDate::toString));
  }

  private static JsonRecord wearing(Due.Wearing wearing) {
    return new JsonRecord()
        .number("limit", wearing.limit())
        .text("since", wearing.since().toString())
        .text("earliest", wearing.fast().map(LocalDate::toString))
        .text("latest", wearing.slow().map(LocalDate::toString));
  }

  private static JsonRecord pace(Pace pace) {
    return new JsonRecord()
        .text("from", day(pace.season().from()))
        .text("to", day(pace.season().to()))
        .flag("stated", pace.stated())
        .numbers("hours", pace.hours());
  }

  private static String day(MonthDay day) {
    return day.toString().substring(2);
  }

  private static JsonRecord overdue(Due.Overdue overdue) {
    var record = new JsonRecord().number("hours", overdue.hours());
    overdue.days().ifPresent(days -> record.whole("days", (int) days));
    return record;
  }
}

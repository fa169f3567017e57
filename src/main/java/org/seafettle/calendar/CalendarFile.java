package org.seafettle.calendar;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.seafettle.problem.Refused;
import org.seafettle.report.Reminders;

/**
 * Writes reminders as one iCalendar file (RFC 5545): an event of a whole day for each, with an
 * alarm two weeks before. Next year's file brings the same events under the same identifiers with a
 * higher sequence, so that a calendar moves them and does not double them. Nothing in it depends on
 * the clock: an event is stamped with the day of its survey, at noon UTC.
 */
public final class CalendarFile {

  private static final String MAKER = "-//Seafettle//Reminders//EN";

  /** Long enough before to order parts and a place at the yard (program default). */
  private static final String ALARM = "-P14D";

  private static final LocalDate FIRST = LocalDate.of(2000, 1, 1);

  private CalendarFile() {}

  /**
   * One file for all boats, in UTF-8; empty where there is nothing to be reminded of, since a
   * calendar without an event is none.
   *
   * @throws Refused where two reminders cannot be told apart, as of two boats of one name without a
   *     hull number
   */
  public static Optional<byte[]> write(List<Reminders> boats) {
    if (boats.stream().allMatch(boat -> boat.all().isEmpty())) {
      return Optional.empty();
    }
    var lines =
        new ContentLines()
            .put("BEGIN", "VCALENDAR")
            .put("VERSION", "2.0")
            .put("PRODID", MAKER)
            .put("CALSCALE", "GREGORIAN");
    var known = new HashSet<String>();
    for (var boat : boats) {
      for (var reminder : boat.all()) {
        if (!known.add(reminder.key())) {
          throw alike(boat);
        }
        event(lines, reminder, boat.surveyed());
      }
    }
    return Optional.of(lines.put("END", "VCALENDAR").bytes());
  }

  private static Refused alike(Reminders boat) {
    return Refused.because(
        "Two surveys of " + boat.boat() + " cannot be told apart in one calendar.",
        "Give the hull identification number of each boat, and one survey of each.");
  }

  private static void event(ContentLines lines, Reminders.Reminder reminder, LocalDate surveyed) {
    var stamp = day(surveyed) + "T120000Z";
    lines
        .put("BEGIN", "VEVENT")
        .put("UID", uid(reminder.key()))
        .put("DTSTAMP", stamp)
        .put("LAST-MODIFIED", stamp)
        .put("SEQUENCE", Long.toString(Math.max(0, ChronoUnit.DAYS.between(FIRST, surveyed))))
        .put("DTSTART;VALUE=DATE", day(reminder.day()))
        .put("TRANSP", "TRANSPARENT")
        .text("SUMMARY", reminder.title())
        .text("DESCRIPTION", reminder.text());
    if (reminder.day().isAfter(surveyed)) {
      lines
          .put("BEGIN", "VALARM")
          .put("ACTION", "DISPLAY")
          .put("TRIGGER;RELATED=START", ALARM)
          .text("DESCRIPTION", reminder.title())
          .put("END", "VALARM");
    }
    lines.put("END", "VEVENT");
  }

  /** The same for the same thing in every year, and tells nobody which boat it is. */
  private static String uid(String key) {
    return UUID.nameUUIDFromBytes(key.getBytes(StandardCharsets.UTF_8)).toString();
  }

  private static String day(LocalDate day) {
    return DateTimeFormatter.BASIC_ISO_DATE.format(day);
  }
}

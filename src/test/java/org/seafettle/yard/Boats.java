package org.seafettle.yard;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.seafettle.assessment.Grade;
import org.seafettle.assessment.Verdict.Readiness;
import org.seafettle.catalogue.Deadline;
import org.seafettle.catalogue.FindingClass;
import org.seafettle.catalogue.Subsystem;
import org.seafettle.catalogue.Who;
import org.seafettle.report.Reminders;
import org.seafettle.report.Reminders.Reminder;
import org.seafettle.survey.Purpose;

/** Boats for the tests, each as short as can be. */
public final class Boats {

  private static final LocalDate DAY = LocalDate.parse("2026-10-17");

  private Boats() {}

  public static Surveyed boat(String name, Readiness readiness, double index, Job... jobs) {
    return new Surveyed(
        "folder of " + name,
        name.toLowerCase(java.util.Locale.ROOT) + ".pdf",
        new Surveyed.Particulars(name, "", "S-1", Purpose.SEASON_END, DAY, "Ida Holm"),
        new Surveyed.Standing(
            readiness, List.of("What she is fit for."), new Grade(index, index, 1, true)),
        Arrays.stream(Subsystem.values())
            .map(s -> new Surveyed.State(s, FindingClass.OK, true))
            .toList(),
        List.of(jobs),
        new Reminders(name, DAY, List.of(new Reminder("due " + name, DAY, "Due", "Look."))));
  }

  public static Job job(String hours, String price, String... parts) {
    return new Job(
        new Job.Where(List.of("main"), "main", "Main engine"),
        "change-oil",
        "Change the \"old\" oil, then look again.",
        FindingClass.TIMELY,
        List.of(Who.OWNER, Who.MECHANIC),
        Deadline.BEFORE_NEXT_SEASON,
        new Job.Effort(
            new Span(new BigDecimal(hours), new BigDecimal(hours).add(BigDecimal.ONE)),
            euro(price)),
        Arrays.stream(parts).map(Boats::need).toList());
  }

  /** A part with its price after a colon, or without one. */
  private static Job.Need need(String written) {
    var part = written.split(":");
    return new Job.Need(part[0], part.length == 1 ? Amounts.NONE : euro(part[1]));
  }

  public static Amounts euro(String price) {
    return Amounts.of("EUR", new BigDecimal(price), new BigDecimal(price));
  }
}

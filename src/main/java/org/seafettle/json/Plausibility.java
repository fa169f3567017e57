package org.seafettle.json;

import java.time.Duration;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.seafettle.quantity.Kind;
import org.seafettle.quantity.MeasuredUnit;
import org.seafettle.quantity.Quantity;

/** Looks for what cannot be true together: days, years and hours. */
final class Plausibility {

  private final Field root;
  private final LocalDate day;

  private Plausibility(Field root, LocalDate day) {
    this.root = root;
    this.day = day;
  }

  /**
   * Looks through a survey file; without the day of the survey there is nothing to compare with.
   */
  static void look(Field root) {
    root.child("survey").child("date").date().ifPresent(d -> new Plausibility(root, d).look());
  }

  private void look() {
    year(root.child("boat").child("built"), "The boat was built");
    for (var engine : root.child("engines").items()) {
      year(engine.child("year"), "The engine was made");
      meter(engine);
    }
    root.child("batteries")
        .items()
        .forEach(b -> year(b.child("installed"), "The battery was fitted"));
    for (var work : root.child("work").items()) {
      notAfter(work.child("date"), "The work was done");
      hours(work.child("hours"), work.child("on").text());
    }
    for (var finding : root.child("findings").items()) {
      var last = finding.child("last");
      notAfter(last.child("date"), "It was last done");
      hours(last.child("hours"), finding.child("on").text().or(this::onlyEngine));
    }
  }

  private void year(Field field, String what) {
    field
        .whole(1850, 2100)
        .ifPresent(
            year -> {
              if (year > day.getYear()) {
                field.blame(
                    what + " in " + year + ", after the survey of " + day + ".",
                    "Correct the year, or the date of the survey.");
              }
            });
  }

  private void notAfter(Field field, String what) {
    field
        .date()
        .filter(d -> d.isAfter(day))
        .ifPresent(
            d ->
                field.blame(
                    what + " on " + d + ", after the survey of " + day + ".",
                    "Correct the date, or the date of the survey."));
  }

  /** An engine cannot have run longer than it has been there. */
  private void meter(Field engine) {
    var field = engine.child("hours");
    var hours = field.notNegative(Kind.DURATION);
    var year = engine.child("year").whole(1900, 2100);
    if (hours.isEmpty() || year.isEmpty() || year.getAsInt() > day.getYear()) {
      return;
    }
    var since = LocalDate.of(year.getAsInt(), 1, 1);
    double most = Duration.ofDays(ChronoUnit.DAYS.between(since, day) + 1).toHours();
    if (inHours(hours.get()) > most) {
      field.blame(
          "An engine of " + year.getAsInt() + " cannot have run " + hours.get().written() + ".",
          "Correct the hours or the year: since then " + (long) most + " h have passed.");
    }
  }

  private void hours(Field field, Optional<String> engine) {
    var then = field.notNegative(Kind.DURATION);
    var now =
        engine.flatMap(
            id ->
                root.child("engines").items().stream()
                    .filter(e -> e.child("id").text().equals(Optional.of(id)))
                    .findFirst()
                    .flatMap(e -> e.child("hours").notNegative(Kind.DURATION)));
    if (then.isPresent() && now.isPresent() && inHours(then.get()) > inHours(now.get())) {
      field.blame(
          then.get().written()
              + " is more than the engine has on the day of the survey, "
              + now.get().written()
              + ".",
          "Correct one of them; where the meter was replaced, say so under \"work\" and leave the"
              + " hours out here.");
    }
  }

  private Optional<String> onlyEngine() {
    List<Field> engines = root.child("engines").items();
    return engines.size() == 1 ? engines.get(0).child("id").text() : Optional.empty();
  }

  private static double inHours(Quantity quantity) {
    return quantity.in(MeasuredUnit.HOUR);
  }
}

package org.seafettle.json;

import java.util.Optional;
import org.seafettle.catalogue.Catalogue;
import org.seafettle.catalogue.Check;
import org.seafettle.catalogue.Criterion;
import org.seafettle.catalogue.Interval;
import org.seafettle.quantity.Kind;
import org.seafettle.quantity.Quantity;
import org.seafettle.survey.MakersLimit;

/** Reads a limit from an engine maker's manual. */
final class LimitBinder {

  private final Catalogue catalogue;

  LimitBinder(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  Optional<MakersLimit> bind(Field limit) {
    var id = limit.child("check").text();
    var source = limit.child("source").text();
    var check = id.flatMap(catalogue::check);
    var hours = limit.child("hours").positive(Kind.DURATION);
    var months = limit.child("months").positive(Kind.DURATION);
    var lowest = edge(limit.child("lowest"), check);
    var highest = edge(limit.child("highest"), check);
    check.ifPresent(c -> usable(limit, c));
    if (!limit.child("lowest").present()
        && !limit.child("highest").present()
        && !limit.child("hours").present()
        && !limit.child("months").present()) {
      limit.blame("The entry gives no limit.", "Write lowest or highest, or hours or months.");
    }
    lowest.ifPresent(low -> highest.ifPresent(high -> ordered(limit, low, high)));
    if (id.isEmpty()
        || source.isEmpty()
        || (lowest.isEmpty() && highest.isEmpty() && hours.isEmpty() && months.isEmpty())) {
      return Optional.empty();
    }
    return Optional.of(new MakersLimit(id.get(), lowest, highest, hours, months, source.get()));
  }

  private static void ordered(Field limit, Quantity low, Quantity high) {
    if (low.comparable(high) && low.value() > high.in(low.unit())) {
      limit
          .child("highest")
          .blame(
              "The highest value, "
                  + high.written()
                  + ", is below the lowest, "
                  + low.written()
                  + ".",
              "Exchange them, or correct one.");
    }
  }

  /** A limit of a reading, in the kind of the number that the check is judged by. */
  private static Optional<Quantity> edge(Field field, Optional<Check> check) {
    var unit = check.flatMap(c -> numbered(c.criterion())).map(Criterion.Numbered::unit);
    return unit.isEmpty() ? Optional.empty() : ReadingBinder.value(field, unit.get());
  }

  private static Optional<Criterion.Numbered> numbered(Criterion criterion) {
    return criterion instanceof Criterion.Numbered numbered
        ? Optional.of(numbered)
        : Optional.empty();
  }

  /** Blames what the check could make no use of, lest it be lost in silence. */
  private static void usable(Field limit, Check check) {
    boolean falls = check.criterion() instanceof Interval;
    var limits = numbered(check.criterion()).map(Criterion.Numbered::limits);
    unusable(limit.child("hours"), falls, "does not fall due after hours of running");
    unusable(limit.child("months"), falls, "does not fall due after months");
    unusable(
        limit.child("lowest"),
        limits.filter(l -> l.withinMaker().isPresent() && l.belowMaker().isPresent()).isPresent(),
        "takes no lowest value from a maker");
    unusable(
        limit.child("highest"),
        limits.filter(l -> l.withinMaker().isPresent() && l.aboveMaker().isPresent()).isPresent(),
        "takes no highest value from a maker");
  }

  private static void unusable(Field field, boolean used, String why) {
    if (field.present() && !used) {
      field.blame(
          "This check " + why + ".", "Leave it out, or put it with the check it belongs to.");
    }
  }
}

package org.seafettle.json;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Optional;
import java.util.regex.Pattern;
import org.seafettle.quantity.Kind;
import org.seafettle.quantity.MeasuredUnit;
import org.seafettle.quantity.Quantity;
import org.seafettle.survey.Conditions;
import org.seafettle.survey.Occasion;
import org.seafettle.survey.Person;
import org.seafettle.survey.Purpose;
import org.seafettle.survey.Season;

/** Reads when, where, by whom and under which conditions a survey was made. */
final class OccasionBinder {

  private static final Pattern MONTH_DAY = Pattern.compile("\\d{2}-\\d{2}");

  private OccasionBinder() {}

  /** The occasion, with stand-ins for what is missing or wrong, so that the rest can be checked. */
  static Occasion bind(Field survey) {
    return new Occasion(
        survey.child("id").text().orElse("?"),
        survey.child("purpose").word(Purpose.class).orElse(Purpose.YEARLY_RECORD),
        survey.child("date").date().orElse(LocalDate.MAX),
        survey.child("place").text().orElse("?"),
        conditions(survey),
        season(survey.child("season")),
        person(survey.child("by")).orElse(new Person("?", Optional.empty(), Optional.empty())),
        person(survey.child("for")));
  }

  private static Conditions conditions(Field survey) {
    return new Conditions(
        survey.child("afloat").flag(),
        survey.child("engines-cold").flag(),
        air(survey.child("air")),
        air(survey.child("lowest-expected")),
        survey.child("instruments").items().stream().flatMap(i -> i.text().stream()).toList());
  }

  /** A temperature of the air: people survey boats between −60 and 60 °C. */
  private static Optional<Quantity> air(Field field) {
    return field
        .quantity(Kind.TEMPERATURE)
        .filter(
            q -> {
              double celsius = q.in(MeasuredUnit.CELSIUS);
              boolean plausible = celsius >= -60 && celsius <= 60;
              if (!plausible) {
                field.blame(
                    "\"" + q.written() + "\" is no temperature of the air.",
                    "Write one between −60 and 60 °C (−76 and 140 °F).");
              }
              return plausible;
            });
  }

  private static Optional<Season> season(Field season) {
    return monthDay(season.child("from"))
        .flatMap(from -> monthDay(season.child("to")).map(to -> new Season(from, to)));
  }

  private static Optional<MonthDay> monthDay(Field field) {
    return field.text().flatMap(written -> monthDay(field, written));
  }

  private static Optional<MonthDay> monthDay(Field field, String written) {
    if (MONTH_DAY.matcher(written).matches()) {
      try {
        return Optional.of(MonthDay.parse("--" + written));
      } catch (DateTimeException noSuchDay) {
        field.blame(
            "There is no day " + written + " in a year.", "Write month-day, such as 05-01.");
        return Optional.empty();
      }
    }
    field.blame("\"" + written + "\" is not a day of the year.", "Write month-day, such as 05-01.");
    return Optional.empty();
  }

  private static Optional<Person> person(Field field) {
    return field
        .child("name")
        .text()
        .map(name -> new Person(name, field.child("role").text(), field.child("contact").text()));
  }
}

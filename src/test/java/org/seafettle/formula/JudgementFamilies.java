package org.seafettle.formula;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.seafettle.assessment.Scoring;
import org.seafettle.catalogue.Criterion;
import org.seafettle.catalogue.Propagation;
import org.seafettle.formula.conformity.Conformity;
import org.seafettle.formula.conformity.Side;
import org.seafettle.formula.time.DueDate;
import org.seafettle.formula.time.Season;
import org.seafettle.formula.time.ServiceInterval;
import org.seafettle.json.CatalogueReader;

/** SC: readings against limits, and due dates. */
final class JudgementFamilies {

  private JudgementFamilies() {}

  static void addTo(Families f) {
    f.number("SC-JCGM", JudgementFamilies::probability);
    f.number("SC-GB", JudgementFamilies::falseAccept);
    f.words("SC-G8V", JudgementFamilies::verdict);
    f.number(
        "SC-G8P",
        in -> Conformity.probability(in.number("y"), in.number("u"), in.number("T"), Side.AT_MOST));
    f.words("SC-DUE", JudgementFamilies::due);
    f.number("SC-GUM", JudgementFamilies::combined);
    f.number("SC-PCI", in -> Scoring.index(numbers(in.text("deducts")).boxed().toList()));
    f.words("EL-DROP", in -> judged("positive-cable-drop", in.number("V")));
  }

  private static DoubleStream numbers(String written) {
    return Stream.of(written.split(" ")).mapToDouble(Double::parseDouble);
  }

  private static double combined(Inputs in) {
    return in.has("u")
        ? Propagation.ofSum(numbers(in.text("u")).toArray())
        : Propagation.ofSum(1.44 * 0.19, 1.44 * 0.11);
  }

  /** The class that the supplied catalogue gives a reading that lies between limits or on one. */
  private static String judged(String id, double value) {
    var check = CatalogueReader.supplied().check(id).orElseThrow();
    var steps = ((Criterion.Scale) check.criterion()).limits().steps().cases().get(0).value();
    var name = steps.names().get(steps.below(value));
    return check.outcomes().stream()
        .filter(o -> o.name().equals(name))
        .map(o -> o.findingClass().word())
        .findFirst()
        .orElseThrow();
  }

  private static double probability(Inputs in) {
    double y = in.number("y");
    double u = in.number("u");
    if (in.has("TL")) {
      return Conformity.probabilityBetween(y, u, in.number("TL"), in.number("TU"));
    }
    var side = in.asks("upper limit") ? Side.AT_MOST : Side.AT_LEAST;
    return Conformity.probability(y, u, in.number("T"), side);
  }

  /** The risk for a reading that lies on the edge of the guard band, so many u below the limit. */
  private static double falseAccept(Inputs in) {
    double guard = Double.parseDouble(in.text("guard").replace("u", ""));
    return 1 - Conformity.probability(-guard, 1, 0, Side.AT_MOST);
  }

  private static String verdict(Inputs in) {
    if (in.number("U") != 2 * in.number("u")) {
      throw new AssertionError("U is 2u");
    }
    return Families.word(
        Conformity.verdict(in.number("y"), in.number("U"), in.number("T"), Side.AT_MOST));
  }

  private static String due(Inputs in) {
    if (in.has("from")) {
      return "" + new Season(day(in.text("from")), day(in.text("to"))).days();
    }
    if (in.has("hours_date")) {
      var interval = new ServiceInterval(100, (int) in.number("months"));
      var byCalendar = interval.dueByCalendar(LocalDate.parse(in.text("service")));
      var byHours = Optional.of(LocalDate.parse(in.text("hours_date")));
      return DueDate.earlier(byHours, byCalendar).toString();
    }
    double left = in.number("left_h");
    double perSeason = in.number("season_h");
    var season = new Season(day("05-01"), day("09-30"));
    var surveyed = LocalDate.parse(in.text("survey"));
    if (in.asks("day number")) {
      return "" + DueDate.seasonDays(season, left, perSeason);
    }
    if (!in.text("season").equals("05-01..09-30")) {
      throw new AssertionError("another season");
    }
    return DueDate.byHours(season, surveyed, left, perSeason).orElseThrow().toString();
  }

  private static MonthDay day(String written) {
    return MonthDay.parse("--" + written);
  }
}

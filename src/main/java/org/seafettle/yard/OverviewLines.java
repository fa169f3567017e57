package org.seafettle.yard;

import java.util.ArrayList;
import java.util.List;
import org.seafettle.assessment.Verdict.Readiness;
import org.seafettle.catalogue.Catalogue;
import org.seafettle.report.Forms;
import org.seafettle.report.Words;

/** Writes the lines of an overview. */
record OverviewLines(Fleet fleet, Catalogue catalogue, Forms forms, Figures figures) {

  private Words words() {
    return forms.words();
  }

  Overview.Summary summary() {
    return new Overview.Summary(
        period(),
        fleet.surveyed().stream().anyMatch(OverviewLines::critical),
        says(),
        figures.hours(fleet.hours()),
        figures.money(fleet.cost()));
  }

  private String period() {
    var from = fleet.from().map(forms::shortDate).orElse("");
    var to = fleet.to().map(forms::shortDate).orElse("");
    return from.isEmpty()
        ? words().say("season.no-survey")
        : words().say(from.equals(to) ? "season.day" : "season.period", from, to);
  }

  private List<String> says() {
    var says = new ArrayList<String>();
    for (var readiness : Readiness.values()) {
      int boats = fleet.boats(readiness);
      if (boats > 0) {
        says.add(says(readiness, boats));
      }
    }
    if (!fleet.faulty().isEmpty()) {
      says.add(words().count("season.faulty", fleet.faulty().size()));
    }
    return says.isEmpty() ? List.of(words().say("season.no-survey")) : says;
  }

  private String says(Readiness readiness, int boats) {
    return switch (readiness) {
      case STOP -> words().count("season.stop", boats);
      case NOT_BEFORE_WORK -> words().count("season.before-work", boats);
      case NOT_ENOUGH_SEEN -> words().count("season.not-enough", boats);
      case READY_AS_FAR_AS_SEEN -> words().count("season.as-far-as-seen", boats);
      case READY -> words().count("season.ready", boats);
    };
  }

  private static boolean critical(Surveyed boat) {
    var readiness = boat.standing().readiness();
    return readiness == Readiness.STOP || readiness == Readiness.NOT_BEFORE_WORK;
  }

  Overview.Line boat(Surveyed boat) {
    var about = boat.boat();
    var grade = boat.standing().weakest();
    return new Overview.Line(
        about.name(),
        words().say("season.about", about.survey(), forms.shortDate(about.date())),
        Integer.toString(grade.printed()),
        forms.condition(grade),
        forms.atWorst(grade),
        verdict(boat),
        critical(boat),
        new Overview.Work(figures.hours(boat.hours()), figures.money(boat.cost())));
  }

  private String verdict(Surveyed boat) {
    var says = boat.standing().says();
    int more = says.size() - 1;
    return more == 0 ? says.get(0) : words().count("season.verdict-more", more, says.get(0));
  }

  Overview.OrderLine order(Fleet.Order order) {
    var price = figures.money(order.price());
    return new Overview.OrderLine(
        catalogue.name(Catalogue.Named.PART, order.part()),
        Integer.toString(order.pieces()),
        Integer.toString(order.boats()),
        price.isEmpty() || order.unpriced() == 0
            ? price
            : words().count("season.unpriced", order.unpriced(), price));
  }
}

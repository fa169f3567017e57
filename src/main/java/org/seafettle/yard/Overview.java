package org.seafettle.yard;

import java.util.List;
import java.util.Map;
import org.seafettle.assessment.Verdict;
import org.seafettle.catalogue.Catalogue;
import org.seafettle.report.Forms;
import org.seafettle.report.Paper;
import org.seafettle.report.Words;

/**
 * The overview of a season, ready to be set: plain strings throughout.
 *
 * @param frame what stands around it
 * @param summary what it comes to
 * @param chart the fleet by subsystem and class
 * @param stops what must not be done, boat by boat
 * @param boats every boat, the gravest first
 * @param orders what to order
 * @param faults the surveys that could not be used
 */
public record Overview(
    Heading frame,
    Summary summary,
    FleetChart chart,
    List<Stop> stops,
    List<Line> boats,
    List<OrderLine> orders,
    List<FaultLine> faults) {

  public Overview {
    stops = List.copyOf(stops);
    boats = List.copyOf(boats);
    orders = List.copyOf(orders);
    faults = List.copyOf(faults);
  }

  /**
   * What stands around it on every page.
   *
   * @param language of its words, such as {@code en}
   * @param title of the document
   * @param number of boats, for the head of the page
   * @param subject for the head of the page
   * @param paper the sheet, as CSS names it
   * @param labels the texts of the template
   */
  public record Heading(
      String language,
      String title,
      String number,
      String subject,
      String paper,
      Map<String, String> labels) {}

  /**
   * What the season comes to.
   *
   * @param period from the first survey to the last
   * @param critical whether something stands against the use of any boat
   * @param says how many boats are how ready, the gravest first; never empty
   * @param hours of work on all boats; empty where there are none
   * @param cost of all work and parts; empty where nothing is priced
   */
  public record Summary(
      String period, boolean critical, List<String> says, String hours, String cost) {

    public Summary {
      says = List.copyOf(says);
    }
  }

  /**
   * A boat that carries an order not to do something.
   *
   * @param boat her name
   * @param says the sentences
   */
  public record Stop(String boat, List<String> says) {

    public Stop {
      says = List.copyOf(says);
    }
  }

  /**
   * A boat.
   *
   * @param name and the survey's number and date
   * @param about the survey
   * @param index of her weakest engine
   * @param condition its word
   * @param worst at worst; empty where all was seen
   * @param verdict the gravest sentence, and how many more there are
   * @param critical whether something stands against use
   * @param work hours and cost
   */
  public record Line(
      String name,
      String about,
      String index,
      String condition,
      String worst,
      String verdict,
      boolean critical,
      Work work) {}

  /**
   * What a boat takes.
   *
   * @param hours of work; empty where there are none
   * @param cost of work and parts; empty where nothing is priced
   */
  public record Work(String hours, String cost) {}

  /**
   * A part to order.
   *
   * @param part its name
   * @param pieces how many
   * @param boats on how many boats
   * @param price together, and how many pieces it lacks
   */
  public record OrderLine(String part, String pieces, String boats, String price) {}

  /**
   * A fault of a survey.
   *
   * @param source the folder or archive
   * @param place where in it
   * @param fault what is wrong, and what to do
   */
  public record FaultLine(String source, String place, String fault) {}

  /**
   * Writes the overview; the same fleet gives the same overview.
   *
   * @param catalogue in the language of the words, for the names of parts
   * @throws IllegalStateException where a text is missing from the words
   */
  public static Overview of(Fleet fleet, Catalogue catalogue, Words words, Paper paper) {
    var forms = new Forms(words);
    var lines = new OverviewLines(fleet, catalogue, forms, new Figures(forms));
    return new Overview(
        new Heading(
            words.locale().toLanguageTag(),
            words.say("season.title"),
            words.count("season.boats", fleet.surveyed().size()),
            words.say("season.title"),
            paper == Paper.A4 ? "A4" : "letter",
            words.labels()),
        lines.summary(),
        FleetChart.of(fleet, words),
        fleet.surveyed().stream()
            .filter(s -> s.standing().readiness() == Verdict.Readiness.STOP)
            .map(s -> new Stop(s.boat().name(), s.standing().says()))
            .toList(),
        fleet.surveyed().stream().map(lines::boat).toList(),
        fleet.orders().stream().map(lines::order).toList(),
        fleet.faulty().stream().flatMap(f -> f.faults().stream().map(x -> fault(f, x))).toList());
  }

  private static FaultLine fault(Faulty faulty, Faulty.Fault fault) {
    return new FaultLine(faulty.source(), fault.place(), fault.fault() + " " + fault.remedy());
  }
}

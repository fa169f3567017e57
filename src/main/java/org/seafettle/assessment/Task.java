package org.seafettle.assessment;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.seafettle.catalogue.Action;
import org.seafettle.catalogue.Deadline;
import org.seafettle.catalogue.FindingClass;
import org.seafettle.catalogue.Subsystem;
import org.seafettle.survey.Component;

/**
 * Something to do, merged from all the findings on one component that it settles.
 *
 * @param action what
 * @param component on what
 * @param gravest the gravest class among the findings
 * @param by by when, the soonest
 * @param until the last day that is in time, where the survey tells it
 * @param settles the findings
 * @param gain what it does to the index
 * @param cost what it costs, where the survey brings prices
 */
public record Task(
    Action action,
    Component component,
    FindingClass gravest,
    Deadline by,
    Optional<LocalDate> until,
    List<Result> settles,
    Gain gain,
    Optional<Cost> cost) {

  /** Stands among what is not priced where the price list has no price of an hour. */
  public static final String LABOUR = "labour";

  public Task {
    settles = List.copyOf(settles);
  }

  /**
   * What settling it does to the weakest engine that it concerns.
   *
   * @param subsystem the subsystem
   * @param from its index now, as far as seen
   * @param to its index then
   */
  public record Gain(Subsystem subsystem, double from, double to) {

    public double points() {
      return to - from;
    }
  }

  /**
   * The cost from the survey's own price list.
   *
   * @param currency ISO 4217 code
   * @param least with the fewest hours
   * @param most with the most hours
   * @param unpriced what the price list does not have; the sum lacks it
   */
  public record Cost(String currency, BigDecimal least, BigDecimal most, List<String> unpriced) {

    public Cost {
      unpriced = List.copyOf(unpriced);
    }
  }
}

package org.seafettle.yard;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.seafettle.assessment.Task;
import org.seafettle.catalogue.Deadline;
import org.seafettle.catalogue.FindingClass;
import org.seafettle.catalogue.Who;
import org.seafettle.survey.Battery;
import org.seafettle.survey.Component;
import org.seafettle.survey.Engine;
import org.seafettle.survey.Prices;

/**
 * Something to be done on a boat.
 *
 * @param where on what
 * @param action the catalogue's word for it
 * @param does what to do
 * @param findingClass the gravest of what it settles
 * @param who may do it, the usual one first
 * @param by when
 * @param effort hours and cost, as far as known
 * @param parts the usual parts
 */
public record Job(
    Where where,
    String action,
    String does,
    FindingClass findingClass,
    List<Who> who,
    Deadline by,
    Effort effort,
    List<Need> parts) {

  public Job {
    who = List.copyOf(who);
    parts = List.copyOf(parts);
  }

  /**
   * On what something is done.
   *
   * @param engines the ids of the engines concerned; empty where it is the whole boat
   * @param component its id in the survey
   * @param title what the report calls it
   */
  public record Where(List<String> engines, String component, String title) {

    public Where {
      engines = List.copyOf(engines);
    }
  }

  /**
   * What it takes.
   *
   * @param hours of work with good access; nothing where the catalogue does not say
   * @param cost of work and parts together, by the survey's own prices
   */
  public record Effort(Span hours, Amounts cost) {}

  /**
   * A part that is needed.
   *
   * @param part the catalogue's word for it
   * @param price from the survey's price list; none where it has none
   */
  public record Need(String part, Amounts price) {}

  static Job of(Task task, String title, Optional<Prices> prices) {
    var action = task.action();
    var hours =
        action
            .hours()
            .map(h -> new Span(BigDecimal.valueOf(h.least()), BigDecimal.valueOf(h.most())))
            .orElse(Span.NOTHING);
    var cost =
        task.cost().map(c -> Amounts.of(c.currency(), c.least(), c.most())).orElse(Amounts.NONE);
    return new Job(
        new Where(engines(task.component()), task.component().id(), title),
        action.id(),
        action.does(),
        task.gravest(),
        action.who(),
        task.by(),
        new Effort(hours, cost),
        needs(action.parts(), prices));
  }

  private static List<String> engines(Component component) {
    return switch (component.kind()) {
      case ENGINE -> List.of(((Engine) component).id());
      case BATTERY -> List.copyOf(((Battery) component).serves());
      case PUMP, BOAT -> List.of();
    };
  }

  private static List<Need> needs(List<String> parts, Optional<Prices> prices) {
    var needs = new ArrayList<Need>();
    for (var part : parts) {
      var price =
          prices.flatMap(p -> p.item(part).map(each -> Amounts.of(p.currency(), each, each)));
      needs.add(new Need(part, price.orElse(Amounts.NONE)));
    }
    return needs;
  }
}

package org.seafettle.assessment;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import org.seafettle.catalogue.Action;
import org.seafettle.catalogue.Deadline;
import org.seafettle.catalogue.FindingClass;
import org.seafettle.catalogue.StopOrder;
import org.seafettle.survey.Prices;
import org.seafettle.survey.Survey;

/** Merges what the findings ask for, and puts it in order. */
final class Tasks {

  private final Survey survey;
  private final Grading grading;
  private final List<EngineGrade> engines;
  private final Deadlines deadlines;

  private Tasks(
      Survey survey, List<Result> results, List<EngineGrade> engines, Deadlines deadlines) {
    this.survey = survey;
    this.grading = new Grading(survey, results);
    this.engines = engines;
    this.deadlines = deadlines;
  }

  /**
   * By class, then what is due at once, people before the engine, then by what is gained, then by
   * what is gained for the money, then soonest due.
   */
  static List<Task> of(
      Survey survey, List<Result> results, List<EngineGrade> engines, Deadlines deadlines) {
    var tasks = new Tasks(survey, results, engines, deadlines);
    var merged = new LinkedHashMap<List<String>, List<Result>>();
    for (var result : results) {
      if (result.counts() != FindingClass.OK) {
        var action = action(result);
        merged
            .computeIfAbsent(List.of(action.id(), result.component().id()), k -> new ArrayList<>())
            .add(result);
      }
    }
    return merged.values().stream()
        .map(tasks::task)
        .sorted(
            Comparator.comparing(Task::gravest, Comparator.reverseOrder())
                .thenComparing(Tasks::urgency)
                .thenComparing(t -> t.gain().points(), Comparator.reverseOrder())
                .thenComparing(Tasks::gainForMoney, Comparator.reverseOrder())
                .thenComparing(Task::by))
        .toList();
  }

  private static Action action(Result result) {
    return result.seen().orElseThrow().outcome().advice().orElseThrow().action();
  }

  /** What is due at once before the rest, and of it what forbids most: people before the engine. */
  private static int urgency(Task task) {
    int later = StopOrder.values().length + 1;
    return task.by() == Deadline.AT_ONCE
        ? task.settles().stream()
            .mapToInt(r -> StopOrder.place(r.seen().orElseThrow().stop()))
            .min()
            .orElse(later)
        : later;
  }

  private static double gainForMoney(Task task) {
    return task.cost()
        .map(c -> c.least().add(c.most()).doubleValue() / 2)
        .filter(money -> money > 0)
        .map(money -> task.gain().points() / money)
        .orElse(0.0);
  }

  private Task task(List<Result> settles) {
    var first = settles.get(0);
    var by = settles.stream().map(Tasks::deadline).min(Comparator.naturalOrder()).orElseThrow();
    return new Task(
        action(first).on(survey, first.component()),
        first.component(),
        settles.stream().map(Result::counts).max(Comparator.naturalOrder()).orElseThrow(),
        by,
        deadlines.until(by, first.component()),
        settles,
        gain(settles),
        survey.prices().flatMap(p -> cost(p, action(first))));
  }

  private static Deadline deadline(Result result) {
    return result.seen().orElseThrow().by().orElseThrow();
  }

  /** What settling the findings does to their subsystem, on the weakest engine concerned. */
  private Task.Gain gain(List<Result> settles) {
    var subsystem = settles.get(0).check().subsystem();
    var engine =
        engines.stream()
            .filter(e -> Grading.concerns(settles.get(0).component(), e.engine()))
            .min(Comparator.comparingDouble(e -> e.grade().high()))
            .orElseThrow()
            .engine();
    var counting = grading.countingFor(engine, subsystem);
    double from = Grading.grade(counting, r -> r).high();
    double to = Grading.grade(counting, r -> settles.contains(r) ? r.settled() : r).high();
    return new Task.Gain(subsystem, from, to);
  }

  private static Optional<Task.Cost> cost(Prices prices, Action action) {
    var unpriced = new ArrayList<String>();
    var parts = BigDecimal.ZERO;
    boolean any = false;
    for (var part : action.parts()) {
      var price = prices.item(part);
      price.ifPresentOrElse(p -> {}, () -> unpriced.add(part));
      parts = parts.add(price.orElse(BigDecimal.ZERO));
      any |= price.isPresent();
    }
    var least = parts;
    var most = parts;
    if (action.hours().isPresent() && prices.labour().isEmpty()) {
      unpriced.add(Task.LABOUR);
    }
    if (action.hours().isPresent() && prices.labour().isPresent()) {
      var hours = action.hours().get();
      least = least.add(prices.labour().get().multiply(BigDecimal.valueOf(hours.least())));
      most = most.add(prices.labour().get().multiply(BigDecimal.valueOf(hours.most())));
      any = true;
    }
    return any
        ? Optional.of(new Task.Cost(prices.currency(), least, most, unpriced))
        : Optional.empty();
  }
}

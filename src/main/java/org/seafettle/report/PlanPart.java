package org.seafettle.report;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.seafettle.assessment.Assessment;
import org.seafettle.assessment.Result;
import org.seafettle.assessment.Sighting;
import org.seafettle.assessment.Task;
import org.seafettle.catalogue.FindingClass;
import org.seafettle.survey.Finding;
import org.seafettle.survey.Prices;

/**
 * What is to be done, and what was done.
 *
 * @param groups what is to be done, by class, gravest first
 * @param priced whether any of it has a price
 * @param gains whether any of it raises an index by itself
 * @param total what all of it costs together; empty without prices, or where one class says it
 * @param done what was put right on the spot
 */
public record PlanPart(
    List<Group> groups, boolean priced, boolean gains, String total, List<Done> done) {

  public PlanPart {
    groups = List.copyOf(groups);
    done = List.copyOf(done);
  }

  /**
   * The tasks of one class.
   *
   * @param title the class
   * @param critical whether it stands against use
   * @param tasks the most gainful first
   * @param batches the same, as many together as leave their cautions beside them
   * @param total what they cost together, as far as priced; empty without prices
   */
  public record Group(
      String title, boolean critical, List<TaskRow> tasks, List<Batch> batches, String total) {

    public Group {
      tasks = List.copyOf(tasks);
      batches = List.copyOf(batches);
    }
  }

  /**
   * A few tasks of one class.
   *
   * @param tasks the most gainful first
   * @param cautions what can hurt while doing them, each with the numbers of its findings
   */
  public record Batch(List<TaskRow> tasks, List<Row> cautions) {

    public Batch {
      tasks = List.copyOf(tasks);
      cautions = List.copyOf(cautions);
    }
  }

  /** More, with their cautions, would leave a page half empty where they do not fit. */
  private static final int BATCH = 3;

  /**
   * Something that was put right on the spot.
   *
   * @param finding which
   * @param what was done
   */
  public record Done(Reference finding, String what) {}

  static PlanPart of(Manuscript m) {
    var plan = m.assessment().plan();
    var groups =
        Arrays.stream(FindingClass.values())
            .sorted(Comparator.reverseOrder())
            .map(c -> plan.tasks().stream().filter(t -> t.gravest() == c).toList())
            .filter(tasks -> !tasks.isEmpty())
            .map(tasks -> group(m, tasks))
            .toList();
    return new PlanPart(
        groups,
        priced(plan),
        groups.stream().flatMap(g -> g.tasks().stream()).anyMatch(t -> !t.gain().isEmpty()),
        groups.size() > 1 ? total(m, "cost.all", plan.tasks()) : "",
        done(m));
  }

  private static boolean priced(Assessment.Plan plan) {
    return plan.tasks().stream().anyMatch(t -> t.cost().isPresent());
  }

  private static Group group(Manuscript m, List<Task> tasks) {
    var first = tasks.get(0);
    var rows = tasks.stream().map(t -> TaskRow.of(m, t)).toList();
    return new Group(
        Phrases.capital(m.words().of("class-title", first.gravest())),
        TaskRow.critical(first),
        rows,
        batches(m, tasks, rows),
        total(m, "cost.total", tasks));
  }

  /** All but equally many in each, so that none is left behind. */
  private static List<Batch> batches(Manuscript m, List<Task> tasks, List<TaskRow> rows) {
    int batches = (tasks.size() + BATCH - 1) / BATCH;
    return IntStream.range(0, batches)
        .mapToObj(
            i -> {
              int from = i * tasks.size() / batches;
              int to = (i + 1) * tasks.size() / batches;
              return new Batch(rows.subList(from, to), cautions(m, tasks.subList(from, to)));
            })
        .toList();
  }

  /** Each caution once, however many of the tasks ask for it. */
  private static List<Row> cautions(Manuscript m, List<Task> tasks) {
    var numbers = new LinkedHashMap<String, TreeSet<Integer>>();
    for (var task : tasks) {
      for (var caution : task.action().cautions()) {
        var to = numbers.computeIfAbsent(caution.text(), text -> new TreeSet<>());
        task.settles().forEach(r -> to.add(r.number().orElseThrow()));
      }
    }
    return numbers.entrySet().stream()
        .map(
            e ->
                Row.of(
                    m.phrases().list(e.getValue().stream().map(String::valueOf).toList()),
                    e.getKey()))
        .toList();
  }

  private static String total(Manuscript m, String key, List<Task> tasks) {
    var costs = tasks.stream().map(Task::cost).flatMap(Optional::stream).toList();
    if (costs.isEmpty()) {
      return "";
    }
    var sum = sum(m, costs);
    int without =
        (int)
            tasks.stream()
                .filter(t -> t.cost().filter(c -> c.unpriced().isEmpty()).isEmpty())
                .count();
    return without == 0 ? m.words().say(key, sum) : m.words().count(key + "-partly", without, sum);
  }

  private static String sum(Manuscript m, List<Task.Cost> costs) {
    var least = costs.stream().map(Task.Cost::least).reduce(BigDecimal.ZERO, BigDecimal::add);
    var most = costs.stream().map(Task.Cost::most).reduce(BigDecimal.ZERO, BigDecimal::add);
    var currency = costs.get(0).currency();
    var sum = m.phrases().money(least, most, currency);
    return m.survey()
        .prices()
        .flatMap(Prices::tax)
        .map(
            tax ->
                m.words()
                    .say(
                        tax.included() ? "cost.tax-included" : "cost.tax-added",
                        sum,
                        m.phrases().percent(tax.percent().movePointLeft(2).doubleValue()),
                        m.phrases().money(tax.with(least), tax.with(most), currency)))
        .orElse(sum);
  }

  private static List<Done> done(Manuscript m) {
    var done = new ArrayList<Done>();
    for (var finding : m.assessment().findings()) {
      if (finding.seen().filter(Sighting.Seen::settled).isPresent()) {
        done.add(new Done(Reference.to(m, finding), what(finding)));
      }
    }
    return done;
  }

  static String what(Result finding) {
    return finding.finding().flatMap(Finding::done).orElse("");
  }
}

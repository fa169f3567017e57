package org.seafettle.report;

import java.util.Comparator;
import java.util.List;
import org.seafettle.assessment.Result;
import org.seafettle.assessment.Task;
import org.seafettle.catalogue.Action;
import org.seafettle.catalogue.Deadline;
import org.seafettle.catalogue.FindingClass;

/**
 * Something to do.
 *
 * @param number its place in the plan
 * @param on what it is done on
 * @param does what to do
 * @param first the first of it, where it is long
 * @param who may do it
 * @param by when
 * @param gain what it does to the index; empty where it does nothing by itself
 * @param cost what it costs
 * @param findings those it settles
 */
public record TaskRow(
    String number,
    String on,
    String does,
    String first,
    String who,
    String by,
    String gain,
    Cost cost,
    List<Reference> findings) {

  /** Two lines. */
  private static final int GLANCE = 130;

  private static final String NEXT = ". ";

  public TaskRow {
    findings = List.copyOf(findings);
  }

  /**
   * What it costs.
   *
   * @param sum as far as the price list goes; empty where it has nothing of it
   * @param without what the price list does not have; empty where it has all
   */
  public record Cost(String sum, String without) {}

  static TaskRow of(Manuscript m, Task task) {
    return new TaskRow(
        Integer.toString(m.number(task)),
        Phrases.capital(m.phrases().title(task.component())),
        task.action().does(),
        first(task.action().does()),
        who(m, task.action()),
        by(m, task),
        gain(m, task),
        cost(m, task),
        task.settles().stream()
            .sorted(Comparator.comparingInt((Result r) -> r.number().orElseThrow()))
            .map(r -> Reference.to(m, r))
            .toList());
  }

  /** As many sentences as are told at a glance, but one in any case. */
  private static String first(String does) {
    int within = does.lastIndexOf(NEXT, GLANCE);
    int end = within < 0 ? does.indexOf(NEXT) : within;
    return does.length() <= GLANCE || end < 0 ? does : does.substring(0, end + 1);
  }

  static boolean critical(Task task) {
    return task.gravest().atLeast(FindingClass.BEFORE_USE);
  }

  /** By when, with the day where the survey tells enough to reckon it. */
  private static String by(Manuscript m, Task task) {
    var by = m.by(task);
    return task.until()
        .filter(day -> task.by() != Deadline.AT_ONCE)
        .map(day -> m.words().say("by-day", by, m.phrases().shortDate(day)))
        .orElse(by);
  }

  static String who(Manuscript m, Action action) {
    return m.phrases().oneOf(action.who().stream().map(who -> m.words().of("who", who)).toList());
  }

  static String gain(Manuscript m, Task task) {
    var gain = task.gain();
    var from = Phrases.index(gain.from());
    var to = Phrases.index(gain.to());
    boolean shows = gain.points() > 0 && !from.equals(to);
    return shows ? m.words().say("gain", SubsystemRow.name(m, gain.subsystem()), from, to) : "";
  }

  private static Cost cost(Manuscript m, Task task) {
    return task.cost()
        .map(
            cost ->
                new Cost(
                    m.phrases().money(cost.least(), cost.most(), cost.currency()),
                    cost.unpriced().isEmpty()
                        ? ""
                        : m.words()
                            .say(
                                "cost.unpriced",
                                m.phrases()
                                    .list(cost.unpriced().stream().map(m::partName).toList()))))
        .orElse(new Cost("", ""));
  }
}

package org.seafettle.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.seafettle.assessment.Result;
import org.seafettle.catalogue.FindingClass;
import org.seafettle.catalogue.Subsystem;
import org.seafettle.survey.Component;
import org.seafettle.survey.Purpose;
import org.seafettle.survey.Work;

/**
 * The service log, and what comes next.
 *
 * @param entries what was done, oldest first
 * @param thisSeason what was done since the last survey, or within a year
 * @param due what falls due, the soonest first
 * @param state how the boat stands, by subsystem
 * @param layUp what matters for the winter, each with what was found
 */
public record LogPart(
    List<Entry> entries,
    List<Entry> thisSeason,
    List<DueRow> due,
    List<State> state,
    List<Row> layUp) {

  public LogPart {
    entries = List.copyOf(entries);
    thisSeason = List.copyOf(thisSeason);
    due = List.copyOf(due);
    state = List.copyOf(state);
    layUp = List.copyOf(layUp);
  }

  /**
   * An entry.
   *
   * @param date when
   * @param on what
   * @param what was done
   * @param by whom; empty where it was not written down
   * @param hours on the engine's meter then; empty where they were not written down
   */
  public record Entry(String date, String on, String what, String by, String hours) {}

  /**
   * How a subsystem stands.
   *
   * @param name of the subsystem
   * @param inOrder how many checks were looked at and are well
   * @param unseen what was not looked at; empty where all was
   */
  public record State(String name, String inOrder, String unseen) {}

  static LogPart of(Manuscript m) {
    var work = m.survey().work().stream().sorted(Comparator.comparing(Work::date)).toList();
    var since = since(m);
    return new LogPart(
        work.stream().map(w -> entry(m, w)).toList(),
        work.stream().filter(w -> w.date().isAfter(since)).map(w -> entry(m, w)).toList(),
        DueRow.all(m),
        states(m),
        layUp(m));
  }

  /** What is looked at only when a boat is laid up. */
  private static List<Row> layUp(Manuscript m) {
    return m.assessment().results().stream()
        .filter(r -> r.graded() && r.check().expected().equals(Set.of(Purpose.SEASON_END)))
        .map(r -> Row.of(m.look(r), laidUp(m, r)))
        .toList();
  }

  private static String laidUp(Manuscript m, Result result) {
    var seen = result.seen();
    return seen.isEmpty()
        ? m.words().say("lay-up.not-looked")
        : Phrases.capital(seen.get().outcome().saying().brief())
            + (seen.get().settled() ? m.words().say("lay-up.settled") : "");
  }

  private static LocalDate since(Manuscript m) {
    var past = m.assessment().history().past();
    return past.isEmpty()
        ? m.survey().occasion().date().minusYears(1)
        : past.get(past.size() - 1).date();
  }

  private static Entry entry(Manuscript m, Work work) {
    return new Entry(
        m.phrases().date(work.date()),
        Phrases.capital(m.survey().component(work.on()).map(m.phrases()::title).orElse(work.on())),
        work.what(),
        work.by().orElse(""),
        work.at().map(m.phrases()::quantity).orElse(""));
  }

  private static List<State> states(Manuscript m) {
    var states = new ArrayList<State>();
    for (var subsystem : Subsystem.values()) {
      var own =
          m.assessment().results().stream()
              .filter(r -> r.check().subsystem() == subsystem && r.graded())
              .toList();
      if (subsystem.optional() && own.isEmpty()) {
        continue;
      }
      states.add(
          new State(
              SubsystemRow.name(m, subsystem),
              Long.toString(own.stream().filter(LogPart::isWell).count()),
              told(m, own.stream().filter(r -> r.expected() && r.seen().isEmpty()))));
    }
    return states;
  }

  private static boolean isWell(Result result) {
    return result.seen().isPresent() && result.counts() == FindingClass.OK;
  }

  /** Checks with what they are on, the same check on several told once. */
  private static String told(Manuscript m, Stream<Result> results) {
    var on =
        results.collect(
            Collectors.groupingBy(
                r -> r.check().guidance().title(),
                LinkedHashMap::new,
                Collectors.mapping(Result::component, Collectors.toList())));
    return on.entrySet().stream()
        .map(e -> grouped(m, e.getKey(), e.getValue()))
        .collect(Collectors.joining(m.words().say("list.apart")));
  }

  private static String grouped(Manuscript m, String title, List<Component> on) {
    return on.stream().allMatch(c -> c.kind() == Component.Kind.BOAT)
        ? title
        : m.words()
            .say(
                "look.grouped",
                title,
                m.phrases().list(on.stream().map(m.phrases()::title).toList()));
  }
}

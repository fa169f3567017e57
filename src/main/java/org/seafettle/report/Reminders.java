package org.seafettle.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.seafettle.assessment.Assessment;
import org.seafettle.assessment.Due;
import org.seafettle.assessment.Result;
import org.seafettle.assessment.Task;
import org.seafettle.catalogue.Action;
import org.seafettle.catalogue.Outcome;
import org.seafettle.survey.Boat;
import org.seafettle.survey.Component;
import org.seafettle.survey.Engine;

/**
 * What to be reminded of on one boat: what falls due, and the tasks whose last day is known. A task
 * that waits for the first frost or the next start has no day and stands in the report only.
 *
 * @param boat her name
 * @param surveyed the day of the survey
 * @param all the soonest first
 */
public record Reminders(String boat, LocalDate surveyed, List<Reminder> all) {

  public Reminders {
    all = List.copyOf(all);
  }

  /**
   * A day to remember.
   *
   * @param key the same for the same thing on the same boat in every year
   * @param day never before the survey
   * @param title with the boat's name
   * @param text several lines
   */
  public record Reminder(String key, LocalDate day, String title, String text) {}

  /** The reminders of an assessment; the same input gives the same reminders. */
  public static Reminders of(Assessment assessment, Words words, Options options) {
    var survey = assessment.survey();
    var phrases = new Phrases(words, options.units(), survey);
    var m = new Manuscript(assessment, phrases, new Photographs(survey, phrases, Map.of()));
    var dues = assessment.plan().dues().stream().flatMap(d -> due(m, d).stream());
    var tasks = assessment.plan().tasks().stream().flatMap(t -> task(m, t).stream());
    return new Reminders(
        survey.boat().name(),
        survey.occasion().date(),
        Stream.concat(dues, tasks)
            .sorted(Comparator.comparing(Reminder::day).thenComparing(Reminder::key))
            .toList());
  }

  private static Optional<Reminder> due(Manuscript m, Due due) {
    var row = DueRow.of(m, due);
    var text = new ArrayList<String>();
    text.add(m.words().say("reminder.next", row.next()));
    text.add(interval(m, due, row.interval()));
    text.add(
        due.isAge()
            ? m.words().say("reminder.age", row.last())
            : m.words().say(due.isLook() ? "reminder.looked" : "reminder.last", row.last()));
    if (!row.overdue().isEmpty()) {
      text.add(0, Phrases.capital(row.overdue()) + ".");
    }
    if (due.isLook()) {
      text.addAll(due.result().check().guidance().how());
    } else {
      action(m, due.result()).ifPresent(a -> advice(m, a, text));
    }
    var boat = m.survey().boat().name();
    var title =
        due.overdue().isPresent()
            ? m.words().say("reminder.overdue", boat, row.what())
            : m.words().say("reminder.due", boat, row.what());
    return day(m, due)
        .map(
            day ->
                reminder(
                    m,
                    key(m, due.result().component(), due.result().check().id()),
                    day,
                    title,
                    text));
  }

  private static String interval(Manuscript m, Due due, String interval) {
    if (due.isAge()) {
      return m.words().say("reminder.life", interval);
    }
    boolean either = due.interval().hours().isPresent() && due.interval().months().isPresent();
    return either
        ? m.words().say("reminder.either", interval)
        : m.words().say("reminder.interval", interval);
  }

  /** What is overdue is done with the task that settles it, at the latest. */
  private static Optional<LocalDate> day(Manuscript m, Due due) {
    var today = m.survey().occasion().date();
    if (due.overdue().isEmpty()) {
      return due.next().map(day -> day.isBefore(today) ? today : day);
    }
    return m.assessment().plan().tasks().stream()
        .filter(t -> t.settles().contains(due.result()))
        .findFirst()
        .flatMap(Task::until)
        .or(() -> Optional.of(today));
  }

  /** What is to be done when nothing was done in time. */
  private static Optional<Action> action(Manuscript m, Result result) {
    return result.check().outcomes().stream()
        .max(Comparator.comparing(Outcome::findingClass))
        .flatMap(Outcome::advice)
        .map(Outcome.Advice::action)
        .map(action -> action.on(m.survey(), result.component()));
  }

  private static Optional<Reminder> task(Manuscript m, Task task) {
    var dues =
        m.assessment().plan().dues().stream().filter(d -> !d.isLook()).map(Due::result).toList();
    if (task.until().isEmpty() || dues.containsAll(task.settles())) {
      return Optional.empty();
    }
    var text = new ArrayList<String>();
    text.add(Phrases.capital(m.by(task)) + ".");
    task.settles().forEach(r -> text.add(Phrases.capital(m.headline(r)) + "."));
    advice(m, task.action(), text);
    return Optional.of(
        reminder(
            m,
            key(m, task.component(), "do " + task.action().id()),
            task.until().get(),
            m.words()
                .say(
                    "reminder.task",
                    m.survey().boat().name(),
                    m.phrases().title(task.component()),
                    task.action().does()),
            text));
  }

  private static void advice(Manuscript m, Action action, List<String> text) {
    text.add(action.does());
    text.add(m.words().say("reminder.who", TaskRow.who(m, action)));
    action.cautions().forEach(c -> text.add(m.words().say("reminder.caution", c.text())));
  }

  private static Reminder reminder(
      Manuscript m, String key, LocalDate day, String title, List<String> text) {
    var occasion = m.survey().occasion();
    text.add(m.words().say("reminder.from", occasion.id(), m.phrases().date(occasion.date())));
    text.add(m.words().say("reminder.first"));
    // calendars break lines themselves, and few of them know a space that does not break
    return new Reminder(key, day, plain(title), plain(String.join("\n", text)));
  }

  private static String plain(String text) {
    return text.replace('\u00A0', ' ');
  }

  /**
   * Hull number, serial number and names only: whatever may change from year to year is left out.
   */
  private static String key(Manuscript m, Component component, String what) {
    var serial =
        component instanceof Engine engine ? engine.plate().serial() : Optional.<String>empty();
    return Stream.of(
            Optional.of("seafettle"),
            Optional.of(boat(m.survey().boat())),
            Optional.of(component.id()),
            serial,
            Optional.of(what))
        .flatMap(Optional::stream)
        .collect(Collectors.joining("/"));
  }

  private static String boat(Boat boat) {
    return boat.plainHin().orElseGet(() -> boat.name() + " " + boat.built().orElse(0));
  }
}

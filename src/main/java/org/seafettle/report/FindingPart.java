package org.seafettle.report;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.seafettle.assessment.Result;
import org.seafettle.assessment.Sighting;
import org.seafettle.assessment.Task;
import org.seafettle.catalogue.Caution;
import org.seafettle.catalogue.FindingClass;
import org.seafettle.survey.Finding;

/**
 * A finding.
 *
 * @param heading its number, class and title
 * @param drawing the reading, drawn
 * @param found the facts
 * @param judged the opinion
 * @param causes what several findings together point to
 * @param action what to do, what it does to the index, and what can hurt while doing it
 * @param photos the photographs
 * @param whole whether it is short enough to stay on one page
 */
public record FindingPart(
    Heading heading,
    Drawing drawing,
    List<Row> found,
    List<Row> judged,
    List<Row> causes,
    ActionPart action,
    List<PhotoPart> photos,
    boolean whole) {

  /** What takes up more than half a page could leave as much of the last one empty. */
  private static final int MOST_LETTERS = 2600;

  /** As many letters take up the room of a photograph, of a drawing, of a line that is begun. */
  private static final int OF_PHOTOGRAPH = 1300;

  private static final int OF_DRAWING = 350;

  private static final int OF_LINE = 45;

  public FindingPart {
    found = List.copyOf(found);
    judged = List.copyOf(judged);
    causes = List.copyOf(causes);
    photos = List.copyOf(photos);
  }

  /**
   * A reading, drawn.
   *
   * @param scale against its limits, where it has some
   * @param columns cylinders or cells side by side, where there are several
   * @param caption the reading in words; empty where there is none
   */
  public record Drawing(Optional<Scale> scale, Optional<Columns> columns, String caption) {}

  /**
   * How a finding begins.
   *
   * @param number its number
   * @param anchor by which it is referred to
   * @param findingClass its class, with what must not be done or by when
   * @param standing how it stands to earlier surveys; empty where there are none
   * @param critical whether it has to be settled before use
   * @param title what was found on what
   * @param means what it reveals; empty where the title says it all
   */
  public record Heading(
      String number,
      String anchor,
      String findingClass,
      String standing,
      boolean critical,
      String title,
      String means) {}

  /**
   * What to do about a finding.
   *
   * @param rows the lines
   * @param cautions what can hurt
   */
  public record ActionPart(List<Row> rows, List<String> cautions) {

    public ActionPart {
      rows = List.copyOf(rows);
      cautions = List.copyOf(cautions);
    }
  }

  static FindingPart of(Manuscript m, Result finding) {
    var measured = finding.seen().flatMap(Sighting.Seen::measured);
    var reading = measured.map(x -> new ReadingWords(m, finding, x));
    var ids = finding.finding().map(Finding::photos).orElse(List.of());
    var drawing =
        new Drawing(
            measured.flatMap(x -> new ReadingScale(m, finding, x).scale()),
            measured.flatMap(x -> Columns.of(m, x.measure())),
            reading.map(ReadingWords::caption).orElse(""));
    var found = Evidenced.found(m, finding, reading);
    var judged = Evidenced.judged(m, finding, reading);
    var causes = Evidenced.causes(m, finding);
    var action = action(m, finding);
    return new FindingPart(
        heading(m, finding),
        drawing,
        found,
        judged,
        causes,
        action,
        m.photographs().of(ids, Phrases.capital(m.headline(finding))),
        ids.size() * OF_PHOTOGRAPH
                + letters(drawing, List.of(found, judged, causes, action.rows()), action.cautions())
            < MOST_LETTERS);
  }

  private static int letters(Drawing drawing, List<List<Row>> tables, List<String> cautions) {
    int drawings =
        (int) Stream.concat(drawing.scale().stream(), drawing.columns().stream()).count();
    int told =
        tables.stream()
            .flatMap(List::stream)
            .mapToInt(row -> row.stress().length() + row.text().length() + OF_LINE)
            .sum();
    return drawings * OF_DRAWING + told + cautions.stream().mapToInt(String::length).sum();
  }

  private static Heading heading(Manuscript m, Result finding) {
    var reference = Reference.to(m, finding);
    var seen = finding.seen().orElseThrow();
    var critical = finding.counts().atLeast(FindingClass.BEFORE_USE);
    return new Heading(
        reference.number(),
        reference.anchor(),
        findingClass(m, finding, seen),
        FollowedRow.standing(m, finding),
        critical,
        Phrases.capital(m.headline(finding)),
        Manuscript.outcome(finding).saying().means());
  }

  /** Its class with what it forbids, or by when the action is due that settles it. */
  private static String findingClass(Manuscript m, Result finding, Sighting.Seen seen) {
    var word = Phrases.capital(m.words().of("class", seen.found()));
    if (seen.settled()) {
      return m.words().say("class.settled", word);
    }
    return seen.stop()
        .map(s -> m.words().of("order", s))
        .or(() -> m.taskFor(finding).map(m::by))
        .map(what -> m.words().say("class.with", word, what))
        .orElse(word);
  }

  private static ActionPart action(Manuscript m, Result finding) {
    var seen = finding.seen().orElseThrow();
    if (seen.settled()) {
      return new ActionPart(
          List.of(Row.of(m.words().say("row.done"), PlanPart.what(finding))), List.of());
    }
    var task = m.taskFor(finding).orElseThrow();
    var stop = seen.stop().map(s -> m.words().of("order-sentence", s)).orElse("");
    return new ActionPart(
        List.of(
            new Row(m.words().say("row.do"), stop, task.action().does()),
            Row.of(m.words().say("row.who"), whoAndWhen(m, task))),
        task.action().cautions().stream().map(Caution::text).toList());
  }

  /** One action is due once, however many findings it settles. */
  private static String whoAndWhen(Manuscript m, Task task) {
    var gain = TaskRow.gain(m, task);
    return m.words()
        .say(
            gain.isEmpty() ? "who-when-action" : "who-when-gain",
            Phrases.capital(TaskRow.who(m, task.action())),
            m.by(task),
            Integer.toString(m.number(task)),
            gain);
  }
}

package org.seafettle.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.seafettle.assessment.EngineGrade.LedgerLine;
import org.seafettle.assessment.EngineGrade.SubsystemGrade;
import org.seafettle.survey.Engine;

/**
 * How the index of a subsystem came about, so that anyone can redo it.
 *
 * @param title subsystem, and of which engine
 * @param lines what was taken, largest first
 * @param taken the sum, in numbers
 * @param index 100 less the sum, and its word
 * @param worst how the index at worst comes about; empty where nothing is open
 */
public record LedgerPart(String title, List<Line> lines, String taken, String index, String worst) {

  public LedgerPart {
    lines = List.copyOf(lines);
  }

  /**
   * A line of the sum.
   *
   * @param finding which
   * @param what was found
   * @param findingClass its class
   * @param deduct what the class takes
   * @param weight the share of it that counts here
   * @param taken deduct times weight
   */
  public record Line(
      Reference finding,
      String what,
      String findingClass,
      String deduct,
      String weight,
      String taken) {}

  static List<LedgerPart> all(Manuscript m) {
    var own =
        m.assessment().engines().stream()
            .flatMap(e -> m.ownOf(e).stream().map(s -> of(m, s, Optional.of(e.engine()))));
    var shared = m.sharedByAll().stream().map(s -> of(m, s, Optional.<Engine>empty()));
    return java.util.stream.Stream.concat(own, shared).toList();
  }

  private static LedgerPart of(Manuscript m, SubsystemGrade graded, Optional<Engine> engine) {
    var name = Phrases.capital(SubsystemRow.name(m, graded.subsystem()));
    double sum = graded.ledger().stream().mapToDouble(LedgerLine::taken).sum();
    return new LedgerPart(
        m.words()
            .say(
                "ledger.title",
                name,
                engine.map(m.phrases()::title).orElse(m.words().say("ledger.shared"))),
        graded.ledger().stream().map(l -> line(m, l)).toList(),
        m.phrases().exact(sum),
        m.words()
            .say(
                sum > 100 ? "ledger.index-floor" : "ledger.index",
                m.phrases().exact(sum),
                m.phrases().exact(graded.grade().high()),
                Integer.toString(graded.grade().printed()),
                m.phrases().condition(graded.grade())),
        worst(m, graded));
  }

  private static Line line(Manuscript m, LedgerLine line) {
    int deduct = line.result().counts().deduct();
    return new Line(
        Reference.to(m, line.result()),
        Phrases.capital(m.headline(line.result())),
        m.words().of("class", line.result().counts()),
        Integer.toString(deduct),
        weight(m, line.weight()),
        m.phrases().exact(line.taken()));
  }

  /** Halves as fractions, since that is how they are meant. */
  private static String weight(Manuscript m, double weight) {
    return weight == 1
        ? "1"
        : m.words().say("ledger.weight", Long.toString(Math.round(1 / weight)));
  }

  private static String worst(Manuscript m, SubsystemGrade graded) {
    if (graded.grade().certain()) {
      return "";
    }
    var deducts =
        graded.open().stream()
            .collect(
                Collectors.groupingBy(
                    r -> r.worst().findingClass().deduct(),
                    () -> new TreeMap<>(Comparator.<Integer>reverseOrder()),
                    Collectors.counting()));
    var open = new ArrayList<String>();
    deducts.forEach(
        (deduct, times) -> open.add(m.words().say("ledger.times", times + "", deduct + "")));
    return m.words()
        .count(
            "ledger.worst",
            graded.open().size(),
            m.phrases().list(open),
            m.phrases().indexInSentence(graded.grade(), graded.grade().low()));
  }
}

package org.seafettle.report;

import java.util.ArrayList;
import java.util.Optional;
import org.seafettle.assessment.ConditionWord;
import org.seafettle.assessment.EngineGrade.SubsystemGrade;
import org.seafettle.assessment.Grade;
import org.seafettle.catalogue.Subsystem;

/**
 * A subsystem's grade in a line.
 *
 * @param name of the subsystem
 * @param index as far as seen
 * @param word for it, or that it is not graded
 * @param worst index and word at worst; empty where nothing is open
 * @param seen the share that was seen
 * @param scale the same drawn
 * @param why what decides it
 */
public record SubsystemRow(
    String name, String index, String word, String worst, String seen, Scale scale, String why) {

  /** The gravest reason is told, the others are counted: each has its finding. */
  private static final int MOST_REASONS = 1;

  static SubsystemRow of(Manuscript m, SubsystemGrade graded) {
    var grade = graded.grade();
    var name = Phrases.capital(name(m, graded.subsystem()));
    return new SubsystemRow(
        name,
        Integer.toString(grade.printed()),
        m.phrases().condition(grade),
        m.phrases().atWorst(grade),
        m.phrases().percent(grade.coverage()),
        scale(grade, says(m, name, grade)),
        why(m, graded));
  }

  static String name(Manuscript m, Subsystem subsystem) {
    boolean inboard = m.survey().engines().stream().noneMatch(e -> e.type().isOutboard());
    return subsystem == Subsystem.POWERHEAD && inboard
        ? m.words().say("subsystem.powerhead-inboard")
        : m.words().of("subsystem", subsystem);
  }

  private static String says(Manuscript m, String name, Grade grade) {
    var says =
        m.words().say("scale.index", name, grade.printed() + "", m.phrases().condition(grade));
    return grade.certain()
        ? says
        : m.words().say("scale.index-at-worst", says, m.phrases().atWorst(grade));
  }

  static Scale scale(Grade grade, String says) {
    var bands = new ArrayList<Scale.Band>();
    var ticks = new ArrayList<Scale.Tick>();
    double to = 100;
    for (var word : ConditionWord.values()) {
      bands.add(0, Ruler.INDEX.band(word.from(), to, tint(word), ""));
      ticks.add(0, Ruler.INDEX.tick(word.from(), Integer.toString(word.from())));
      to = word.from();
    }
    return new Scale(
        bands,
        ticks,
        Ruler.INDEX.at(grade.high()),
        grade.certain() ? Optional.empty() : Optional.of(Ruler.INDEX.at(grade.low())),
        Optional.empty(),
        says);
  }

  private static Scale.Tint tint(ConditionWord word) {
    return switch (word.zone()) {
      case 1 -> Scale.Tint.SOUND;
      case 2 -> Scale.Tint.MIDDLE;
      default -> Scale.Tint.GRAVE;
    };
  }

  private static String why(Manuscript m, SubsystemGrade graded) {
    var briefs =
        graded.ledger().stream()
            .map(line -> Manuscript.outcome(line.result()).saying().brief())
            .distinct()
            .toList();
    var said = new ArrayList<String>();
    briefs.stream().limit(MOST_REASONS).forEach(said::add);
    if (briefs.size() > MOST_REASONS) {
      said.add(m.words().count("why.more", briefs.size() - MOST_REASONS));
    }
    graded
        .couldHide()
        .ifPresent(
            o -> said.add(m.words().say("why.unseen", m.words().of("class", o.findingClass()))));
    return said.isEmpty() ? m.words().say("why.nothing") : m.phrases().series(said);
  }
}

package org.seafettle.report;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.seafettle.assessment.EngineGrade;
import org.seafettle.survey.Engine;

/**
 * An engine's grade.
 *
 * @param title its name
 * @param plate what it is
 * @param index its index in a sentence
 * @param subsystems weakest first; what is the same for every engine is told elsewhere
 */
public record EnginePart(String title, String plate, String index, List<SubsystemRow> subsystems) {

  public EnginePart {
    subsystems = List.copyOf(subsystems);
  }

  static EnginePart of(Manuscript m, EngineGrade graded) {
    return new EnginePart(
        Phrases.capital(m.phrases().title(graded.engine())),
        plate(m, graded.engine()),
        index(m, graded),
        m.ownOf(graded).stream().map(s -> SubsystemRow.of(m, s)).toList());
  }

  /** Maker, model, kind, power, year, serial number and hours, as far as they are known. */
  static String plate(Manuscript m, Engine engine) {
    var plate = engine.plate();
    return Stream.of(
            named(plate),
            Optional.of(m.words().of("engine", engine.type())),
            engine.power().map(m.phrases()::quantity),
            plate.year().isPresent()
                ? Optional.of(Integer.toString(plate.year().getAsInt()))
                : Optional.<String>empty(),
            Optional.of(
                plate
                    .serial()
                    .map(s -> m.words().say("plate.serial", s))
                    .orElseGet(() -> m.words().say("plate.no-serial"))),
            Optional.of(
                engine
                    .hours()
                    .map(h -> m.words().say("plate.hours", m.phrases().quantity(h)))
                    .orElseGet(() -> m.words().say("plate.no-hours"))))
        .flatMap(Optional::stream)
        .collect(Collectors.joining(m.words().say("list.between")));
  }

  private static Optional<String> named(Engine.Plate plate) {
    var named =
        Stream.of(plate.maker(), plate.model())
            .flatMap(Optional::stream)
            .collect(Collectors.joining(" "));
    return Optional.of(named).filter(n -> !n.isEmpty());
  }

  private static String index(Manuscript m, EngineGrade graded) {
    var grade = graded.grade();
    var set =
        m.words()
            .say(
                "engine-index",
                grade.printed() + "",
                m.phrases().condition(grade),
                SubsystemRow.name(m, graded.decidedBy()));
    return grade.certain()
        ? set
        : m.words()
            .say("engine-index.at-worst", set, m.phrases().indexInSentence(grade, grade.low()));
  }
}

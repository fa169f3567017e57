package org.seafettle.assessment;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.seafettle.catalogue.Outcome;
import org.seafettle.catalogue.Subsystem;
import org.seafettle.survey.Engine;

/**
 * The grade of an engine: that of its weakest subsystem.
 *
 * @param engine the engine
 * @param grade lowest of the lows, lowest of the highs
 * @param subsystems weakest first, as far as seen, then at worst
 */
public record EngineGrade(Engine engine, Grade grade, List<SubsystemGrade> subsystems) {

  public EngineGrade {
    subsystems = List.copyOf(subsystems);
  }

  static EngineGrade of(Engine engine, List<SubsystemGrade> subsystems) {
    var sorted =
        subsystems.stream()
            .sorted(
                Comparator.comparingDouble((SubsystemGrade s) -> s.grade().high())
                    .thenComparingDouble(s -> s.grade().low())
                    .thenComparing(SubsystemGrade::subsystem))
            .toList();
    return new EngineGrade(
        engine, Scoring.weakest(sorted.stream().map(SubsystemGrade::grade).toList()), sorted);
  }

  /** The subsystem that decides the index as far as seen. */
  public Subsystem decidedBy() {
    return subsystems.get(0).subsystem();
  }

  /**
   * The grade of a subsystem, and how it came about.
   *
   * @param subsystem which
   * @param grade the grade
   * @param ledger every deduct, largest first
   * @param open the expected checks that were not seen, gravest possibility first
   * @param flips what the index would be if a reading that is too close to call lay on the other
   *     side of its limit
   */
  public record SubsystemGrade(
      Subsystem subsystem,
      Grade grade,
      List<LedgerLine> ledger,
      List<Result> open,
      List<Flip> flips) {

    public SubsystemGrade {
      ledger = List.copyOf(ledger);
      open = List.copyOf(open);
      flips = List.copyOf(flips);
    }

    /** The worst that the unseen checks could hide, where that is more than nothing. */
    public Optional<Outcome> couldHide() {
      return open.stream().findFirst().map(Result::worst);
    }
  }

  /**
   * One line of the sum.
   *
   * @param result the finding
   * @param weight 1, 1/2, 1/4 …
   * @param taken the deduct times the weight
   */
  public record LedgerLine(Result result, double weight, double taken) {}

  /**
   * The index if one reading were judged the other way.
   *
   * @param result the reading
   * @param high the index as far as seen, then
   */
  public record Flip(Result result, double high) {}
}

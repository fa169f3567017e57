package org.seafettle.catalogue;

import java.time.LocalDate;
import java.time.Month;
import java.util.Optional;
import java.util.OptionalInt;
import org.seafettle.formula.engine.HourMeter;
import org.seafettle.formula.engine.HullNumber;
import org.seafettle.quantity.MeasuredUnit;
import org.seafettle.survey.Engine;

/** What derivations compute from the hours, the papers and the revolutions of an engine. */
final class Running {

  private static final double DAYS_PER_YEAR = 365.25;

  private Running() {}

  /** How far apart two hour meters are: 1 is as far as is still agreement. */
  static double meterDisagreement(Inputs in) {
    return HourMeter.disagreement(
        in.get("control-unit"), Derivation.either(in.find("panel"), () -> meter(in)));
  }

  /**
   * From an earlier reading and the years since, else from new, taken as the middle of its year.
   */
  static double hoursPerYear(Inputs in) {
    var today = today(in);
    double now = Derivation.either(in.find("panel"), () -> meter(in));
    return in.find("earlier").isPresent()
        ? HourMeter.hoursPerYear(
            in.get("earlier"),
            today.minusDays(Math.round(in.get("years-between") * DAYS_PER_YEAR)),
            now,
            today)
        : HourMeter.hoursPerYear(0, LocalDate.of(made(in), Month.JULY, 1), now, today);
  }

  /** Years from the hull's model year, in its number of 33 CFR 181.25, to that of the engine. */
  static double yearsAfterHull(Inputs in) {
    var hin = in.facts().survey().boat().hin().orElseThrow(() -> Known.missing("hull-number"));
    double made = Derivation.either(in.find("engine-year"), () -> made(in));
    return HullNumber.parse(hin).yearsToEngineOf(made, today(in).getYear());
  }

  /** Revolutions beyond the end of the maker's range that was missed; 0 within, minus below. */
  static double speedOffRange(Inputs in) {
    double speed = in.get("speed");
    return speed - Math.max(in.get("range-from"), Math.min(in.get("range-to"), speed));
  }

  private static LocalDate today(Inputs in) {
    return in.facts().survey().occasion().date();
  }

  private static double meter(Inputs in) {
    return engine(in)
        .flatMap(Engine::hours)
        .orElseThrow(() -> Known.missing("engine-hours"))
        .in(MeasuredUnit.HOUR);
  }

  private static int made(Inputs in) {
    return engine(in).map(Engine::plate).map(Engine.Plate::year).stream()
        .flatMapToInt(OptionalInt::stream)
        .findFirst()
        .orElseThrow(() -> Known.missing("engine-plate-year"));
  }

  private static Optional<Engine> engine(Inputs in) {
    return in.facts().component() instanceof Engine engine ? Optional.of(engine) : Optional.empty();
  }
}

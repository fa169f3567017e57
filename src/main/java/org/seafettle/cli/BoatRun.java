package org.seafettle.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.seafettle.json.SurveyGlance;
import org.seafettle.problem.Problem;
import org.seafettle.problem.Refused;
import org.seafettle.yard.Entry;
import org.seafettle.yard.Faulty;
import org.seafettle.yard.Kept;
import org.seafettle.yard.Surveyed;

/** Makes one boat's report, unless the very same one is there already. Safe for many threads. */
final class BoatRun {

  /** The pages themselves while they are set, in bytes. */
  private static final long PAGES = 48L << 20;

  private final Pipe pipe;
  private final Path out;
  private final SeasonState state;
  private final String settings;
  private final Allowance memory = new Allowance(Runtime.getRuntime().maxMemory());

  /**
   * @param settings whatever changes a report beside its survey
   */
  BoatRun(Pipe pipe, Path out, SeasonState state, String settings) {
    this.pipe = pipe;
    this.out = out;
    this.state = state;
    this.settings = settings;
  }

  /** How it ended. */
  enum Ended {
    MADE,
    UNCHANGED,
    REFUSED,
    /** The program itself is at fault. */
    FAULT
  }

  /**
   * Makes a report and keeps what the season needs of it.
   *
   * @param name of the report, without an ending
   */
  Ended run(String source, Path survey, String name) throws IOException {
    var glance = SurveyGlance.inputs(survey);
    var inputs = Sha256.of(glance.sha256() + " " + settings);
    var file = name + ".pdf";
    if (isThere(source, inputs, file)) {
      return Ended.UNCHANGED;
    }
    try {
      var made = memory.within(need(glance), () -> pipe.make(survey, state.prints(), step -> {}));
      new Destination(out, state.workbench().folder()).put(Map.of(file, made.pdf()));
      var entry = Surveyed.of(source, file, made.judged(), made.written(), made.reminders().get());
      state.keep(new Kept(inputs, Sha256.of(made.pdf()), entry));
      return Ended.MADE;
    } catch (Refused refused) {
      state.keep(faulty(inputs, source, refused.problems()));
      return Ended.REFUSED;
    } catch (RuntimeException | OutOfMemoryError fault) {
      var problem =
          Problem.of(
              "The program itself is at fault: " + fault,
              "Make this report alone with --debug, and report what it prints.");
      state.keep(faulty(inputs, source, List.of(problem)));
      return Ended.FAULT;
    }
  }

  private static Kept faulty(String inputs, String source, List<Problem> problems) {
    return new Kept(inputs, "", Faulty.of(source, problems));
  }

  /** A decoded photograph is some ten times its file; three copies of each file are about. */
  private static long need(SurveyGlance.Inputs inputs) {
    return PAGES + 3 * inputs.bytes() + 24 * inputs.largest();
  }

  private boolean isThere(String source, String inputs, String file) throws IOException {
    var kept = state.kept(source).filter(k -> k.inputs().equals(inputs));
    var before = kept.flatMap(k -> reportOf(k.entry()));
    if (kept.isEmpty()
        || before.isEmpty()
        || !Sha256.of(out.resolve(before.get().report())).equals(kept.get().report())) {
      return false;
    }
    if (!before.get().report().equals(file)) {
      rename(kept.get(), before.get(), file);
    }
    return true;
  }

  private static Optional<Surveyed> reportOf(Entry entry) {
    return entry instanceof Surveyed surveyed ? Optional.of(surveyed) : Optional.empty();
  }

  /** Another boat of the same name has come or gone since, and so the names have changed. */
  private void rename(Kept kept, Surveyed before, String file) throws IOException {
    var old = out.resolve(before.report());
    new Destination(out, state.workbench().folder()).put(Map.of(file, Files.readAllBytes(old)));
    state.keep(new Kept(kept.inputs(), kept.report(), before.under(file)));
    if (Sha256.of(old).equals(kept.report())) {
      Files.delete(old);
    }
  }
}

package org.seafettle.cli;

import java.util.Locale;
import java.util.function.LongSupplier;

/** How far a long run is, and how much longer it takes, for a person who is waiting. */
final class ProgressLine {

  private static final int WIDTH = 30;
  private static final double NANOS = 1e9;

  private final Console console;
  private final int all;
  private final LongSupplier clock;
  private final long start;
  private int done;
  private int worked;

  /**
   * @param clock nanoseconds since whenever
   */
  ProgressLine(Console console, int all, LongSupplier clock) {
    this.console = console;
    this.all = all;
    this.clock = clock;
    this.start = clock.getAsLong();
  }

  /** One more is done. What took no work tells nothing of how long the rest will take. */
  void step(boolean work) {
    done++;
    worked += work ? 1 : 0;
    int filled = WIDTH * done / all;
    console.progress(
        "#".repeat(filled) + "-".repeat(WIDTH - filled) + " " + done + " of " + all + left());
  }

  double seconds() {
    return (clock.getAsLong() - start) / NANOS;
  }

  private String left() {
    if (worked == 0 || done == all) {
      return "";
    }
    long left = Math.round(seconds() / worked * (all - done));
    return left < 60
        ? ", about " + left + " s left"
        : String.format(Locale.ROOT, ", about %d min left", (left + 30) / 60);
  }
}

package org.seafettle.cli;

import java.io.PrintWriter;
import java.util.List;
import org.seafettle.problem.Problem;

/**
 * Where the program speaks.
 *
 * @param out for what was asked for
 * @param err for progress, problems and faults
 * @param terminal whether a person is watching; in a pipe progress is kept quiet
 */
record Console(PrintWriter out, PrintWriter err, boolean terminal) {

  /** Results go to the standard output, one line each. */
  void say(String text) {
    out.println(text);
    out.flush();
  }

  /** Something that the caller should know and that stops nothing. */
  void remark(String text) {
    err.println(text);
    err.flush();
  }

  /** A step of the way, for a person who is waiting. */
  void progress(String step) {
    if (terminal) {
      err.print("\r\u001b[K" + step);
      err.flush();
    }
  }

  void progressEnds() {
    progress("");
  }

  void refuse(List<Problem> problems) {
    problems.forEach(problem -> err.println(problem));
    err.println();
    err.println(problems.size() == 1 ? "1 fault." : problems.size() + " faults.");
    err.flush();
  }
}

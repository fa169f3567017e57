package org.seafettle.cli;

import java.io.PrintWriter;
import java.io.StringWriter;

/**
 * One run of the program, in this process.
 *
 * @param code its exit code
 * @param out what it said on the standard output
 * @param err what it said on the standard error
 */
record Run(int code, String out, String err) {

  static Run of(String... arguments) {
    return of(false, arguments);
  }

  /** As if a person were watching. */
  static Run onATerminal(String... arguments) {
    return of(true, arguments);
  }

  private static Run of(boolean terminal, String... arguments) {
    var out = new StringWriter();
    var err = new StringWriter();
    var console = new Console(new PrintWriter(out), new PrintWriter(err), terminal);
    int code = new Program(console).run(arguments);
    return new Run(code, out.toString(), err.toString());
  }
}

package org.seafettle.cli;

/** What the program says to the one that called it, as README documents. */
public enum ExitCode {
  /** All that was asked for was done. */
  DONE(0),
  /** The program itself is at fault. */
  FAULT(1),
  /** The command line was not understood. */
  USAGE(2),
  /** The survey, its photographs or the templates were refused; nothing was written. */
  REFUSED(3),
  /** Something could not be read or written. */
  STORAGE(4);

  private final int code;

  ExitCode(int code) {
    this.code = code;
  }

  public int code() {
    return code;
  }
}

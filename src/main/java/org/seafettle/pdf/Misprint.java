package org.seafettle.pdf;

import java.util.List;

/**
 * Something would have been lost or wrong on paper, so nothing was printed. Input is checked long
 * before it comes here: this is a fault of a template or of the program, not of the survey.
 */
public final class Misprint extends IllegalStateException {

  private static final long serialVersionUID = 1L;

  private final transient List<String> faults;

  Misprint(List<String> faults) {
    super(String.join("\n", faults));
    this.faults = List.copyOf(faults);
  }

  Misprint(List<String> faults, Throwable cause) {
    super(String.join("\n", faults), cause);
    this.faults = List.copyOf(faults);
  }

  /** Every fault found, each named once, in the order in which they were met. */
  public List<String> faults() {
    return faults;
  }
}

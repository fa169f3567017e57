package org.seafettle.cli;

import org.seafettle.photo.Original;
import org.seafettle.photo.Print;
import org.seafettle.photo.PrintOrder;
import org.seafettle.problem.Refused;

/** Where the prints of photographs come from. */
@FunctionalInterface
interface Prints {

  /** Each is made when it is asked for. */
  Prints MADE = (original, order) -> Print.of(original, order).bytes();

  /**
   * The file of a print.
   *
   * @throws Refused where the picture's pixels cannot be decoded
   */
  byte[] of(Original original, PrintOrder order);
}

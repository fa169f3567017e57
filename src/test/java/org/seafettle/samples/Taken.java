package org.seafettle.samples;

import java.util.Optional;

/**
 * What the camera is made to write beside the picture.
 *
 * @param at date and time as a camera writes them, or none
 * @param offset of its clock from UTC, where it writes one
 * @param orientation 1, 3, 6 or 8: how the stored picture has to be turned to stand upright
 * @param located whether a position was written, one far out at sea where nothing was photographed
 */
record Taken(Optional<String> at, Optional<String> offset, int orientation, boolean located) {

  /** Degrees north and east of a spot in the open Atlantic. */
  static final double[] SPOT = {34.5, -41.25};

  static Taken at(String dateAndTime) {
    return new Taken(Optional.of(dateAndTime), Optional.empty(), 1, false);
  }

  static Taken unknown() {
    return new Taken(Optional.empty(), Optional.empty(), 1, false);
  }

  Taken offset(String zone) {
    return new Taken(at, Optional.of(zone), orientation, located);
  }

  Taken turned(int tag) {
    return new Taken(at, offset, tag, located);
  }

  Taken somewhere() {
    return new Taken(at, offset, orientation, true);
  }
}

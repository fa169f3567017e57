package org.seafettle.photo;

import java.util.Optional;

/**
 * What the camera wrote down beside the picture (EXIF, CIPA DC-008).
 *
 * @param readable whether what was written could be read; true where nothing was written
 * @param orientation how to turn the stored picture; upright where the camera says nothing
 * @param taken when, by DateTimeOriginal or else DateTimeDigitized; empty where there is no date or
 *     what stands there is none
 * @param positionRecorded whether anything about the place was written, readable or not
 * @param position where, if that could be read
 */
public record Metadata(
    boolean readable,
    Orientation orientation,
    Optional<Taken> taken,
    boolean positionRecorded,
    Optional<Position> position) {

  static final Metadata NONE =
      new Metadata(true, Orientation.UPRIGHT, Optional.empty(), false, Optional.empty());

  static final Metadata UNREADABLE =
      new Metadata(false, Orientation.UPRIGHT, Optional.empty(), false, Optional.empty());
}

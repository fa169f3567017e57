package org.seafettle.photo;

import java.util.Optional;
import org.seafettle.problem.Refused;

/**
 * A TIFF file (revision 6.0); of several pages the first is the picture.
 *
 * @param picture the whole file
 */
record TiffFile(byte[] picture) implements Container {

  private static final int SUBFILE_TYPE = 254;
  private static final int STRIP_OFFSETS = 273;
  private static final int STRIP_LENGTHS = 279;
  private static final int TILE_OFFSETS = 324;
  private static final int TILE_LENGTHS = 325;

  static TiffFile open(byte[] bytes) {
    var tags = Tags.read(bytes).orElseThrow(() -> Container.damaged(Format.TIFF));
    if (tags.number(Tags.MAIN, SUBFILE_TYPE).orElse(0) % 2 == 1 || Format.reads(bytes, 8, "CR")) {
      throw Refused.because(
          "This is a camera's raw picture, which cannot be read; " + Format.ALL_READ + " are.",
          "Develop it to JPEG and name the new file.");
    }
    boolean strips = isInside(tags, STRIP_OFFSETS, STRIP_LENGTHS, bytes.length);
    if (!strips && !isInside(tags, TILE_OFFSETS, TILE_LENGTHS, bytes.length)) {
      throw Container.cutShort(Format.TIFF);
    }
    return new TiffFile(bytes);
  }

  private static boolean isInside(Tags tags, int offsets, int lengths, int end) {
    int[] from = tags.numbers(Tags.MAIN, offsets);
    int[] length = tags.numbers(Tags.MAIN, lengths);
    for (int i = 0; i < Math.min(from.length, length.length); i++) {
      if (Integer.toUnsignedLong(from[i]) + Integer.toUnsignedLong(length[i]) > end) {
        return false;
      }
    }
    return from.length > 0 && from.length == length.length;
  }

  @Override
  public Format format() {
    return Format.TIFF;
  }

  @Override
  public Optional<byte[]> exif() {
    return Optional.of(picture);
  }
}

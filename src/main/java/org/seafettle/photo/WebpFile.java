package org.seafettle.photo;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;
import java.util.Optional;

/**
 * A WebP file (RFC 9649).
 *
 * @param picture the whole file
 * @param exif its EXIF chunk
 */
record WebpFile(byte[] picture, Optional<byte[]> exif) implements Container {

  private static final int FIRST_CHUNK = 12;

  static WebpFile open(byte[] bytes) {
    var in = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
    long end = 8 + Integer.toUnsignedLong(in.getInt(4));
    if (end > bytes.length) {
      throw Container.cutShort(Format.WEBP);
    }
    var exif = Optional.<byte[]>empty();
    long at = FIRST_CHUNK;
    while (at + 8 <= end) {
      long length = Integer.toUnsignedLong(in.getInt((int) at + 4));
      if (at + 8 + length > end) {
        throw Container.damaged(Format.WEBP);
      }
      if (Format.reads(bytes, (int) at, "EXIF")) {
        exif = Optional.of(Arrays.copyOfRange(bytes, (int) at + 8, (int) (at + 8 + length)));
      }
      at += 8 + length + length % 2;
    }
    return new WebpFile(bytes, exif.map(WebpFile::bare));
  }

  /** Some writers put the introduction of the JPEG segment before the block. */
  private static byte[] bare(byte[] exif) {
    return Format.reads(exif, 0, "Exif\0\0") ? Arrays.copyOfRange(exif, 6, exif.length) : exif;
  }

  @Override
  public Format format() {
    return Format.WEBP;
  }
}

package org.seafettle.photo;

import java.io.IOException;
import javax.imageio.IIOException;
import javax.imageio.stream.ImageInputStreamImpl;

/**
 * A picture's bytes as a decoder reads them. Some decoders go on for millions of pixels after the
 * last byte, each of them grey, so that this ends with a fault.
 */
final class Pixels extends ImageInputStreamImpl {

  /** Decoders look ahead; what they read behind the end within this does not matter. */
  private static final int LOOKS_BEHIND_END = 1_000;

  private final byte[] bytes;
  private int looksBehindEnd;

  Pixels(byte[] bytes) {
    this.bytes = bytes;
  }

  @Override
  public int read() throws IOException {
    setBitOffset(0);
    if (streamPos >= bytes.length) {
      return behindEnd();
    }
    return bytes[(int) streamPos++] & 0xff;
  }

  @Override
  public int read(byte[] into, int offset, int length) throws IOException {
    setBitOffset(0);
    if (length > 0 && streamPos >= bytes.length) {
      return behindEnd();
    }
    int from = (int) Math.min(streamPos, bytes.length);
    int read = Math.min(length, bytes.length - from);
    System.arraycopy(bytes, from, into, offset, read);
    streamPos += read;
    return read;
  }

  @Override
  public long length() {
    return bytes.length;
  }

  private int behindEnd() throws IOException {
    looksBehindEnd++;
    if (looksBehindEnd > LOOKS_BEHIND_END) {
      throw new IIOException("the pixels end too early");
    }
    return -1;
  }
}

package org.seafettle.photo;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * One segment of a JPEG file; that of a scan carries the coded pixels behind it.
 *
 * @param marker the second byte of its marker, as in table B.1 of ITU-T T.81
 * @param bytes from its marker to the next
 */
record JpegSegment(int marker, byte[] bytes) {

  private static final int END = 0xd9;
  private static final int SCAN = 0xda;
  private static final int PAYLOAD = 4;

  static List<JpegSegment> allOf(byte[] file) {
    var segments = new ArrayList<JpegSegment>();
    int at = 2;
    while (true) {
      at = marker(file, at);
      int marker = file[at + 1] & 0xff;
      if (marker == END) {
        return List.copyOf(segments);
      }
      int to = endOf(file, at, marker);
      segments.add(new JpegSegment(marker, Arrays.copyOfRange(file, at, to)));
      at = to;
    }
  }

  /** A frame header other than those of the tables and arithmetic conditioning. */
  boolean isFrame() {
    return marker >= 0xc0 && marker <= 0xcf && marker != 0xc4 && marker != 0xc8 && marker != 0xcc;
  }

  boolean isScan() {
    return marker == SCAN;
  }

  /** Whether the decoder needs it: frames, tables, scans, restart intervals. */
  boolean isPicture() {
    return marker >= 0xc0 && marker <= 0xcf || marker >= SCAN && marker <= 0xdd;
  }

  boolean reads(String characters) {
    return Format.reads(bytes, PAYLOAD, characters);
  }

  /** Of the payload, in bytes; of a scan with its pixels. */
  int length() {
    return bytes.length - PAYLOAD;
  }

  /** A byte of the payload, 0 where it has no such. */
  int at(int offset) {
    return offset < length() ? bytes[PAYLOAD + offset] & 0xff : 0;
  }

  byte[] payloadFrom(int offset) {
    return Arrays.copyOfRange(bytes, Math.min(PAYLOAD + offset, bytes.length), bytes.length);
  }

  /** Any number of 0xff may stand before a marker (T.81, B.1.1.2). */
  private static int marker(byte[] file, int from) {
    if (from < file.length && file[from] != (byte) 0xff) {
      throw Container.damaged(Format.JPEG);
    }
    int at = from;
    while (at + 1 < file.length && file[at + 1] == (byte) 0xff) {
      at++;
    }
    if (at + 1 >= file.length) {
      throw Container.cutShort(Format.JPEG);
    }
    return at;
  }

  private static int endOf(byte[] file, int at, int marker) {
    if (at + PAYLOAD > file.length) {
      throw Container.cutShort(Format.JPEG);
    }
    int length = (file[at + 2] & 0xff) << 8 | file[at + 3] & 0xff;
    if (length < 2 || marker < 0xc0 || marker >= 0xd0 && marker < 0xd9) {
      throw Container.damaged(Format.JPEG);
    }
    int to = at + 2 + length;
    if (to > file.length) {
      throw Container.cutShort(Format.JPEG);
    }
    return marker == SCAN ? endOfPixels(file, to) : to;
  }

  /** Among coded pixels 0xff is followed by 0 or by a restart marker. */
  private static int endOfPixels(byte[] file, int from) {
    for (int at = from; at + 1 < file.length; at++) {
      if (file[at] == (byte) 0xff) {
        int next = file[at + 1] & 0xff;
        if (next != 0 && next != 0xff && (next < 0xd0 || next > 0xd7)) {
          return at;
        }
      }
    }
    throw Container.cutShort(Format.JPEG);
  }
}

package org.seafettle.photo;

import java.awt.color.ICC_Profile;
import java.io.ByteArrayOutputStream;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A JPEG file (ITU-T T.81) as a row of segments.
 *
 * @param segments all of them from the first after the start of the image to the last before its
 *     end; what follows the end, such as a film that a camera appends, is not part of the picture
 */
record JpegFile(List<JpegSegment> segments) implements Container {

  private static final int APP0 = 0xe0;
  private static final int APP1 = 0xe1;
  private static final int APP2 = 0xe2;
  private static final int APP14 = 0xee;
  private static final String EXIF = "Exif\0\0";
  private static final String ICC = "ICC_PROFILE\0";

  static JpegFile open(byte[] bytes) {
    var file = new JpegFile(JpegSegment.allOf(bytes));
    long frames = file.segments.stream().filter(JpegSegment::isFrame).count();
    if (frames != 1 || file.segments.stream().noneMatch(JpegSegment::isScan)) {
      throw Container.damaged(Format.JPEG);
    }
    return file;
  }

  @Override
  public Format format() {
    return Format.JPEG;
  }

  @Override
  public Optional<byte[]> exif() {
    return segments.stream()
        .filter(segment -> segment.marker() == APP1 && segment.reads(EXIF))
        .map(segment -> segment.payloadFrom(EXIF.length()))
        .findFirst();
  }

  @Override
  public byte[] picture() {
    return written(profile().isPresent());
  }

  @Override
  public Optional<ICC_Profile> profile() {
    var parts = new TreeMap<Integer, byte[]>();
    segments.stream()
        .filter(segment -> segment.marker() == APP2 && segment.reads(ICC))
        .forEach(segment -> parts.put(segment.at(ICC.length()), iccPart(segment)));
    var whole = new ByteArrayOutputStream();
    parts.values().forEach(whole::writeBytes);
    return Profiles.unlikeSrgb(whole.toByteArray(), components());
  }

  private static byte[] iccPart(JpegSegment segment) {
    return segment.payloadFrom(ICC.length() + 2);
  }

  /** The picture alone: no notes, no thumbnails, no profile, the coded pixels untouched. */
  byte[] stripped() {
    return written(false);
  }

  /** Whether the coded pixels are sRGB colours or greys that every viewer shows alike. */
  boolean isPlain() {
    var frame = frame();
    boolean common = frame.marker() >= 0xc0 && frame.marker() <= 0xc2 && frame.at(0) == 8;
    return common && (components() == 1 || components() == 3) && profile().isEmpty();
  }

  /** Colour components: 1 grey, 3 colours of light, 4 printing inks. */
  int components() {
    return frame().at(5);
  }

  /** What Adobe's segment says of the colours: 0 as they are, 1 YCbCr, 2 YCCK; else -1. */
  int adobeTransform() {
    return segments.stream()
        .filter(JpegFile::isAdobe)
        .mapToInt(s -> s.at(11))
        .findFirst()
        .orElse(-1);
  }

  private JpegSegment frame() {
    return segments.stream().filter(JpegSegment::isFrame).findFirst().orElseThrow();
  }

  private byte[] written(boolean withProfile) {
    var out = new ByteArrayOutputStream();
    out.writeBytes(new byte[] {(byte) 0xff, (byte) 0xd8});
    for (var segment : segments) {
      if (isJfif(segment)) {
        out.writeBytes(withoutThumbnail(segment));
      } else if (segment.isPicture() || isAdobe(segment) || withProfile && isIcc(segment)) {
        out.writeBytes(segment.bytes());
      }
    }
    out.writeBytes(new byte[] {(byte) 0xff, (byte) 0xd9});
    return out.toByteArray();
  }

  private static byte[] withoutThumbnail(JpegSegment jfif) {
    byte[] head = Arrays.copyOf(jfif.bytes(), 18);
    head[2] = 0;
    head[3] = 16;
    head[16] = 0;
    head[17] = 0;
    return head;
  }

  private static boolean isJfif(JpegSegment segment) {
    return segment.marker() == APP0 && segment.reads("JFIF\0") && segment.length() >= 14;
  }

  private static boolean isAdobe(JpegSegment segment) {
    return segment.marker() == APP14 && segment.reads("Adobe") && segment.length() == 12;
  }

  private static boolean isIcc(JpegSegment segment) {
    return segment.marker() == APP2 && segment.reads(ICC);
  }
}

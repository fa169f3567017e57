package org.seafettle.photo;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;

/** The formats of picture that are read. A file's content tells its format, never its name. */
public enum Format {
  JPEG("JPEG", "image/jpeg"),
  PNG("PNG", "image/png"),
  WEBP("WebP", "image/webp"),
  TIFF("TIFF", "image/tiff");

  /** All of them, as a sentence names them. */
  static final String ALL_READ = "JPEG, PNG, WebP and TIFF";

  private final String title;
  private final String mediaType;

  Format(String title, String mediaType) {
    this.title = title;
    this.mediaType = mediaType;
  }

  /** As people write it: {@code WebP}. */
  public String title() {
    return title;
  }

  /** As registered with IANA: {@code image/webp}. */
  public String mediaType() {
    return mediaType;
  }

  /** The format that the first bytes announce, if it is one of these. */
  public static Optional<Format> announcedBy(byte[] bytes) {
    return Arrays.stream(values()).filter(format -> format.isAnnouncedBy(bytes)).findFirst();
  }

  private boolean isAnnouncedBy(byte[] bytes) {
    return switch (this) {
      case JPEG -> reads(bytes, 0, "\u00ff\u00d8\u00ff");
      case PNG -> reads(bytes, 0, "\u0089PNG\r\n\u001a\n");
      case WEBP -> reads(bytes, 0, "RIFF") && reads(bytes, 8, "WEBP");
      case TIFF -> reads(bytes, 0, "II*\0") || reads(bytes, 0, "MM\0*");
    };
  }

  /** Whether these Latin-1 characters stand at an offset. */
  static boolean reads(byte[] bytes, int offset, String characters) {
    byte[] wanted = characters.getBytes(StandardCharsets.ISO_8859_1);
    return bytes.length >= offset + wanted.length
        && Arrays.equals(bytes, offset, offset + wanted.length, wanted, 0, wanted.length);
  }
}

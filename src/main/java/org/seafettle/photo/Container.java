package org.seafettle.photo;

import java.awt.color.ICC_Profile;
import java.util.Optional;
import org.seafettle.problem.Refused;

/** The file around a picture, taken apart far enough to know that all of it is there. */
sealed interface Container permits JpegFile, PngFile, WebpFile, TiffFile {

  /** Takes a file apart; throws {@link Refused} where a part is missing or is not what it says. */
  static Container open(Format format, byte[] bytes) {
    return switch (format) {
      case JPEG -> JpegFile.open(bytes);
      case PNG -> PngFile.open(bytes);
      case WEBP -> WebpFile.open(bytes);
      case TIFF -> TiffFile.open(bytes);
    };
  }

  Format format();

  /** The block in which EXIF is kept, which is laid out as a TIFF file in every format. */
  Optional<byte[]> exif();

  /** What the decoder needs, and as little else as the format allows. */
  byte[] picture();

  /**
   * The colour profile that the decoder does not apply by itself, where it can be used and is not
   * sRGB anyway.
   */
  default Optional<ICC_Profile> profile() {
    return Optional.empty();
  }

  static Refused cutShort(Format format) {
    return Refused.because(
        "The " + format.title() + " picture is cut short: its end is missing.",
        "Copy the file again from the camera, or take another picture.");
  }

  static Refused damaged(Format format) {
    return Refused.because(
        "The " + format.title() + " picture is damaged and cannot be shown in full.",
        "Copy the file again from the camera, or take another picture.");
  }
}

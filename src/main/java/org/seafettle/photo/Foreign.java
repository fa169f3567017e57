package org.seafettle.photo;

import static org.seafettle.photo.Format.reads;

import java.util.Arrays;
import java.util.Optional;
import org.seafettle.problem.Problem;

/** Kinds of file that are known by their first bytes and cannot be read here. */
enum Foreign {
  HEIF("a picture in the HEIC (HEIF) format", Remedy.CAMERA),
  AVIF("a picture in the AVIF format", Remedy.CONVERT),
  GIF("a picture in the GIF format", Remedy.CONVERT),
  BMP("a picture in the BMP format", Remedy.CONVERT),
  JPEG_2000("a picture in the JPEG 2000 format", Remedy.CONVERT),
  JPEG_XL("a picture in the JPEG XL format", Remedy.CONVERT),
  LAYERED("a picture in a layered format of a drawing program", Remedy.CONVERT),
  PDF("a PDF document", Remedy.CONVERT),
  SVG("a vector drawing (SVG)", Remedy.CONVERT),
  FILM("a film", "Take a single picture out of the film and save it as JPEG.");

  private final String what;
  private final String remedy;

  Foreign(String what, String remedy) {
    this.what = what;
    this.remedy = remedy;
  }

  static Optional<Foreign> announcedBy(byte[] bytes) {
    return Arrays.stream(values()).filter(kind -> kind.isAnnouncedBy(bytes)).findFirst();
  }

  Problem problem() {
    return Problem.of(
        "This is " + what + ", which cannot be read; " + Format.ALL_READ + " are.", remedy);
  }

  private boolean isAnnouncedBy(byte[] bytes) {
    return switch (this) {
      case HEIF -> brand(bytes, "hei", "hev", "mif1", "msf1") && !brandListed(bytes, "avif");
      case AVIF -> brand(bytes, "avi") || brand(bytes, "mif1") && brandListed(bytes, "avif");
      case FILM -> reads(bytes, 4, "ftyp") || reads(bytes, 4, "moov");
      case GIF -> reads(bytes, 0, "GIF8");
      case BMP -> reads(bytes, 0, "BM") && reads(bytes, 6, "\0\0\0\0");
      case JPEG_2000 -> reads(bytes, 4, "jP  ") || reads(bytes, 0, "\u00ff\u004f\u00ff\u0051");
      case JPEG_XL -> reads(bytes, 4, "JXL ") || reads(bytes, 0, "\u00ff\n");
      case LAYERED -> reads(bytes, 0, "8BPS") || reads(bytes, 0, "gimp xcf");
      case PDF -> reads(bytes, 0, "%PDF-");
      case SVG -> reads(bytes, 0, "<svg") || reads(bytes, 0, "<?xml");
    };
  }

  /** Whether the major brand of an ISO base media file (ISO/IEC 14496-12) starts so. */
  private static boolean brand(byte[] bytes, String... starts) {
    return reads(bytes, 4, "ftyp")
        && Arrays.stream(starts).anyMatch(start -> reads(bytes, 8, start));
  }

  private static boolean brandListed(byte[] bytes, String brand) {
    // compatible brands follow the major brand and its version, four bytes each
    int end = Math.min(bytes.length < 4 ? 0 : bytes[3] & 0xff, bytes.length);
    for (int at = 16; at + 4 <= end; at += 4) {
      if (reads(bytes, at, brand)) {
        return true;
      }
    }
    return false;
  }

  private static final class Remedy {
    static final String CONVERT = "Convert it to JPEG or PNG and name the new file.";
    static final String CAMERA =
        "Convert the picture to JPEG; for the next survey set the camera to the \"most compatible\""
            + " or JPEG format in its settings.";
  }
}

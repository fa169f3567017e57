package org.seafettle.photo;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Set;
import org.apache.commons.imaging.formats.jpeg.exif.ExifRewriter;
import org.apache.commons.imaging.formats.tiff.TiffImageMetadata;
import org.apache.commons.imaging.formats.tiff.constants.TiffTagConstants;
import org.apache.commons.imaging.formats.tiff.write.TiffOutputSet;

/**
 * Carries the camera's notes over into a print, without the orientation, which is applied already,
 * and without the thumbnail, which may show more than the picture.
 */
final class KeptMetadata {

  private static final Set<Integer> KEPT = Set.of(Tags.MAIN, Tags.EXIF, Tags.GPS);

  /** A TIFF file's main directory says how its pixels are stored, which is not true of a JPEG. */
  private static final Set<Integer> KEPT_OF_TIFF = Set.of(Tags.EXIF, Tags.GPS);

  private KeptMetadata() {}

  /** The JPEG with the notes; as it was where there are none or they cannot be written again. */
  static byte[] in(byte[] jpeg, Container original) {
    var tags = original.exif().flatMap(Tags::read);
    if (tags.isEmpty()) {
      return jpeg;
    }
    try {
      var out = new ByteArrayOutputStream();
      new ExifRewriter().updateExifMetadataLossless(jpeg, out, notes(tags.get(), kept(original)));
      return out.toByteArray();
    } catch (IOException | RuntimeException unwritable) {
      return jpeg;
    }
  }

  private static Set<Integer> kept(Container original) {
    return original.format() == Format.TIFF ? KEPT_OF_TIFF : KEPT;
  }

  private static TiffOutputSet notes(Tags tags, Set<Integer> kept) throws IOException {
    var notes = new TiffOutputSet(tags.byteOrder());
    for (var item : new TiffImageMetadata(tags.contents()).getDirectories()) {
      var directory = (TiffImageMetadata.Directory) item;
      if (kept.contains(directory.type)) {
        notes.addDirectory(directory.getOutputDirectory(tags.byteOrder()));
      }
    }
    notes.getOrCreateRootDirectory().removeField(TiffTagConstants.TIFF_TAG_ORIENTATION);
    return notes;
  }
}

package org.seafettle.photo;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import org.apache.commons.imaging.formats.jpeg.exif.ExifRewriter;
import org.apache.commons.imaging.formats.tiff.TiffField;
import org.apache.commons.imaging.formats.tiff.constants.TiffTagConstants;
import org.apache.commons.imaging.formats.tiff.write.TiffOutputDirectory;
import org.apache.commons.imaging.formats.tiff.write.TiffOutputField;
import org.apache.commons.imaging.formats.tiff.write.TiffOutputSet;

/**
 * Carries the camera's notes over into a print, without the orientation, which is applied already,
 * and without the thumbnail, which may show more than the picture.
 */
final class KeptMetadata {

  private static final List<Integer> KEPT = List.of(Tags.MAIN, Tags.EXIF, Tags.GPS);

  /** A TIFF file's main directory says how its pixels are stored, which is not true of a JPEG. */
  private static final List<Integer> KEPT_OF_TIFF = List.of(Tags.EXIF, Tags.GPS);

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

  private static List<Integer> kept(Container original) {
    return original.format() == Format.TIFF ? KEPT_OF_TIFF : KEPT;
  }

  private static TiffOutputSet notes(Tags tags, List<Integer> kept) throws IOException {
    var notes = new TiffOutputSet(tags.byteOrder());
    notes.getOrCreateRootDirectory();
    for (int type : kept) {
      var directory = tags.directory(type);
      if (directory.isPresent()) {
        copy(directory.get().getDirectoryEntries(), directory(notes, type));
      }
    }
    return notes;
  }

  private static TiffOutputDirectory directory(TiffOutputSet notes, int type) throws IOException {
    var found = notes.findDirectory(type);
    if (found != null) {
      return found;
    }
    var added = new TiffOutputDirectory(type, notes.byteOrder);
    notes.addDirectory(added);
    return added;
  }

  private static void copy(List<TiffField> fields, TiffOutputDirectory to) {
    for (var field : fields) {
      var info = field.getTagInfo();
      boolean applied = field.getTag() == TiffTagConstants.TIFF_TAG_ORIENTATION.tag;
      if (!applied && !info.isOffset() && to.findField(field.getTag()) == null) {
        byte[] value = field.getByteArrayValue();
        int count = (int) field.getCount();
        to.add(new TiffOutputField(field.getTag(), info, field.getFieldType(), count, value));
      }
    }
  }
}

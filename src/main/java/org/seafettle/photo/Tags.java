package org.seafettle.photo;

import java.io.IOException;
import java.nio.ByteOrder;
import java.util.Optional;
import org.apache.commons.imaging.FormatCompliance;
import org.apache.commons.imaging.ImagingException;
import org.apache.commons.imaging.bytesource.ByteSource;
import org.apache.commons.imaging.formats.tiff.TiffContents;
import org.apache.commons.imaging.formats.tiff.TiffDirectory;
import org.apache.commons.imaging.formats.tiff.TiffField;
import org.apache.commons.imaging.formats.tiff.TiffReader;
import org.apache.commons.imaging.formats.tiff.constants.TiffDirectoryConstants;

/**
 * The tags of a TIFF file or of an EXIF block. What stands under a tag in another form than asked
 * for is as good as absent.
 */
record Tags(TiffContents contents) {

  static final int MAIN = TiffDirectoryConstants.DIRECTORY_TYPE_ROOT;
  static final int EXIF = TiffDirectoryConstants.DIRECTORY_TYPE_EXIF;
  static final int GPS = TiffDirectoryConstants.DIRECTORY_TYPE_GPS;

  /** Empty where the block is damaged. */
  static Optional<Tags> read(byte[] block) {
    try {
      var source = ByteSource.array(block);
      var reader = new TiffReader(false);
      return Optional.of(
          new Tags(reader.readDirectories(source, false, FormatCompliance.getDefault())));
    } catch (IOException | RuntimeException damaged) {
      return Optional.empty();
    }
  }

  ByteOrder byteOrder() {
    return contents.header.byteOrder;
  }

  Optional<TiffDirectory> directory(int type) {
    return contents.directories.stream().filter(directory -> directory.type == type).findFirst();
  }

  Optional<String> text(int directory, int tag) {
    return value(directory, tag, TiffField::getValue)
        .map(value -> value instanceof String[] several && several.length > 0 ? several[0] : value)
        .filter(String.class::isInstance)
        .map(text -> ((String) text).strip());
  }

  Optional<Integer> number(int directory, int tag) {
    int[] numbers = numbers(directory, tag);
    return numbers.length == 0 ? Optional.empty() : Optional.of(numbers[0]);
  }

  int[] numbers(int directory, int tag) {
    return value(directory, tag, TiffField::getIntArrayValue).orElse(new int[0]);
  }

  double[] fractions(int directory, int tag) {
    return value(directory, tag, TiffField::getDoubleArrayValue).orElse(new double[0]);
  }

  private <T> Optional<T> value(int directory, int tag, Reading<T> reading) {
    return directory(directory).stream()
        .flatMap(found -> found.getDirectoryEntries().stream())
        .filter(field -> field.getTag() == tag)
        .findFirst()
        .flatMap(field -> read(field, reading));
  }

  private static <T> Optional<T> read(TiffField field, Reading<T> reading) {
    try {
      return Optional.of(reading.of(field));
    } catch (ImagingException | RuntimeException otherForm) {
      return Optional.empty();
    }
  }

  private interface Reading<T> {
    T of(TiffField field) throws ImagingException;
  }
}

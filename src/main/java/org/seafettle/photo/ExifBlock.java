package org.seafettle.photo;

import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.ResolverStyle;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** Reads what a camera wrote down; tag numbers are those of EXIF (CIPA DC-008). */
final class ExifBlock {

  private static final int ORIENTATION = 0x0112;
  private static final int GPS_DIRECTORY = 0x8825;
  private static final int DATE_TIME_ORIGINAL = 0x9003;
  private static final int DATE_TIME_DIGITIZED = 0x9004;
  private static final int OFFSET_TIME_ORIGINAL = 0x9011;
  private static final int OFFSET_TIME_DIGITIZED = 0x9012;
  private static final int LATITUDE_REF = 1;
  private static final int LATITUDE = 2;
  private static final int LONGITUDE_REF = 3;
  private static final int LONGITUDE = 4;

  private static final DateTimeFormatter CLOCK =
      DateTimeFormatter.ofPattern("uuuu:MM:dd HH:mm:ss", Locale.ROOT)
          .withResolverStyle(ResolverStyle.STRICT);

  private ExifBlock() {}

  /** Never fails: a damaged block is {@link Metadata#UNREADABLE}. */
  static Metadata read(byte[] block) {
    return Tags.read(block).map(ExifBlock::metadata).orElse(Metadata.UNREADABLE);
  }

  private static Metadata metadata(Tags tags) {
    return new Metadata(
        true,
        Orientation.of(tags.number(Tags.MAIN, ORIENTATION).orElse(1)),
        taken(tags, DATE_TIME_ORIGINAL, OFFSET_TIME_ORIGINAL)
            .or(() -> taken(tags, DATE_TIME_DIGITIZED, OFFSET_TIME_DIGITIZED)),
        tags.number(Tags.MAIN, GPS_DIRECTORY).isPresent(),
        position(tags));
  }

  private static Optional<Taken> taken(Tags tags, int clock, int zone) {
    return tags.text(Tags.EXIF, clock)
        .flatMap(ExifBlock::clock)
        .map(time -> new Taken(time, tags.text(Tags.EXIF, zone).flatMap(ExifBlock::zone)));
  }

  /** Cameras fill an unknown date with blanks or zeros, and people write anything. */
  private static Optional<LocalDateTime> clock(String text) {
    try {
      return Optional.of(LocalDateTime.parse(text, CLOCK));
    } catch (DateTimeException noDate) {
      return Optional.empty();
    }
  }

  private static Optional<ZoneOffset> zone(String text) {
    try {
      return text.matches("[+-]\\d\\d:\\d\\d")
          ? Optional.of(ZoneOffset.of(text))
          : Optional.empty();
    } catch (DateTimeException noZone) {
      return Optional.empty();
    }
  }

  private static Optional<Position> position(Tags tags) {
    double latitude = degrees(tags, LATITUDE_REF, LATITUDE, "N", "S");
    double longitude = degrees(tags, LONGITUDE_REF, LONGITUDE, "E", "W");
    return Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180
        ? Optional.of(new Position(latitude, longitude))
        : Optional.empty();
  }

  /** Degrees, minutes and seconds on one side of the equator or of Greenwich; else not a number. */
  private static double degrees(Tags tags, int side, int tag, String positive, String negative) {
    double[] parts = tags.fractions(Tags.GPS, tag);
    var written = tags.text(Tags.GPS, side).orElse("").toUpperCase(Locale.ROOT);
    boolean known = written.equals(positive) || written.equals(negative);
    if (!known || parts.length != 3 || Arrays.stream(parts).anyMatch(part -> !(part >= 0))) {
      return Double.NaN;
    }
    double degrees = parts[0] + parts[1] / 60 + parts[2] / 3600;
    return written.equals(positive) ? degrees : -degrees;
  }
}

package org.seafettle.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.seafettle.photo.Pictures.afterStart;
import static org.seafettle.photo.Pictures.joined;
import static org.seafettle.photo.Pictures.jpeg;
import static org.seafettle.photo.Pictures.latin;
import static org.seafettle.photo.Pictures.noted;
import static org.seafettle.photo.Pictures.quarters;
import static org.seafettle.photo.Pictures.read;
import static org.seafettle.photo.Pictures.segment;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.Consumer;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MetadataTest {

  private static final LocalDate SURVEY = LocalDate.of(2026, 10, 17);
  private static final LocalDateTime CLOCK = LocalDateTime.of(2026, 10, 17, 9, 41, 5);

  @Test
  void the_camera_says_when_and_in_which_zone() {
    var metadata = metadata(notes -> notes.original("2026:10:17 09:41:05").zone("+02:00"));

    assertThat(metadata.taken().orElseThrow().clock()).isEqualTo(CLOCK);
    assertThat(metadata.taken().orElseThrow().zone()).contains(ZoneOffset.ofHours(2));
    assertThat(Remark.on(metadata, SURVEY)).isEmpty();
  }

  @Test
  void the_zone_is_unknown_where_the_camera_does_not_say() {
    var metadata = metadata(notes -> notes.original("2026:10:17 09:41:05"));

    assertThat(metadata.taken().orElseThrow().zone()).isEmpty();
    assertThat(Remark.on(metadata, SURVEY)).containsExactly(new Remark.ZoneUnknown());
  }

  @ParameterizedTest
  @ValueSource(strings = {"   :  ", "      ", "CEST", "+2:00", "+25:00", "+02:77", "02:00"})
  void a_zone_that_is_none_is_unknown(String zone) {
    var metadata = metadata(notes -> notes.original("2026:10:17 09:41:05").zone(zone));

    assertThat(metadata.taken().orElseThrow().clock()).isEqualTo(CLOCK);
    assertThat(metadata.taken().orElseThrow().zone()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Sunday, 11am",
        "0000:00:00 00:00:00",
        "    :  :     :  :  ",
        "",
        "2026:02:30 10:00:00",
        "2026:10:17",
        "2026-10-17T09:41:05",
        "2026:10:17 24:00:00",
        "2026:13:01 00:00:00"
      })
  void a_date_that_is_none_is_unknown_and_not_invented(String text) {
    var metadata = metadata(notes -> notes.original(text).zone("+02:00"));

    assertThat(metadata.readable()).isTrue();
    assertThat(metadata.taken()).isEmpty();
    assertThat(Remark.on(metadata, SURVEY)).containsExactly(new Remark.TimeUnknown());
  }

  @Test
  void a_scanned_picture_has_the_time_of_its_scan() {
    var metadata = metadata(notes -> notes.digitized("2026:10:17 09:41:05").zone("+02:00"));

    assertThat(metadata.taken()).contains(new Taken(CLOCK, Optional.empty()));
  }

  @Test
  void the_moment_of_the_picture_comes_before_that_of_a_scan() {
    var metadata =
        metadata(notes -> notes.original("2026:10:17 09:41:05").digitized("2026:10:20 12:00:00"));

    assertThat(metadata.taken().orElseThrow().clock()).isEqualTo(CLOCK);
  }

  @Test
  void a_picture_of_another_day_is_remarked_on_by_its_local_date() {
    var metadata = metadata(notes -> notes.original("2026:10:16 23:59:59").zone("-05:00"));

    assertThat(Remark.on(metadata, SURVEY))
        .containsExactly(new Remark.OtherDay(LocalDate.of(2026, 10, 16), SURVEY));
  }

  @Test
  void the_position_is_read_on_either_side_of_equator_and_greenwich() {
    var metadata = metadata(notes -> notes.position(-33.86, -151.21));

    assertThat(metadata.positionRecorded()).isTrue();
    var position = metadata.position().orElseThrow();
    assertThat(position.latitude()).isEqualTo(-33.86, Offset.offset(1e-5));
    assertThat(position.longitude()).isEqualTo(-151.21, Offset.offset(1e-5));
  }

  @Test
  void a_picture_without_notes_has_no_time_and_no_position() {
    var metadata = read(jpeg(quarters(120, 80))).metadata();

    assertThat(metadata).isEqualTo(Metadata.NONE);
    assertThat(Remark.on(metadata, SURVEY)).containsExactly(new Remark.TimeUnknown());
  }

  @Test
  void damaged_notes_do_not_refuse_a_good_picture() {
    var damaged = segment(0xe1, joined(latin("Exif\0\0MM\0*"), new byte[] {0, 0, 0, 8, 9, 9, 1}));
    var original = read(afterStart(jpeg(quarters(120, 80)), damaged));

    assertThat(original.metadata()).isEqualTo(Metadata.UNREADABLE);
    assertThat(Remark.on(original.metadata(), SURVEY))
        .containsExactly(new Remark.MetadataUnreadable());
    assertThat(Print.of(original, PrintOrder.upTo(60)).size()).isEqualTo(new Size(60, 40));
  }

  @Test
  void notes_cut_short_anywhere_do_not_refuse_a_good_picture() {
    var plain = jpeg(quarters(120, 80));
    var whole =
        JpegFile.open(
                noted(
                    plain,
                    n -> n.orientation(6).original("2026:10:17 09:41:05").position(54.5, 11.2)))
            .exif()
            .orElseThrow();
    for (int length = 0; length < whole.length; length++) {
      var notes = joined(latin("Exif\0\0"), Arrays.copyOf(whole, length));
      var original = read(afterStart(plain, segment(0xe1, notes)));
      assertThat(Print.of(original, PrintOrder.upTo(40)).size().longestEdge()).isEqualTo(40);
    }
  }

  private static Metadata metadata(Consumer<Pictures.Notes> notes) {
    return read(noted(jpeg(quarters(120, 80)), notes)).metadata();
  }
}

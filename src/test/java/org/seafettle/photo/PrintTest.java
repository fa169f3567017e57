package org.seafettle.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.seafettle.photo.Pictures.afterStart;
import static org.seafettle.photo.Pictures.holds;
import static org.seafettle.photo.Pictures.joined;
import static org.seafettle.photo.Pictures.jpeg;
import static org.seafettle.photo.Pictures.latin;
import static org.seafettle.photo.Pictures.noted;
import static org.seafettle.photo.Pictures.progressive;
import static org.seafettle.photo.Pictures.quarters;
import static org.seafettle.photo.Pictures.read;
import static org.seafettle.photo.Pictures.seen;
import static org.seafettle.photo.Pictures.segment;
import static org.seafettle.photo.Pictures.sunset;
import static org.seafettle.photo.Pictures.written;

import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class PrintTest {

  private static final String[] PRIVATE = {
    "Exif",
    "ns.adobe.com",
    "Invented Camera Works",
    "2026:10:17",
    "Photoshop",
    "owner",
    "ICC_PROFILE",
    "appended film",
    "JFXX"
  };

  static Stream<byte[]> jpegs() {
    return Stream.of(
        jpeg(sunset(200, 120)), progressive(sunset(200, 120)), jpeg(grey(sunset(200, 120))));
  }

  @ParameterizedTest
  @MethodSource("jpegs")
  void a_jpeg_that_needs_nothing_done_keeps_its_pixels_and_loses_its_notes(byte[] plain) {
    var print = Print.of(read(chatty(plain)), PrintOrder.upTo(200));

    assertThat(pixels(print.bytes())).isEqualTo(pixels(plain));
    assertThat(print.size()).isEqualTo(new Size(200, 120));
    assertThat(Arrays.stream(PRIVATE).filter(word -> holds(print.bytes(), word))).isEmpty();
    assertThat(print.bytes()).isEqualTo(plain);
  }

  @ParameterizedTest
  @ValueSource(ints = {100, 199})
  void nothing_the_camera_wrote_is_in_a_smaller_print(int edge) {
    var original = read(chatty(jpeg(sunset(200, 120))));
    assertThat(original.metadata().positionRecorded()).isTrue();

    var print = Print.of(original, PrintOrder.upTo(edge));

    assertThat(print.size().longestEdge()).isEqualTo(edge);
    assertThat(Arrays.stream(PRIVATE).filter(word -> holds(print.bytes(), word))).isEmpty();
    assertThat(read(print.bytes()).metadata()).isEqualTo(Metadata.NONE);
    assertThat(JpegFile.open(print.bytes()).segments())
        .allMatch(segment -> segment.isPicture() || segment.marker() == 0xe0);
  }

  @ParameterizedTest
  @ValueSource(ints = {100, 1000})
  void the_notes_are_kept_where_that_is_asked_for_but_not_the_orientation(int edge) {
    var original =
        read(
            noted(
                jpeg(sunset(200, 120)),
                n -> n.orientation(6).original("2026:10:17 09:41:05").position(54.5, 11.2)));

    var print = read(Print.of(original, PrintOrder.upTo(edge).keepingMetadata()).bytes());

    assertThat(print.metadata().taken()).isEqualTo(original.metadata().taken()).isPresent();
    assertThat(print.metadata().position()).isEqualTo(original.metadata().position()).isPresent();
    assertThat(print.metadata().orientation()).isEqualTo(Orientation.UPRIGHT);
    assertThat(print.size()).isEqualTo(original.size().fitting(edge));
  }

  @Test
  void a_jfif_thumbnail_is_not_passed_on() {
    var plain = jpeg(sunset(200, 120));
    var thumbnail = new byte[3 * 4 * 4];
    Arrays.fill(thumbnail, (byte) 0x5a);
    var jfif = segment(0xe0, joined(latin("JFIF\0\1\2\0\0\1\0\1\4\4"), thumbnail));
    var withThumbnail =
        joined(Arrays.copyOf(plain, 2), jfif, Arrays.copyOfRange(plain, 20, plain.length));

    var print = Print.of(read(withThumbnail), PrintOrder.upTo(200));

    assertThat(holds(print.bytes(), "ZZZZ")).isFalse();
    assertThat(print.bytes()).isEqualTo(plain);
  }

  @Test
  void a_picture_is_never_enlarged() {
    assertThat(Print.of(read(written(sunset(64, 48), "png")), PrintOrder.upTo(900)).size())
        .isEqualTo(new Size(64, 48));
  }

  @Test
  void the_same_picture_and_order_give_the_same_bytes() {
    var bytes = chatty(jpeg(sunset(500, 300)));
    var order = PrintOrder.upTo(320).with(Mark.ring(1, 0.3, 0.4), Mark.arrow(12, 0.8, 0.9));

    assertThat(Print.of(read(bytes), order).bytes())
        .isEqualTo(Print.of(read(bytes.clone()), order).bytes());
  }

  @Test
  void a_drawing_of_few_colours_is_printed_as_png_and_a_photograph_as_jpeg() {
    var drawing = Print.of(read(written(quarters(120, 80), "png")), PrintOrder.upTo(120));
    var photograph = Print.of(read(written(sunset(400, 300), "png")), PrintOrder.upTo(400));

    assertThat(drawing.format()).isEqualTo(Format.PNG);
    assertThat(pixels(drawing.bytes())).isEqualTo(pixels(written(quarters(120, 80), "png")));
    assertThat(photograph.format()).isEqualTo(Format.JPEG);
  }

  @Test
  void the_original_is_known_by_its_bytes_and_its_content_tells_its_format() {
    var bytes = written(quarters(120, 80), "png");
    var original = Original.read(bytes, Pictures.PLACE, "really.jpg");

    assertThat(original.format()).isEqualTo(Format.PNG);
    assertThat(original.name()).isEqualTo("really.jpg");
    assertThat(original.fingerprint()).isEqualTo(Fingerprint.of(bytes));
    assertThat(original.size()).isEqualTo(new Size(120, 80));
  }

  @Test
  void a_very_large_picture_is_thinned_out_before_it_is_scaled() {
    var large = jpeg(quarters(9000, 6000));

    var print = Print.of(read(large), PrintOrder.upTo(300));

    assertThat(print.size()).isEqualTo(new Size(300, 200));
    assertThat(Pictures.near(Pictures.quarter(seen(print), 2), Pictures.BLUE)).isTrue();
  }

  private static byte[] chatty(byte[] jpeg) {
    var noted =
        noted(
            jpeg,
            n -> n.maker("Invented Camera Works").original("2026:10:17 09:41:05").position(54, 11));
    var more =
        afterStart(
            noted,
            segment(0xe1, latin("http://ns.adobe.com/xap/1.0/\0<x:xmpmeta/>")),
            segment(0xe0, latin("JFXX\0\20")),
            segment(0xed, latin("Photoshop 3.0\0")),
            segment(0xfe, latin("the owner's name")));
    return joined(more, latin("appended film"));
  }

  private static BufferedImage grey(BufferedImage image) {
    var grey = new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_BYTE_GRAY);
    grey.createGraphics().drawImage(image, 0, 0, null);
    return grey;
  }

  private static int[] pixels(byte[] bytes) {
    var image = seen(bytes);
    int width = image.getWidth();
    return image.getRGB(0, 0, width, image.getHeight(), null, 0, width);
  }
}

package org.seafettle.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.seafettle.photo.Pictures.jpeg;
import static org.seafettle.photo.Pictures.noted;
import static org.seafettle.photo.Pictures.progressive;
import static org.seafettle.photo.Pictures.read;
import static org.seafettle.photo.Pictures.resource;
import static org.seafettle.photo.Pictures.sunset;
import static org.seafettle.photo.Pictures.written;

import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.seafettle.problem.Refused;

class PictureProperties {

  private static final List<byte[]> GOOD =
      List.of(
          noted(jpeg(sunset(60, 40)), n -> n.orientation(6).position(54.5, 11.2)),
          progressive(sunset(60, 40)),
          Pictures.inks(new int[] {10, 200, 90, 220}, 2),
          written(sunset(60, 40), "png"),
          written(sunset(60, 40), "tiff"),
          resource("quarters.webp"),
          resource("half-clear.webp"));

  @Property(seed = "1907")
  void scaling_keeps_the_shape_within_a_pixel_and_never_enlarges(
      @ForAll @IntRange(min = 1, max = 20_000) int width,
      @ForAll @IntRange(min = 1, max = 20_000) int height,
      @ForAll @IntRange(min = 1, max = 4_000) int edge) {
    var size = new Size(width, height);
    var fitting = size.fitting(edge);

    assertThat(fitting.longestEdge()).isEqualTo(Math.min(edge, size.longestEdge()));
    double scale = (double) fitting.longestEdge() / size.longestEdge();
    assertThat(Math.abs(fitting.width() - width * scale)).isLessThan(1);
    assertThat(Math.abs(fitting.height() - height * scale)).isLessThan(1);
  }

  @Property(seed = "2026", tries = 300)
  void a_print_has_the_size_that_was_foretold(
      @ForAll @IntRange(min = 16, max = 90) int width,
      @ForAll @IntRange(min = 16, max = 90) int height,
      @ForAll @IntRange(min = 1, max = 120) int edge,
      @ForAll @IntRange(min = 1, max = 8) int tag) {
    var original = read(noted(jpeg(sunset(width, height)), n -> n.orientation(tag)));

    var print = Print.of(original, PrintOrder.upTo(edge));

    assertThat(print.size()).isEqualTo(original.size().fitting(edge));
    assertThat(seenSize(print)).isEqualTo(print.size());
  }

  @Property(seed = "4711", tries = 1_000)
  void a_damaged_picture_is_printed_or_refused_but_nothing_else_happens(
      @ForAll @IntRange(min = 0, max = 6) int which, @ForAll long seed) {
    var bytes = damaged(GOOD.get(which), new Random(seed));
    try {
      assertThat(Print.of(read(bytes), PrintOrder.upTo(30)).bytes()).isNotEmpty();
    } catch (Refused refused) {
      assertThat(refused.problems()).hasSize(1);
    }
  }

  private static byte[] damaged(byte[] good, Random random) {
    var bytes = good.clone();
    int times = 1 + random.nextInt(4);
    for (int i = 0; i < times; i++) {
      bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
    }
    return bytes;
  }

  private static Size seenSize(Print print) {
    var image = Pictures.seen(print);
    return new Size(image.getWidth(), image.getHeight());
  }
}

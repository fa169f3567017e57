package org.seafettle.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.seafettle.photo.Pictures.jpeg;
import static org.seafettle.photo.Pictures.near;
import static org.seafettle.photo.Pictures.noted;
import static org.seafettle.photo.Pictures.quarter;
import static org.seafettle.photo.Pictures.quarters;
import static org.seafettle.photo.Pictures.read;
import static org.seafettle.photo.Pictures.seen;

import java.awt.Color;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OrientationTest {

  private static final Map<Character, Color> COLOURS =
      Map.of('R', Pictures.RED, 'G', Pictures.GREEN, 'B', Pictures.BLUE, 'K', Pictures.BLACK);

  /** By the table of the tag: which side of the scene is row 0 and which is column 0. */
  @ParameterizedTest
  @CsvSource({
    "1, RGBK, 120, 80", "2, GRKB, 120, 80", "3, KBGR, 120, 80", "4, BKRG, 120, 80",
    "5, RBGK, 80, 120", "6, BRKG, 80, 120", "7, KGBR, 80, 120", "8, GKRB, 80, 120"
  })
  void a_print_stands_upright_whichever_way_the_camera_was_held(
      int tag, String corners, int width, int height) {
    var original = read(noted(jpeg(quarters(120, 80)), notes -> notes.orientation(tag)));

    var print = Print.of(original, PrintOrder.upTo(1000));

    assertThat(original.metadata().orientation().tag()).isEqualTo(tag);
    assertThat(original.size()).isEqualTo(new Size(width, height));
    assertThat(print.size()).isEqualTo(new Size(width, height));
    var picture = seen(print);
    assertThat(picture.getWidth()).isEqualTo(width);
    for (int i = 0; i < 4; i++) {
      assertThat(near(quarter(picture, i), COLOURS.get(corners.charAt(i)))).isTrue();
    }
  }

  @Test
  void a_printed_picture_is_not_turned_again() {
    var order = PrintOrder.upTo(1000);
    var first = Print.of(read(noted(jpeg(quarters(120, 80)), n -> n.orientation(6))), order);

    var second = read(first.bytes());

    assertThat(second.metadata().orientation()).isEqualTo(Orientation.UPRIGHT);
    assertThat(Print.of(second, order).bytes()).isEqualTo(first.bytes());
  }

  @ParameterizedTest
  @CsvSource({"0", "9", "-1", "300"})
  void an_orientation_that_does_not_exist_leaves_the_picture_as_it_is(int tag) {
    assertThat(Orientation.of(tag)).isEqualTo(Orientation.UPRIGHT);
  }
}

package org.seafettle.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.seafettle.photo.Pictures.jpeg;
import static org.seafettle.photo.Pictures.noted;
import static org.seafettle.photo.Pictures.quarters;
import static org.seafettle.photo.Pictures.read;
import static org.seafettle.photo.Pictures.seen;
import static org.seafettle.photo.Pictures.written;

import java.awt.Color;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MarkTest {

  private static final Color MAGENTA = new Color(0xA3005C);

  @Test
  void a_ring_lies_around_its_spot_on_the_upright_picture() {
    var lying = read(noted(jpeg(quarters(800, 600)), n -> n.orientation(6)));

    var print = seen(Print.of(lying, PrintOrder.upTo(800).with(Mark.ring(3, 0.25, 0.25))));

    // upright 600 x 800, so the spot is at 150, 200, the ring 24 pixels off
    for (int[] at : new int[][] {{24, 0}, {-24, 0}, {0, 24}, {0, -24}}) {
      assertThat(Pictures.near(new Color(print.getRGB(150 + at[0], 200 + at[1])), MAGENTA))
          .isTrue();
    }
    assertThat(Pictures.near(new Color(print.getRGB(150, 200)), Pictures.BLUE)).isTrue();
  }

  @Test
  void an_arrow_points_to_its_spot() {
    var print = marked(400, Mark.arrow(1, 0.25, 0.5));

    assertThat(Pictures.near(new Color(print.getRGB(106, 150)), MAGENTA)).isTrue();
    assertThat(Pictures.near(new Color(print.getRGB(92, 150)), Pictures.BLACK)).isTrue();
  }

  @Test
  void a_mark_shows_on_any_ground_by_its_white_casing() {
    var print = marked(800, Mark.ring(1, 0.5, 0.5));

    // a ring of 24 pixels around 400, 300, its line 4 wide, its casing as wide again on both sides
    for (int x : new int[] {373, 379, 421, 427}) {
      assertThat(Pictures.near(new Color(print.getRGB(x, 300)), Color.WHITE)).isTrue();
    }
    assertThat(new Color(print.getRGB(376, 300))).isEqualTo(MAGENTA);
    assertThat(new Color(print.getRGB(400, 300))).isEqualTo(Pictures.BLACK);
    assertThat(new Color(print.getRGB(366, 300))).isEqualTo(Pictures.BLACK);
  }

  @ParameterizedTest
  @CsvSource({"RING, 0, 0", "RING, 1, 1", "ARROW, 0, 1", "ARROW, 1, 0.5", "ARROW, 0.5, 0.5"})
  void the_number_of_a_mark_at_the_edge_is_still_on_the_picture(
      Mark.Shape shape, double x, double y) {
    var one = marked(400, new Mark(1, x, y, shape));
    var twentyEight = marked(400, new Mark(28, x, y, shape));

    var number = difference(one, twentyEight);

    assertThat(number.width).isBetween(8, 60);
    assertThat(new Rectangle(2, 2, 396, 296).contains(number)).isTrue();
  }

  @Test
  void marks_grow_with_the_picture() {
    var small = count(marked(800, Mark.ring(1, 0.5, 0.5)), MAGENTA);
    var large = count(marked(1600, Mark.ring(1, 0.5, 0.5)), MAGENTA);

    assertThat((double) large / small).isBetween(3.0, 5.5);
  }

  @Test
  void a_mark_off_the_picture_or_without_a_number_is_no_mark() {
    assertThatThrownBy(() -> Mark.ring(1, 1.01, 0.5)).hasMessageContaining("off the picture");
    assertThatThrownBy(() -> Mark.ring(1, 0.5, Double.NaN)).hasMessageContaining("off the picture");
    assertThatThrownBy(() -> Mark.ring(0, 0.5, 0.5)).hasMessageContaining("1 to 99");
  }

  private static BufferedImage marked(int width, Mark mark) {
    var black = new BufferedImage(width, width * 3 / 4, BufferedImage.TYPE_INT_RGB);
    var pen = black.createGraphics();
    pen.setColor(Pictures.BLACK);
    pen.fillRect(0, 0, width, width);
    pen.dispose();
    return seen(Print.of(read(written(black, "png")), PrintOrder.upTo(width).with(mark)));
  }

  private static long count(BufferedImage image, Color colour) {
    int width = image.getWidth();
    return Arrays.stream(image.getRGB(0, 0, width, image.getHeight(), null, 0, width))
        .filter(pixel -> pixel == colour.getRGB())
        .count();
  }

  private static Rectangle difference(BufferedImage one, BufferedImage other) {
    var where = new Rectangle(-1, -1);
    for (int y = 0; y < one.getHeight(); y++) {
      for (int x = 0; x < one.getWidth(); x++) {
        // the casing may touch the edge, the number itself may not
        boolean number = other.getRGB(x, y) == MAGENTA.getRGB();
        if (number && one.getRGB(x, y) != other.getRGB(x, y)) {
          where.add(new Rectangle(x, y, 1, 1));
        }
      }
    }
    return where;
  }
}

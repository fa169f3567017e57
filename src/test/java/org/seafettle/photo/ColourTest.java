package org.seafettle.photo;

import static java.awt.color.ColorSpace.CS_GRAY;
import static java.awt.color.ColorSpace.CS_LINEAR_RGB;
import static java.awt.color.ColorSpace.CS_sRGB;
import static org.assertj.core.api.Assertions.assertThat;
import static org.seafettle.photo.Pictures.afterStart;
import static org.seafettle.photo.Pictures.joined;
import static org.seafettle.photo.Pictures.jpeg;
import static org.seafettle.photo.Pictures.latin;
import static org.seafettle.photo.Pictures.plain;
import static org.seafettle.photo.Pictures.quarter;
import static org.seafettle.photo.Pictures.quarters;
import static org.seafettle.photo.Pictures.read;
import static org.seafettle.photo.Pictures.resource;
import static org.seafettle.photo.Pictures.seen;
import static org.seafettle.photo.Pictures.segment;
import static org.seafettle.photo.Pictures.sunset;
import static org.seafettle.photo.Pictures.written;

import java.awt.Color;
import java.awt.Transparency;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.image.BufferedImage;
import java.awt.image.ComponentColorModel;
import java.awt.image.DataBuffer;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.function.Predicate;
import java.util.zip.CRC32;
import java.util.zip.DeflaterOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ColourTest {

  @ParameterizedTest
  @CsvSource({
    "255, 255, 255, 255, 255, 255, 255", "0, 255, 255, 255, 0, 255, 255",
    "255, 0, 255, 255, 255, 0, 255", "255, 255, 0, 255, 255, 255, 0",
    "255, 255, 255, 0, 0, 0, 0", "128, 255, 255, 128, 64, 128, 128"
  })
  void each_ink_takes_its_part_of_the_light(int c, int m, int y, int k, int r, int g, int b) {
    assertThat(printed(Pictures.inks(new int[] {c, m, y, k}, 0))).matches(near(r, g, b));
  }

  @ParameterizedTest
  @CsvSource({
    "0, 128, 128, 255, 255, 255, 255", "255, 128, 128, 255, 0, 0, 0",
    "76, 85, 255, 255, 0, 255, 255", "0, 128, 128, 0, 0, 0, 0"
  })
  void inks_stored_as_colour_differences_are_read_too(
      int luma, int cb, int cr, int k, int r, int g, int b) {
    assertThat(printed(Pictures.inks(new int[] {luma, cb, cr, k}, 2))).matches(near(r, g, b));
  }

  @ParameterizedTest
  @CsvSource({"0", "40", "128", "200", "255"})
  void a_grey_stays_the_grey_it_is(int grey) {
    var eight = plain(grey, BufferedImage.TYPE_BYTE_GRAY);
    var sixteen = plain(grey * 257, BufferedImage.TYPE_USHORT_GRAY);

    assertThat(printed(jpeg(eight), Mark.ring(1, 0, 0))).matches(near(grey, grey, grey));
    assertThat(printed(written(eight, "png"))).matches(near(grey, grey, grey));
    assertThat(printed(written(eight, "tiff"))).matches(near(grey, grey, grey));
    assertThat(printed(written(sixteen, "png"))).matches(near(grey, grey, grey));
  }

  @Test
  void sixteen_bits_a_colour_become_eight() {
    var model =
        new ComponentColorModel(
            ColorSpace.getInstance(CS_sRGB),
            false,
            false,
            Transparency.OPAQUE,
            DataBuffer.TYPE_USHORT);
    var raster = model.createCompatibleWritableRaster(64, 48);
    var image = new BufferedImage(model, raster, false, null);
    Pictures.draw(image, 64, 48);

    var print = seen(Print.of(read(written(image, "png")), PrintOrder.upTo(64)));

    assertQuarters(print);
    assertThat(print.getColorModel().getComponentSize(0)).isEqualTo(8);
  }

  @Test
  void what_is_transparent_is_printed_on_white() {
    var image = new BufferedImage(64, 48, BufferedImage.TYPE_INT_ARGB);
    for (int y = 0; y < 48; y++) {
      for (int x = 0; x < 64; x++) {
        image.setRGB(x, y, x < 32 ? 0x00ff0000 : 0x80000000);
      }
    }
    var print = seen(Print.of(read(written(image, "png")), PrintOrder.upTo(64)));

    assertThat(print.getColorModel().hasAlpha()).isFalse();
    assertThat(quarter(print, 0)).isEqualTo(Color.WHITE);
    assertThat(quarter(print, 1)).matches(near(127, 127, 127));
  }

  @Test
  void a_webp_picture_is_printed_upright_with_its_time_known() {
    var original = read(resource("quarters.webp"));

    assertThat(original.format()).isEqualTo(Format.WEBP);
    assertThat(original.metadata().orientation()).isEqualTo(Orientation.TURN_RIGHT);
    assertThat(original.metadata().taken().orElseThrow().zone()).isPresent();
    assertThat(original.metadata().position()).isPresent();
    var print = seen(Print.of(original, PrintOrder.upTo(500)));
    assertThat(print.getWidth()).isEqualTo(80);
    assertThat(Pictures.near(quarter(print, 0), Pictures.BLUE)).isTrue();
    assertThat(Pictures.near(quarter(print, 1), Pictures.RED)).isTrue();
  }

  @Test
  void a_transparent_webp_picture_is_printed_on_white() {
    var print = seen(Print.of(read(resource("half-clear.webp")), PrintOrder.upTo(500)));

    assertThat(Pictures.near(quarter(print, 0), Pictures.RED)).isTrue();
    assertThat(quarter(print, 1)).matches(near(255, 255, 255));
  }

  @Test
  void a_tiff_picture_is_printed_as_jpeg() {
    var print = Print.of(read(written(quarters(120, 80), "tiff")), PrintOrder.upTo(60));

    assertThat(print.format()).isEqualTo(Format.JPEG);
    assertThat(print.size()).isEqualTo(new Size(60, 40));
    assertQuarters(seen(print));
  }

  @Test
  void a_picture_with_a_palette_is_printed() {
    var palette = new BufferedImage(64, 48, BufferedImage.TYPE_BYTE_INDEXED);
    Pictures.draw(palette, 64, 48);
    var expected = new Color(palette.getRGB(48, 36));

    assertThat(quarter(seen(Print.of(read(written(palette, "png")), PrintOrder.upTo(64))), 3))
        .isEqualTo(expected);
  }

  @Test
  void a_profile_that_is_srgb_anyway_is_dropped_and_the_pixels_kept() {
    var plain = jpeg(sunset(100, 60));

    assertThat(Print.of(read(withProfile(plain, CS_sRGB)), PrintOrder.upTo(100)).bytes())
        .isEqualTo(plain);
  }

  @Test
  void the_colours_of_another_profile_become_srgb() {
    // half the light is 188 of 255 in sRGB (IEC 61966-2-1)
    var grey = plain(128, BufferedImage.TYPE_3BYTE_BGR);

    assertThat(printed(withProfile(jpeg(grey), CS_LINEAR_RGB))).matches(near(188, 188, 188));
    assertThat(printed(pngWithProfile(written(grey, "png"), CS_LINEAR_RGB)))
        .matches(near(188, 188, 188));
    assertThat(printed(pngWithProfile(written(grey, "png"), CS_sRGB))).matches(near(128, 128, 128));
  }

  @Test
  void a_profile_of_another_kind_of_colour_or_a_damaged_one_is_passed_over() {
    var plain = jpeg(sunset(100, 60));
    var damaged = segment(0xe2, joined(latin("ICC_PROFILE\0\1\1"), new byte[200]));

    assertThat(Print.of(read(withProfile(plain, CS_GRAY)), PrintOrder.upTo(100)).bytes())
        .isEqualTo(plain);
    assertThat(Print.of(read(afterStart(plain, damaged)), PrintOrder.upTo(100)).bytes())
        .isEqualTo(plain);
  }

  private static void assertQuarters(BufferedImage print) {
    var colours = new Color[] {Pictures.RED, Pictures.GREEN, Pictures.BLUE, Pictures.BLACK};
    for (int i = 0; i < 4; i++) {
      assertThat(Pictures.near(quarter(print, i), colours[i])).isTrue();
    }
  }

  private static Color printed(byte[] bytes, Mark... marks) {
    return quarter(seen(Print.of(read(bytes), PrintOrder.upTo(64).with(marks))), 3);
  }

  private static Predicate<Color> near(int r, int g, int b) {
    return colour ->
        Math.abs(colour.getRed() - r) <= 3
            && Math.abs(colour.getGreen() - g) <= 3
            && Math.abs(colour.getBlue() - b) <= 3;
  }

  private static byte[] withProfile(byte[] jpeg, int space) {
    var profile = ICC_Profile.getInstance(space).getData();
    return afterStart(jpeg, segment(0xe2, joined(latin("ICC_PROFILE\0\1\1"), profile)));
  }

  private static byte[] pngWithProfile(byte[] png, int space) {
    var packed = new ByteArrayOutputStream();
    try (var out = new DeflaterOutputStream(packed)) {
      out.write(ICC_Profile.getInstance(space).getData());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    byte[] typed = joined(latin("iCCPour own\0\0"), packed.toByteArray());
    var sum = new CRC32();
    sum.update(typed);
    var chunk = ByteBuffer.allocate(typed.length + 8).putInt(typed.length - 4).put(typed);
    chunk.putInt((int) sum.getValue());
    return joined(Arrays.copyOf(png, 33), chunk.array(), Arrays.copyOfRange(png, 33, png.length));
  }
}

package org.seafettle.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.seafettle.photo.Pictures.PLACE;
import static org.seafettle.photo.Pictures.joined;
import static org.seafettle.photo.Pictures.jpeg;
import static org.seafettle.photo.Pictures.latin;
import static org.seafettle.photo.Pictures.quarters;
import static org.seafettle.photo.Pictures.read;
import static org.seafettle.photo.Pictures.resource;
import static org.seafettle.photo.Pictures.sunset;
import static org.seafettle.photo.Pictures.written;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;
import java.util.zip.CRC32;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.seafettle.problem.Problem;
import org.seafettle.problem.Refused;

class RefusalTest {

  @ParameterizedTest
  @ValueSource(strings = {"heic", "heix", "hevc", "mif1", "msf1"})
  void a_phones_heic_picture_is_refused_with_the_setting_to_change(String brand) {
    var problem = refused(isoFile(brand, "mif1heic"));

    assertThat(problem.fault()).contains("HEIC").contains("JPEG, PNG, WebP and TIFF");
    assertThat(problem.remedy()).contains("most compatible").contains("JPEG");
  }

  @ParameterizedTest
  @CsvSource({"avif, mif1", "mif1, avif"})
  void an_avif_picture_is_refused(String brand, String compatible) {
    assertThat(refused(isoFile(brand, compatible)).fault()).contains("AVIF");
  }

  @Test
  void a_film_is_refused() {
    var problem = refused(isoFile("mp42", "isom"));

    assertThat(problem.fault()).contains("film");
    assertThat(problem.remedy()).contains("single picture");
  }

  @ParameterizedTest
  @CsvSource({"gif, GIF", "bmp, BMP"})
  void a_picture_in_another_format_is_refused_and_told_which_are_read(String format, String title) {
    var problem = refused(written(quarters(120, 80), format));

    assertThat(problem.fault()).contains(title).contains("JPEG, PNG, WebP and TIFF");
    assertThat(problem.remedy()).contains("Convert");
  }

  @ParameterizedTest
  @CsvSource({"%PDF-1.7, PDF", "<svg xmlns='http://www.w3.org/2000/svg'/>, SVG", "8BPS, layered"})
  void a_document_or_drawing_is_refused(String text, String title) {
    assertThat(refused(latin(text)).fault()).contains(title);
  }

  @Test
  void a_text_with_a_pictures_name_is_not_a_picture() {
    assertThat(refused(latin("not a picture at all")).fault()).contains("not a picture");
  }

  @Test
  void an_empty_file_is_refused() {
    assertThat(refused(new byte[0]).fault()).contains("empty");
  }

  @ParameterizedTest
  @ValueSource(ints = {3, 4, 20, 300, 700})
  void a_jpeg_that_ends_too_early_is_refused(int length) {
    var whole = jpeg(sunset(120, 80));

    assertThat(refused(Arrays.copyOf(whole, length)).fault()).contains("cut short");
    assertThat(refused(Arrays.copyOf(whole, whole.length - 1)).fault()).contains("cut short");
  }

  @Test
  void a_jpeg_whose_missing_pixels_are_hidden_by_an_end_marker_is_refused_where_it_is_decoded() {
    var whole = jpeg(sunset(400, 300));
    var patched = joined(Arrays.copyOf(whole, whole.length / 2), latin("\u00ff\u00d9"));

    assertThat(refusedInPrint(patched, 100).fault()).contains("damaged");
  }

  @Test
  void a_png_cut_anywhere_is_refused() {
    var whole = written(sunset(40, 30), "png");
    for (int length = 8; length < whole.length; length++) {
      assertThat(refused(Arrays.copyOf(whole, length)).fault()).contains("cut short");
    }
  }

  @Test
  void a_png_with_a_wrong_check_sum_is_refused() {
    var whole = written(sunset(40, 30), "png");
    whole[whole.length / 2] ^= 1;

    assertThat(refused(whole).fault()).contains("damaged");
  }

  @Test
  void a_webp_cut_anywhere_is_refused() {
    var whole = resource("quarters.webp");
    for (int length = 12; length < whole.length; length++) {
      assertThat(refused(Arrays.copyOf(whole, length)).fault()).contains("cut short");
    }
  }

  @Test
  void a_tiff_cut_anywhere_is_refused() {
    var whole = written(quarters(40, 30), "tiff");
    for (int length = 8; length < whole.length; length += 7) {
      assertThat(refused(Arrays.copyOf(whole, length)).fault()).contains("TIFF");
    }
  }

  @Test
  void a_cameras_raw_picture_is_refused() {
    var raw = written(quarters(40, 30), "tiff");
    assertThat(refused(withTag(raw, 254, 1)).fault()).contains("raw");
  }

  @Test
  void a_bomb_that_announces_more_than_a_hundred_megapixels_is_refused_before_it_is_decoded() {
    var bomb = written(quarters(40, 30), "png");
    ByteBuffer.wrap(bomb).putInt(16, 50_000).putInt(20, 50_000);
    var sum = new CRC32();
    sum.update(bomb, 12, 17);
    ByteBuffer.wrap(bomb).putInt(29, (int) sum.getValue());

    var problem = refused(bomb);

    assertThat(problem.fault()).contains("50000 x 50000").contains("100 megapixels");
  }

  @Test
  void a_jpeg_of_more_than_a_hundred_megapixels_is_refused_before_it_is_decoded() {
    var large = jpeg(quarters(40, 30));
    int frame = indexOf(large, 0xc0);
    ByteBuffer.wrap(large).putShort(frame + 5, (short) 20_000).putShort(frame + 7, (short) 20_000);

    assertThat(refused(large).fault()).contains("20000 x 20000");
  }

  @Test
  void a_file_of_more_than_64_mib_is_refused() {
    var large = Arrays.copyOf(jpeg(quarters(40, 30)), Original.MOST_BYTES + 1);

    assertThat(refused(large).fault()).contains("64 MiB");
  }

  @ParameterizedTest
  @CsvSource({"15, 200", "200, 15", "1, 1"})
  void a_picture_too_small_to_show_anything_is_refused(int width, int height) {
    assertThat(refused(written(quarters(width, height), "png")).fault()).contains("too few");
  }

  @Test
  void sixteen_pixels_are_enough() {
    assertThat(read(written(quarters(16, 16), "png")).size()).isEqualTo(new Size(16, 16));
  }

  private static Problem refused(byte[] bytes) {
    return only(catchThrowableOfType(Refused.class, () -> read(bytes)));
  }

  private static Problem refusedInPrint(byte[] bytes, int edge) {
    var original = read(bytes);
    return only(
        catchThrowableOfType(Refused.class, () -> Print.of(original, PrintOrder.upTo(edge))));
  }

  private static Problem only(Refused refused) {
    assertThat(refused).isNotNull();
    assertThat(refused.problems()).hasSize(1);
    assertThat(refused.problems().get(0).place()).isEqualTo(PLACE);
    return refused.problems().get(0);
  }

  private static byte[] isoFile(String brand, String compatible) {
    int length = 16 + compatible.length();
    return joined(
        new byte[] {0, 0, 0, (byte) length}, latin("ftyp" + brand + "\0\0\0\0" + compatible));
  }

  private static int indexOf(byte[] jpeg, int marker) {
    for (int at = 0; ; at++) {
      if (jpeg[at] == (byte) 0xff && jpeg[at + 1] == (byte) marker) {
        return at;
      }
    }
  }

  /** Writes another directory of the same picture at the end, with one tag more before all. */
  private static byte[] withTag(byte[] tiff, int tag, int value) {
    var in = ByteBuffer.wrap(tiff);
    in.order(tiff[0] == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
    int directory = in.getInt(4);
    int entries = in.getShort(directory);
    var out = ByteBuffer.allocate(tiff.length + 2 + 12 * (entries + 1) + 4).order(in.order());
    out.put(tiff).putShort((short) (entries + 1));
    out.putShort((short) tag).putShort((short) 4).putInt(1).putInt(value);
    out.put(tiff, directory + 2, 12 * entries).putInt(0).putInt(4, tiff.length);
    return out.array();
  }
}

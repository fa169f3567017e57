package org.seafettle.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SameBytesTest {

  /** Prints the sample in a process of its own and writes down its fingerprint. */
  public static final class Fork {

    public static void main(String[] arguments) throws GeneralSecurityException {
      System.out.print(digest(Sample.print(new PdfPrinter(new Typefaces()))));
    }
  }

  @Test
  void two_prints_of_one_survey_are_the_same_bytes() throws Exception {
    var printer = new PdfPrinter(new Typefaces());
    var first = digest(Sample.print(printer));
    assertThat(digest(Sample.print(printer))).isEqualTo(first);
    assertThat(digest(Sample.print(new PdfPrinter(new Typefaces())))).isEqualTo(first);
  }

  @Test
  void a_machine_with_another_zone_language_and_folder_prints_the_same_bytes(@TempDir Path folder)
      throws Exception {
    assertThat(fork(folder, "Pacific/Chatham", "ar", "EG"))
        .isEqualTo(digest(Sample.print(new PdfPrinter(new Typefaces()))));
  }

  @Test
  void two_threads_print_the_same_bytes() throws Exception {
    var printer = new PdfPrinter(new Typefaces());
    var expected = digest(Sample.print(printer));
    var prints = List.of(0, 1, 2, 3).parallelStream().map(n -> Sample.print(printer)).toList();
    for (var print : prints) {
      assertThat(digest(print)).isEqualTo(expected);
    }
  }

  @Test
  void the_order_in_which_pictures_are_given_does_not_matter() throws Exception {
    var printer = new PdfPrinter(new Typefaces());
    var backwards = new TreeMap<String, byte[]>(java.util.Comparator.reverseOrder());
    backwards.putAll(Sample.pictures());
    var attachments = List.of(Sample.SURVEY, Sample.ASSESSMENT);
    var pdf = printer.print(Sample.xhtml(), backwards, attachments, Sample.METADATA);
    assertThat(digest(pdf)).isEqualTo(digest(Sample.print(printer)));
  }

  @Test
  void another_attachment_makes_another_identifier() throws Exception {
    var printer = new PdfPrinter(new Typefaces());
    var one = printer.print(Sample.page("<p>a</p>"), Map.of(), List.of(), Sample.METADATA);
    var other =
        printer.print(Sample.page("<p>a</p>"), Map.of(), List.of(Sample.SURVEY), Sample.METADATA);
    assertThat(identifier(one)).isNotEqualTo(identifier(other));
  }

  private static String identifier(byte[] pdf) {
    try (var printed = new Printed(pdf)) {
      return printed.document().getDocument().getDocumentID().toString();
    }
  }

  private static String fork(Path folder, String zone, String language, String country)
      throws IOException, InterruptedException {
    var process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Duser.timezone=" + zone,
                "-Duser.language=" + language,
                "-Duser.country=" + country,
                "-Djava.awt.headless=true",
                "-Djava.io.tmpdir=" + folder,
                "-cp",
                System.getProperty("java.class.path"),
                Fork.class.getName())
            .directory(folder.toFile())
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    try (var out = process.getInputStream()) {
      var digest = new String(out.readAllBytes(), StandardCharsets.US_ASCII);
      assertThat(process.waitFor()).isZero();
      return digest;
    }
  }

  private static String digest(byte[] pdf) throws GeneralSecurityException {
    return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(pdf));
  }
}

package org.seafettle.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.seafettle.photo.Fingerprint;

/** SHA-256, in hexadecimal. */
final class Sha256 {

  private Sha256() {}

  static String of(String text) {
    return of(text.getBytes(StandardCharsets.UTF_8));
  }

  static String of(byte[] bytes) {
    return Fingerprint.of(bytes).hex();
  }

  /** Empty text where there is no such file. */
  static String of(Path file) throws IOException {
    return Files.isRegularFile(file) ? of(Files.readAllBytes(file)) : "";
  }
}

package org.seafettle.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import org.seafettle.photo.Original;
import org.seafettle.photo.Print;
import org.seafettle.photo.PrintOrder;

/**
 * Prints that are kept from run to run, each under what it was made from: to decode and scale what
 * a telephone takes is most of the work of a report. Whatever is damaged or missing is made anew,
 * so the folder may be deleted at any time. Safe for many threads and processes.
 */
final class KeptPrints implements Prints {

  private static final int DIGITS = 64;

  private final Path folder;
  private final Workbench workbench;

  KeptPrints(Path folder, Workbench workbench) {
    this.folder = folder;
    this.workbench = workbench;
  }

  @Override
  public byte[] of(Original original, PrintOrder order) {
    if (Print.isReady(original, order)) {
      return Prints.MADE.of(original, order);
    }
    var from = String.join(" ", Version.text(), original.fingerprint().hex(), order.toString());
    var file = folder.resolve(Sha256.of(from));
    return kept(file)
        .orElseGet(
            () -> {
              var print = Prints.MADE.of(original, order);
              keep(file, print);
              return print;
            });
  }

  /** The file begins with the print's own fingerprint. */
  private static Optional<byte[]> kept(Path file) {
    try {
      var content = Files.readAllBytes(file);
      var print = Arrays.copyOfRange(content, Math.min(DIGITS, content.length), content.length);
      var head = new String(content, 0, content.length - print.length, StandardCharsets.US_ASCII);
      return Optional.of(print).filter(p -> head.equals(Sha256.of(p)));
    } catch (IOException notThere) {
      return Optional.empty();
    }
  }

  private void keep(Path file, byte[] print) {
    var content = new ByteArrayOutputStream();
    content.writeBytes(Sha256.of(print).getBytes(StandardCharsets.US_ASCII));
    content.writeBytes(print);
    try {
      Files.createDirectories(folder);
      workbench.put(file, content.toByteArray());
    } catch (IOException full) {
      // the report does not need it, and what cannot be written of the report is told
    }
  }
}

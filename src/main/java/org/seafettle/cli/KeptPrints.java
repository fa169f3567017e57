package org.seafettle.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
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
  private final Path workbench;

  /**
   * @param workbench where a file is written before it is moved into the folder
   */
  KeptPrints(Path folder, Path workbench) {
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
    try {
      Files.createDirectories(folder);
      var unfinished = Files.createTempFile(workbench, "print", "");
      try (var out = Files.newOutputStream(unfinished)) {
        out.write(Sha256.of(print).getBytes(StandardCharsets.US_ASCII));
        out.write(print);
      }
      Files.move(
          unfinished, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (IOException full) {
      // the report does not need it, and what cannot be written of the report is told
    }
  }
}

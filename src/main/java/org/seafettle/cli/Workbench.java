package org.seafettle.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/**
 * Where files are written before they are moved into their places, whole or not at all. Safe for
 * many threads.
 *
 * @param folder on the same disk as the places
 */
record Workbench(Path folder) {

  /** Clears away what a run that was cut off left unfinished. */
  void clear() throws IOException {
    Files.createDirectories(folder);
    try (var unfinished = Files.list(folder)) {
      for (var file : unfinished.toList()) {
        Files.delete(file);
      }
    }
  }

  /** Puts a file in its place, instead of one that is there. */
  void put(Path target, byte[] content) throws IOException {
    var unfinished = folder.resolve(Thread.currentThread().getId() + "-" + target.getFileName());
    Files.write(unfinished, content);
    Files.move(
        unfinished, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
  }
}

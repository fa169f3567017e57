package org.seafettle.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A folder that files are put into, all of them or none. Each is written beside its place and then
 * moved there. A file of that name that says something else is kept under another name.
 */
final class Destination {

  private final Path folder;
  private final Path workbench;

  Destination(Path folder) {
    this(folder, folder);
  }

  /**
   * @param workbench where files are written before they are moved; on the same disk
   */
  Destination(Path folder, Path workbench) {
    this.folder = folder;
    this.workbench = workbench;
  }

  /**
   * A file that was put in its place.
   *
   * @param path where it is
   * @param kept where the file now is that was there before and said something else
   */
  record Placed(Path path, Optional<Path> kept) {}

  List<Placed> put(Map<String, byte[]> files) throws IOException {
    Files.createDirectories(folder);
    Files.createDirectories(workbench);
    var beside = new LinkedHashMap<Path, Path>();
    try {
      for (var file : files.entrySet()) {
        var temporary = workbench.resolve("." + file.getKey() + "." + process() + ".part");
        beside.put(folder.resolve(file.getKey()), temporary);
        Files.write(temporary, file.getValue());
      }
      var placed = new ArrayList<Placed>();
      for (var move : beside.entrySet()) {
        placed.add(place(move.getValue(), move.getKey()));
      }
      return placed;
    } finally {
      for (var temporary : beside.values()) {
        Files.deleteIfExists(temporary);
      }
    }
  }

  /** Two runs at once must not write into one file. */
  private static long process() {
    return ProcessHandle.current().pid();
  }

  private static Placed place(Path temporary, Path target) throws IOException {
    var kept = Optional.<Path>empty();
    if (Files.exists(target)) {
      if (Arrays.equals(Files.readAllBytes(target), Files.readAllBytes(temporary))) {
        return new Placed(target, kept);
      }
      kept = Optional.of(Files.move(target, free(target)));
    }
    Files.move(temporary, target, StandardCopyOption.ATOMIC_MOVE);
    return new Placed(target, kept);
  }

  /** {@code name.earlier-1.pdf}, or the next number that is free. */
  private static Path free(Path target) {
    var name = target.getFileName().toString();
    int dot = name.lastIndexOf('.');
    for (int n = 1; ; n++) {
      var other =
          target.resolveSibling(name.substring(0, dot) + ".earlier-" + n + name.substring(dot));
      if (!Files.exists(other)) {
        return other;
      }
    }
  }
}

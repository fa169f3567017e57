package org.seafettle.json;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.seafettle.problem.Place;
import org.seafettle.problem.Problem;
import org.seafettle.problem.Refused;

/**
 * A survey's folder on the disk.
 *
 * @param folder the folder
 * @param fileName the survey file in it
 */
record DiskFolder(Path folder, String fileName) implements SurveyFolder {

  /** Files that are listed to find what was meant. */
  private static final int MOST_LISTED = 5000;

  @Override
  public byte[] survey() {
    return bytes(folder.resolve(fileName), fileName, JsonText.MOST_BYTES);
  }

  @Override
  public byte[] read(String file) {
    return bytes(folder.resolve(file), file, MOST_PHOTO_BYTES);
  }

  private static byte[] bytes(Path path, String name, int most) {
    try (var in = Files.newInputStream(path)) {
      var bytes = in.readNBytes(most + 1);
      if (bytes.length > most) {
        throw new Refused(FilePaths.tooLong(name, most));
      }
      return bytes;
    } catch (IOException e) {
      throw new Refused(
          new Problem(
              Place.file(name), "The file cannot be read.", "Check that it may be opened."));
    }
  }

  @Override
  public List<String> files() {
    try (Stream<Path> walk = Files.walk(folder, 4)) {
      return walk.limit(MOST_LISTED)
          .filter(Files::isRegularFile)
          .map(p -> folder.relativize(p).toString().replace('\\', '/'))
          .sorted()
          .toList();
    } catch (IOException | java.io.UncheckedIOException unreadable) {
      return List.of();
    }
  }

  @Override
  public Optional<Missing> missing(String file) {
    var path = folder.resolve(file);
    if (!Files.exists(path) || !named(file)) {
      return Optional.of(FilePaths.notThere(file, files()));
    }
    if (!inside(path)) {
      return Optional.of(
          new Missing(
              "\"" + file + "\" is a link that leads out of the survey's folder.",
              "Put the file itself into the folder."));
    }
    return Files.isRegularFile(path)
        ? Optional.empty()
        : Optional.of(new Missing("\"" + file + "\" is no file.", "Name a file, not a folder."));
  }

  /** Whether every part is written as on the disk, also where the disk does not care. */
  private boolean named(String file) {
    var at = folder;
    for (var part : file.split("/")) {
      var next = at.resolve(part);
      try (var names = Files.list(at)) {
        if (names.noneMatch(n -> n.getFileName().toString().equals(part))) {
          return false;
        }
      } catch (IOException e) {
        return false;
      }
      at = next;
    }
    return true;
  }

  private boolean inside(Path path) {
    try {
      return path.toRealPath().startsWith(folder.toRealPath());
    } catch (IOException e) {
      return false;
    }
  }

  @Override
  public Optional<SurveyFolder> packed(String path) {
    return Optional.empty();
  }

  @Override
  public Path outside(String path) {
    return folder.resolve(path).normalize();
  }
}

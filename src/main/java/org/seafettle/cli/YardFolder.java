package org.seafettle.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.SortedMap;
import java.util.TreeMap;
import org.seafettle.problem.Place;
import org.seafettle.problem.Problem;
import org.seafettle.problem.Refused;

/** A folder in which each survey has a folder or a .zip of its own. */
final class YardFolder {

  private YardFolder() {}

  /**
   * The surveys by the names of their folders and archives, whatever the order of the disk. What is
   * neither is left out.
   *
   * @throws Refused where there are none
   */
  static SortedMap<String, Path> surveys(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      throw refused(folder, "There is no such folder.", "Name the folder that holds the surveys.");
    }
    var surveys = new TreeMap<String, Path>();
    try (var all = Files.list(folder)) {
      all.filter(YardFolder::isSurvey).forEach(s -> surveys.put(s.getFileName().toString(), s));
    }
    if (surveys.isEmpty()) {
      throw refused(
          folder,
          "There is no survey in it.",
          "Put each survey into it as a folder with a survey.json, or as a .zip of one.");
    }
    return surveys;
  }

  private static boolean isSurvey(Path path) {
    return Files.isDirectory(path)
        ? Files.isRegularFile(path.resolve("survey.json"))
        : path.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(".zip");
  }

  private static Refused refused(Path folder, String fault, String remedy) {
    return new Refused(new Problem(Place.file(folder.toString()), fault, remedy));
  }
}

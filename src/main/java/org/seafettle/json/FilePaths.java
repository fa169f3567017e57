package org.seafettle.json;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.seafettle.json.SurveyFolder.Missing;
import org.seafettle.problem.Place;
import org.seafettle.problem.Problem;
import org.seafettle.problem.Spelling;

/** The rules for paths in a survey file. */
final class FilePaths {

  private static final Pattern ADDRESS = Pattern.compile("[A-Za-z][A-Za-z0-9+.-]+:.*");
  private static final Pattern DRIVE = Pattern.compile("[A-Za-z]:.*");

  private FilePaths() {}

  /** What is wrong with a path as it is written; empty where nothing is. */
  static Optional<Missing> wrong(String path) {
    if (path.indexOf('\\') >= 0) {
      return missing(
          "\"" + path + "\" has a backslash in it.",
          "Write / between folders: \"" + path.replace('\\', '/') + "\".");
    }
    if (path.startsWith("/") || DRIVE.matcher(path).matches()) {
      return missing(
          "\"" + path + "\" starts at the root of a disk.",
          "Write the path from the survey's folder on.");
    }
    if (ADDRESS.matcher(path).matches()) {
      return missing(
          "\"" + path + "\" is an address, and nothing is fetched from the net.",
          "Put the file into the survey's folder.");
    }
    return path.chars().anyMatch(Character::isISOControl)
        ? missing("The path has a control character in it.", "Remove it.")
        : Optional.empty();
  }

  /** The same for a path that must stay in the folder. */
  static Optional<Missing> wrongWithin(String path) {
    var parts = List.of(path.split("/", -1));
    if (wrong(path).isEmpty() && parts.contains("..")) {
      return missing(
          "\"" + path + "\" leaves the survey's folder.", "Put the file into the survey's folder.");
    }
    if (wrong(path).isEmpty() && (parts.contains("") || parts.contains("."))) {
      return missing(
          "\"" + path + "\" has a part without a name.", "Write it such as \"photos/p1.jpg\".");
    }
    return wrong(path);
  }

  private static Optional<Missing> missing(String fault, String remedy) {
    return Optional.of(new Missing(fault, remedy));
  }

  /** Names the file that was probably meant. */
  static Missing notThere(String file, List<String> files) {
    var fault = "There is no file \"" + file + "\" in the survey's folder.";
    var other = files.stream().filter(f -> f.equalsIgnoreCase(file)).findFirst();
    if (other.isPresent()) {
      return new Missing(fault, "Write \"" + other.get() + "\"; capital and small letters matter.");
    }
    var remedy =
        files.stream()
            .filter(f -> last(f).equalsIgnoreCase(last(file)))
            .findFirst()
            .or(() -> Spelling.nearest(file, files))
            .map(f -> "Did you mean \"" + f + "\"?")
            .orElse("Put it there, or correct the path.");
    return new Missing(fault, remedy);
  }

  private static String last(String path) {
    return path.substring(path.lastIndexOf('/') + 1);
  }

  static Problem tooLong(String name, int most) {
    return new Problem(
        Place.file(name),
        "The file is longer than " + (most / 1_000_000) + " MB.",
        "Make it smaller.");
  }
}

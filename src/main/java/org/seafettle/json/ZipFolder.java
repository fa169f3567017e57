package org.seafettle.json;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import org.seafettle.problem.Place;
import org.seafettle.problem.Problem;
import org.seafettle.problem.Refused;

/**
 * A survey's folder in a .zip. It is opened anew for each file, so nothing has to be closed later.
 *
 * @param zip the archive
 * @param top the folder in it that holds the survey, with its /, or empty
 * @param files what lies in that folder
 */
record ZipFolder(Path zip, String top, List<String> files) implements SurveyFolder {

  private static final int MOST_ENTRIES = 10_000;

  /** What all files of a survey may come to; more is no survey but a bomb. */
  private static final long MOST_BYTES = 4L << 30;

  static final String SURVEY = "survey.json";

  /**
   * @throws Refused where it is no archive, is dangerous, or holds no survey
   */
  static ZipFolder open(Path zip) {
    try (var file = new ZipFile(zip.toFile(), StandardCharsets.UTF_8)) {
      var names = names(zip, file);
      var top = top(zip, names);
      return new ZipFolder(zip, top, within(names, top));
    } catch (ZipException e) {
      throw new Refused(unreadable(zip, e));
    } catch (IOException | IllegalArgumentException e) {
      throw refused(zip, "The archive cannot be read.", "Check that it may be opened.");
    }
  }

  private static Problem unreadable(Path zip, ZipException e) {
    var message = String.valueOf(e.getMessage()).toLowerCase(Locale.ROOT);
    return message.contains("encrypted")
        ? problem(zip, "The archive is encrypted.", "Pack the folder anew, without a password.")
        : problem(zip, "The file is no .zip archive, or damaged.", "Pack the folder anew.");
  }

  private static List<String> names(Path zip, ZipFile file) {
    if (file.size() > MOST_ENTRIES) {
      throw refused(
          zip,
          "The archive has " + file.size() + " entries.",
          "Pack only the survey and its photographs, at most " + MOST_ENTRIES + " files.");
    }
    var names = new ArrayList<String>();
    var seen = new HashSet<String>();
    var faults = new ArrayList<Problem>();
    long bytes = 0;
    for (var entry : file.stream().toList()) {
      wrong(zip, entry, seen).ifPresent(faults::add);
      bytes += Math.max(0, entry.getSize());
      if (!entry.isDirectory()) {
        names.add(entry.getName());
      }
    }
    if (bytes > MOST_BYTES) {
      faults.add(
          problem(
              zip,
              "Unpacked, the archive would have " + (bytes >> 20) + " MB.",
              "Pack only the survey and its photographs."));
    }
    Refused.ifAny(faults);
    return names;
  }

  private static Optional<Problem> wrong(Path zip, ZipEntry entry, HashSet<String> seen) {
    var name = entry.getName();
    var path = entry.isDirectory() ? name.substring(0, name.length() - 1) : name;
    if (!seen.add(path)) {
      return Optional.of(
          problem(zip, "The archive has two entries \"" + path + "\".", "Pack the folder anew."));
    }
    return FilePaths.wrongWithin(path)
        .map(
            m ->
                problem(
                    zip,
                    "The archive has an entry that leaves its folder or is misnamed: \""
                        + path
                        + "\".",
                    "Pack the folder anew, with paths that start at the folder."));
  }

  /** The folder that holds the survey: the archive itself, or its only folder at the top. */
  private static String top(Path zip, List<String> names) {
    if (names.contains(SURVEY)) {
      return "";
    }
    var tops =
        names.stream()
            .filter(n -> n.endsWith("/" + SURVEY) && n.indexOf('/') == n.lastIndexOf('/'))
            .toList();
    if (tops.size() == 1) {
      return tops.get(0).substring(0, tops.get(0).length() - SURVEY.length());
    }
    throw tops.isEmpty()
        ? refused(
            zip,
            "There is no survey.json in the archive.",
            "Pack the folder that holds survey.json.")
        : refused(
            zip,
            "The archive holds " + tops.size() + " surveys: " + String.join(", ", tops) + ".",
            "Pack one survey, and each earlier one into an archive of its own.");
  }

  @Override
  public String fileName() {
    return zip.getFileName() + "/" + SURVEY;
  }

  @Override
  public byte[] survey() {
    return bytes(SURVEY, JsonText.MOST_BYTES);
  }

  @Override
  public byte[] read(String file) {
    return bytes(file, MOST_PHOTO_BYTES);
  }

  private byte[] bytes(String name, int most) {
    try (var file = new ZipFile(zip.toFile(), StandardCharsets.UTF_8)) {
      var entry = file.getEntry(top + name);
      if (entry == null) {
        throw refused(zip, "There is no \"" + name + "\" in the archive.", "Pack the folder anew.");
      }
      try (var in = file.getInputStream(entry)) {
        var bytes = in.readNBytes(most + 1);
        if (bytes.length > most) {
          throw new Refused(FilePaths.tooLong(name, most));
        }
        return bytes;
      }
    } catch (IOException e) {
      throw refused(
          zip, "\"" + name + "\" cannot be read from the archive.", "Pack the folder anew.");
    }
  }

  @Override
  public Optional<Missing> missing(String file) {
    return files.contains(file) ? Optional.empty() : Optional.of(FilePaths.notThere(file, files));
  }

  @Override
  public Optional<SurveyFolder> packed(String path) {
    var file = path.endsWith(SURVEY) ? path : path.replaceFirst("/?$", "/" + SURVEY);
    if (!files.contains(file)) {
      return Optional.empty();
    }
    var under = file.substring(0, file.length() - SURVEY.length());
    return Optional.of(new ZipFolder(zip, top + under, within(files, under)));
  }

  private static List<String> within(List<String> names, String folder) {
    return names.stream()
        .filter(n -> n.startsWith(folder))
        .map(n -> n.substring(folder.length()))
        .toList();
  }

  /** An archive stands for the folder of its name beside it. */
  @Override
  public Path outside(String path) {
    var name = zip.getFileName().toString().replaceFirst("(?i)\\.zip$", "");
    return zip.resolveSibling(name).resolve(path).normalize();
  }

  private static Refused refused(Path zip, String fault, String remedy) {
    return new Refused(problem(zip, fault, remedy));
  }

  private static Problem problem(Path zip, String fault, String remedy) {
    return new Problem(Place.file(zip.getFileName().toString()), fault, remedy);
  }
}

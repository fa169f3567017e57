package org.seafettle.json;

import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.seafettle.problem.Place;
import org.seafettle.problem.Problem;
import org.seafettle.problem.Refused;
import org.seafettle.survey.Survey;

/** Reads the earlier surveys that a survey names. */
final class EarlierSurveys {

  private final SurveyFolder folder;
  private final Function<SurveyFolder, SurveySource> reader;
  private final BiFunction<String, byte[], SurveySource> ofReport;
  private final List<SurveySource> sources = new ArrayList<>();
  private final List<Problem> problems = new ArrayList<>();

  /**
   * @param folder of the survey that names them
   * @param reader reads a survey
   * @param ofReport reads the survey that lies in a report of this name
   */
  EarlierSurveys(
      SurveyFolder folder,
      Function<SurveyFolder, SurveySource> reader,
      BiFunction<String, byte[], SurveySource> ofReport) {
    this.folder = folder;
    this.reader = reader;
    this.ofReport = ofReport;
  }

  static boolean isReport(String path) {
    return path.toLowerCase(Locale.ROOT).endsWith(".pdf");
  }

  /** The file of a report, in the survey's folder or elsewhere on the disk. */
  static Optional<byte[]> report(SurveyFolder folder, String path) {
    if (FilePaths.wrongWithin(path).isEmpty() && folder.missing(path).isEmpty()) {
      return Optional.of(folder.read(path));
    }
    var file = folder.outside(path);
    return Files.isRegularFile(file)
        ? Optional.of(SurveyReader.beside(file).read(SurveyReader.fileName(file)))
        : Optional.empty();
  }

  /** The folder of a survey, in the survey's own folder or elsewhere on the disk. */
  static Optional<SurveyFolder> survey(SurveyFolder folder, String path) {
    var file = folder.outside(path);
    return folder
        .packed(path)
        .or(() -> Files.exists(file) ? Optional.of(SurveyReader.open(file)) : Optional.empty());
  }

  /** Reads them; without a survey to compare with, only for their own faults. */
  EarlierSurveys read(Field root, Optional<Survey> now) {
    for (var field : root.child("earlier").items()) {
      field.text().ifPresent(path -> read(field, path, now));
    }
    return this;
  }

  List<SurveySource> sources() {
    return sources;
  }

  List<Problem> problems() {
    return problems;
  }

  private void read(Field field, String path, Optional<Survey> now) {
    var wrong = FilePaths.wrong(path);
    if (wrong.isPresent()) {
      field.blame(wrong.get().fault(), wrong.get().remedy());
      return;
    }
    try {
      var source =
          isReport(path)
              ? report(folder, path).map(bytes -> ofReport.apply(path, bytes))
              : survey(folder, path).map(reader);
      if (source.isEmpty()) {
        field.blame(
            "There is no earlier survey at \"" + path + "\".",
            "Write its path from this survey's folder on, such as \"../2025/survey.json\".");
      }
      source.ifPresent(s -> now.ifPresent(survey -> compare(field, survey, s.survey())));
      source.ifPresent(sources::add);
    } catch (Refused e) {
      e.problems().forEach(p -> problems.add(p.at(under(path, p.place()))));
    }
  }

  /** The place with the path by which the survey names the file, and what lies in that file. */
  private static Place under(String path, Place place) {
    return place.file().startsWith(path + "/")
        ? place
        : new Place(path, place.field(), place.line());
  }

  private static void compare(Field field, Survey now, Survey then) {
    var hin = now.boat().plainHin();
    var other = then.boat().plainHin();
    if (hin.isPresent() && other.isPresent() && !hin.equals(other)) {
      field.blame(
          "The earlier survey is of another boat: its HIN is "
              + then.boat().hin().orElseThrow()
              + ", here it is "
              + now.boat().hin().orElseThrow()
              + ".",
          "Name a survey of the same boat, or correct the HIN.");
    } else if (!then.occasion().date().isBefore(now.occasion().date())) {
      field.blame(
          "The earlier survey is of "
              + then.occasion().date()
              + ", not before this one of "
              + now.occasion().date()
              + ".",
          "Leave it out, or correct the date.");
    }
  }
}

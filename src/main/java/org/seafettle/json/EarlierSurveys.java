package org.seafettle.json;

import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.seafettle.problem.Place;
import org.seafettle.problem.Problem;
import org.seafettle.problem.Refused;
import org.seafettle.survey.Survey;

/** Reads the earlier surveys that a survey names. */
final class EarlierSurveys {

  private final SurveyFolder folder;
  private final Function<SurveyFolder, SurveySource> reader;
  private final List<SurveySource> sources = new ArrayList<>();
  private final List<Problem> problems = new ArrayList<>();

  EarlierSurveys(SurveyFolder folder, Function<SurveyFolder, SurveySource> reader) {
    this.folder = folder;
    this.reader = reader;
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
    var file = folder.outside(path);
    var packed = folder.packed(path);
    if (packed.isEmpty() && !Files.exists(file)) {
      field.blame(
          "There is no earlier survey at \"" + path + "\".",
          "Write its path from this survey's folder on, such as \"../2025/survey.json\".");
      return;
    }
    try {
      var source = reader.apply(packed.orElseGet(() -> SurveyReader.open(file)));
      now.ifPresent(survey -> compare(field, survey, source.survey()));
      sources.add(source);
    } catch (Refused e) {
      e.problems().forEach(p -> problems.add(p.at(under(path, p.place()))));
    }
  }

  /** The place with the path by which the survey names the file. */
  private static Place under(String path, Place place) {
    return new Place(path, place.field(), place.line());
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

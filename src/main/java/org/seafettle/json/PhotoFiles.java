package org.seafettle.json;

import org.seafettle.problem.Refused;

/** Looks for the photographs that a survey names. */
final class PhotoFiles {

  private PhotoFiles() {}

  static void look(Field root, SurveyFolder folder, PhotoInspection inspection) {
    for (var photo : root.child("photos").items()) {
      var file = photo.child("file");
      file.text().ifPresent(path -> look(file, path, folder, inspection));
    }
  }

  private static void look(
      Field file, String path, SurveyFolder folder, PhotoInspection inspection) {
    var wrong = FilePaths.wrongWithin(path).or(() -> folder.missing(path));
    if (wrong.isPresent()) {
      file.blame(wrong.get().fault(), wrong.get().remedy());
      return;
    }
    if (inspection == PhotoInspection.NONE) {
      return;
    }
    try {
      inspection.inspect(path, folder.read(path), file.faults().place(file.path()));
    } catch (Refused refused) {
      refused.problems().forEach(problem -> file.blame(problem.fault(), problem.remedy()));
    }
  }
}

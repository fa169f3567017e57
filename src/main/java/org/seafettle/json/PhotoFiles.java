package org.seafettle.json;

/** Looks for the photographs that a survey names. */
final class PhotoFiles {

  private PhotoFiles() {}

  static void look(Field root, SurveyFolder folder) {
    for (var photo : root.child("photos").items()) {
      var file = photo.child("file");
      file.text()
          .flatMap(path -> FilePaths.wrongWithin(path).or(() -> folder.missing(path)))
          .ifPresent(m -> file.blame(m.fault(), m.remedy()));
    }
  }
}

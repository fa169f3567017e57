package org.seafettle.json;

import java.util.List;
import org.seafettle.problem.Problem;
import org.seafettle.problem.Refused;
import org.seafettle.survey.Photo;
import org.seafettle.survey.Survey;

/** A survey with what it was read from. */
public final class SurveySource {

  private final Survey survey;
  private final byte[] json;
  private final SurveyFolder folder;
  private final List<Problem> remarks;
  private final List<SurveySource> earlier;

  SurveySource(
      Survey survey,
      byte[] json,
      SurveyFolder folder,
      List<Problem> remarks,
      List<SurveySource> earlier) {
    this.survey = survey;
    this.json = json.clone();
    this.folder = folder;
    this.remarks = List.copyOf(remarks);
    this.earlier = List.copyOf(earlier);
  }

  public Survey survey() {
    return survey;
  }

  /** The survey file, byte by byte. */
  public byte[] json() {
    return json.clone();
  }

  /** The survey file's name, without the folders before it. */
  public String fileName() {
    return folder.fileName();
  }

  /**
   * A photograph's file, byte by byte.
   *
   * @throws Refused where it cannot be read, or is longer than 64 MB
   */
  public byte[] photo(Photo photo) {
    return folder.read(photo.file());
  }

  /** What is no fault but worth a second look. */
  public List<Problem> remarks() {
    return remarks;
  }

  /** The earlier surveys that it names, in the order in which it names them. */
  public List<SurveySource> earlier() {
    return earlier;
  }
}

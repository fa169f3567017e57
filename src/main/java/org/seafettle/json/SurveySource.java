package org.seafettle.json;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.seafettle.assessment.Printed;
import org.seafettle.problem.Problem;
import org.seafettle.survey.Survey;

/** A survey with what it was read from. */
public final class SurveySource {

  private final Survey survey;
  private final byte[] json;
  private final List<Problem> remarks;
  private final List<SurveySource> earlier;
  private final Optional<Printed> printed;

  SurveySource(
      Survey survey,
      byte[] json,
      List<Problem> remarks,
      List<SurveySource> earlier,
      Optional<Printed> printed) {
    this.survey = survey;
    this.json = json.clone();
    this.remarks = List.copyOf(remarks);
    this.earlier = List.copyOf(earlier);
    this.printed = printed;
  }

  public Survey survey() {
    return survey;
  }

  /** Of the survey. */
  public LocalDate day() {
    return survey.occasion().date();
  }

  /** The survey file, byte by byte. */
  public byte[] json() {
    return json.clone();
  }

  /** What is no fault but worth a second look. */
  public List<Problem> remarks() {
    return remarks;
  }

  /** The earlier surveys that it names, in the order in which it names them. */
  public List<SurveySource> earlier() {
    return earlier;
  }

  /** What its report printed when it was made; empty where it was not read from a report. */
  public Optional<Printed> printed() {
    return printed;
  }
}

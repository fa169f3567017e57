package org.seafettle.json;

import org.seafettle.catalogue.Catalogue;
import org.seafettle.problem.Problem;
import org.seafettle.problem.Refused;
import org.seafettle.survey.Survey;

/** Reads survey files. */
public final class SurveyReader {

  private SurveyReader() {}

  /**
   * Reads the text of a survey file without looking for its photographs and earlier surveys.
   *
   * @param json the text
   * @param catalogue the checks that it may name
   * @throws Refused with every fault that it has
   */
  public static Survey bind(String json, Catalogue catalogue) {
    var document = DocumentParser.parse("survey.json", json);
    var faults = new Faults(document);
    var survey = new SurveyBinder(catalogue).bind(Field.root(faults, document.root()));
    Refused.ifAny(faults.inOrder());
    return survey.orElseThrow(
        () ->
            new Refused(
                new Problem(
                    faults.place(""),
                    "The survey is not complete.",
                    "Compare it with its schema.")));
  }
}

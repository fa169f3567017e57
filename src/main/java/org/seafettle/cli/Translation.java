package org.seafettle.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.seafettle.assessment.Assessment;
import org.seafettle.assessment.Assessor;
import org.seafettle.catalogue.Catalogue;
import org.seafettle.catalogue.Retelling;
import org.seafettle.html.Templates;
import org.seafettle.problem.Place;
import org.seafettle.problem.Problem;
import org.seafettle.problem.Refused;
import org.seafettle.problem.Spelling;
import org.seafettle.survey.Survey;

/** The catalogue in the language of a report. What has no text there stays in English. */
final class Translation {

  /** The catalogue's own. */
  static final String ENGLISH = "en";

  private final Catalogue english;
  private final String language;
  private final Map<String, String> texts;
  private final Place place;
  private final Catalogue told;

  /**
   * @throws Refused where the language's file has a text that the catalogue has not
   */
  Translation(Catalogue english, Templates templates, String language) {
    this.english = english;
    this.language = language;
    this.texts = templates.catalogue(language);
    this.place = templates.place(Templates.catalogueFile(language));
    if (!texts.isEmpty()) {
      Refused.ifAny(strangers());
    }
    this.told = texts.isEmpty() ? english : Retelling.of(english, texts);
  }

  private List<Problem> strangers() {
    var known = Retelling.texts(english).keySet();
    var problems = new ArrayList<Problem>();
    for (var key : texts.keySet()) {
      if (!known.contains(key)) {
        problems.add(
            new Problem(
                Place.field(place.file(), key),
                "The catalogue has no such text.",
                Spelling.nearest(key, known)
                    .map(near -> "Did you mean \"" + near + "\"?")
                    .orElse("Take it out.")));
      }
    }
    return problems;
  }

  /** The catalogue in the language. */
  Catalogue told() {
    return told;
  }

  /** The same judgement with its words in the language; the judging does not know languages. */
  Assessment tell(Assessment assessment, List<Survey> earlier) {
    return texts.isEmpty() ? assessment : new Assessor(told).assess(assessment.survey(), earlier);
  }

  /** The texts that stay in English, by key. */
  Map<String, String> missing() {
    var missing = new LinkedHashMap<String, String>();
    if (!language.equals(ENGLISH)) {
      missing.putAll(Retelling.texts(english));
      missing.keySet().removeAll(texts.keySet());
    }
    return missing;
  }

  /** That something stays in English, and how to see what. */
  Optional<Problem> remark() {
    var missing = missing();
    return missing.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Problem(
                place,
                missing.size()
                    + " of "
                    + Retelling.texts(english).size()
                    + " texts of the catalogue are missing, the first is "
                    + missing.keySet().iterator().next()
                    + "; they are printed in English.",
                "List them with: seafettle catalogue --format properties --lang " + language));
  }
}

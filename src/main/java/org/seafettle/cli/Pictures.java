package org.seafettle.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.Map;
import org.seafettle.json.SurveySource;
import org.seafettle.photo.Original;
import org.seafettle.photo.Print;
import org.seafettle.photo.PrintOrder;
import org.seafettle.problem.Place;
import org.seafettle.problem.Problem;
import org.seafettle.problem.Refused;
import org.seafettle.report.PhotoFacts;
import org.seafettle.report.Photographs;
import org.seafettle.survey.Photo;

/**
 * The photographs of a survey, ready for the page.
 *
 * @param facts what is known of each, by the photograph's id
 * @param prints the pictures to print, by the name under which the pages ask for them
 */
record Pictures(Map<String, PhotoFacts> facts, Map<String, byte[]> prints) {

  /** A picture across the whole page at about 220 dots an inch. */
  private static final int LONGEST_EDGE = 1600;

  /**
   * Reads and prepares all photographs.
   *
   * @throws Refused with the faults of all that cannot be used
   */
  static Pictures of(SurveySource source, boolean keepMetadata) {
    var survey = source.survey();
    var facts = new LinkedHashMap<String, PhotoFacts>();
    var prints = new LinkedHashMap<String, byte[]>();
    var problems = new ArrayList<Problem>();
    for (int i = 0; i < survey.photos().size(); i++) {
      var photo = survey.photos().get(i);
      try {
        var original = original(source, photo, i);
        facts.put(photo.id(), PhotoFacts.of(original, survey));
        prints.put(
            Photographs.name(survey, photo),
            Print.of(original, new PrintOrder(LONGEST_EDGE, Photographs.marks(photo), keepMetadata))
                .bytes());
      } catch (Refused refused) {
        problems.addAll(refused.problems());
      }
    }
    Refused.ifAny(problems);
    return new Pictures(facts, prints);
  }

  private static Original original(SurveySource source, Photo photo, int index) {
    var place = Place.field(source.fileName(), "photos[" + index + "].file");
    return Original.read(source.photo(photo), place, photo.file());
  }
}

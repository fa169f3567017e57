package org.seafettle.cli;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import org.seafettle.json.PhotoInspection;
import org.seafettle.photo.Original;
import org.seafettle.photo.PrintOrder;
import org.seafettle.problem.Place;
import org.seafettle.problem.Problem;
import org.seafettle.problem.Refused;
import org.seafettle.report.PhotoFacts;
import org.seafettle.report.Photographs;
import org.seafettle.survey.Photo;
import org.seafettle.survey.Survey;

/** The photographs of a survey: looked into while it is read, then made ready for the page. */
final class Pictures implements PhotoInspection {

  /** A picture across the whole page at about 220 dots an inch. */
  private static final int LONGEST_EDGE = 1600;

  private final Map<String, Original> originals = new HashMap<>();

  @Override
  public void inspect(String file, byte[] bytes, Place place) {
    originals.put(file, Original.read(bytes, place, file));
  }

  /** What is known of each photograph, by its id. */
  Map<String, PhotoFacts> facts(Survey survey) {
    var facts = new LinkedHashMap<String, PhotoFacts>();
    survey.photos().forEach(photo -> facts.put(photo.id(), PhotoFacts.of(original(photo), survey)));
    return facts;
  }

  /**
   * The pictures to print, by the name under which the pages ask for them.
   *
   * @param from where the prints come from
   * @throws Refused with the faults of all that only decoding shows
   */
  Map<String, byte[]> prints(Survey survey, boolean keepMetadata, Prints from) {
    var prints = new LinkedHashMap<String, byte[]>();
    var problems = new ArrayList<Problem>();
    for (var photo : survey.photos()) {
      var order = new PrintOrder(LONGEST_EDGE, Photographs.marks(photo), keepMetadata);
      try {
        prints.put(Photographs.name(survey, photo), from.of(original(photo), order));
      } catch (Refused refused) {
        problems.addAll(refused.problems());
      }
    }
    Refused.ifAny(problems);
    return prints;
  }

  private Original original(Photo photo) {
    var original = originals.get(photo.file());
    if (original == null) {
      throw new IllegalStateException(photo.file() + " was not looked into");
    }
    return original;
  }
}

package org.seafettle.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.seafettle.photo.Mark;
import org.seafettle.photo.Remark;
import org.seafettle.photo.Taken;
import org.seafettle.survey.Photo;
import org.seafettle.survey.Survey;

/** The photographs of a survey, numbered in its order. */
public final class Photographs {

  private final Survey survey;
  private final Phrases phrases;
  private final Map<String, PhotoFacts> facts;

  Photographs(Survey survey, Phrases phrases, Map<String, PhotoFacts> facts) {
    this.survey = survey;
    this.phrases = phrases;
    this.facts = new TreeMap<>(facts);
  }

  /** The name by which a page asks for the picture: {@code photo-3} for the third. */
  public static String name(Survey survey, Photo photo) {
    return "photo-" + (survey.photos().indexOf(photo) + 1);
  }

  /** The marks as they are to be drawn, numbered from 1, as the captions name them. */
  public static List<Mark> marks(Photo photo) {
    return IntStream.range(0, photo.marks().size())
        .mapToObj(i -> mark(i + 1, photo.marks().get(i)))
        .toList();
  }

  private static Mark mark(int number, Photo.Mark mark) {
    return switch (mark.shape()) {
      case RING -> Mark.ring(number, mark.x(), mark.y());
      case ARROW -> Mark.arrow(number, mark.x(), mark.y());
    };
  }

  int number(Photo photo) {
    return survey.photos().indexOf(photo) + 1;
  }

  PhotoFacts facts(Photo photo) {
    return Optional.ofNullable(facts.get(photo.id()))
        .orElseThrow(() -> new IllegalArgumentException("nothing is known of " + photo.id()));
  }

  /** The pictures of a finding, what each shows of it told in its alternative text. */
  List<PhotoPart> of(List<String> ids, String shows) {
    return survey.photos().stream()
        .filter(p -> ids.contains(p.id()))
        .map(p -> part(p, shows))
        .toList();
  }

  PhotoPart part(Photo photo, String shows) {
    var words = phrases.words();
    var size = facts(photo).size();
    return new PhotoPart(
        name(survey, photo),
        words.say("photo.alt", number(photo) + "", shows, caption(photo) + marksSaid(photo)),
        words.say("photo.number", number(photo) + ""),
        caption(photo) + marksSaid(photo),
        words.say("sentence", Phrases.capital(taken(photo))),
        photo.file().substring(photo.file().lastIndexOf('/') + 1),
        facts(photo).fingerprint().shortHash().replace(' ', '\u00A0'),
        size.height() > size.width());
  }

  /** The surveyor's caption as a sentence. */
  String caption(Photo photo) {
    return photo
        .caption()
        .map(c -> c.matches(".*[.!?]") ? c : phrases.words().say("sentence", c))
        .orElse("");
  }

  private String marksSaid(Photo photo) {
    var said = new StringBuilder();
    for (int i = 0; i < photo.marks().size(); i++) {
      said.append(' ')
          .append(phrases.words().say("photo.mark", i + 1 + "", photo.marks().get(i).says()));
    }
    return said.toString();
  }

  /** When it was taken, by whose clock, and what speaks against it. */
  String taken(Photo photo) {
    var said = new ArrayList<String>();
    facts(photo).metadata().taken().ifPresent(t -> said.add(clock(t)));
    facts(photo).remarks().forEach(remark -> said.add(remark(remark)));
    return phrases.series(said);
  }

  private String clock(Taken taken) {
    var time = phrases.time(taken.clock());
    return taken
        .zone()
        .map(z -> phrases.words().say("photo.clock", time, z.getId().equals("Z") ? "" : z.getId()))
        .orElse(time);
  }

  private String remark(Remark remark) {
    var words = phrases.words();
    if (remark instanceof Remark.OtherDay other) {
      return words.say("photo.other-day", phrases.date(other.survey()));
    } else if (remark instanceof Remark.ZoneUnknown) {
      return words.say("photo.zone-unknown");
    } else if (remark instanceof Remark.TimeUnknown) {
      return words.say("photo.time-unknown");
    }
    return words.say("photo.unreadable");
  }
}

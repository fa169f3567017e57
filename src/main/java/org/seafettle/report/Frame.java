package org.seafettle.report;

import java.util.Map;
import java.util.Optional;
import org.seafettle.house.House;

/**
 * What stands around a report on every page.
 *
 * @param language of its words, such as {@code en}
 * @param title of the document
 * @param number and date, for the head of the page
 * @param subject boat and purpose, for the head of the page
 * @param paper the sheet, as CSS names it
 * @param draft whether it is a draft
 * @param labels the texts of the templates
 * @param signature who signs, and for whom
 * @param house whose report it is, where a house was named
 */
public record Frame(
    String language,
    String title,
    String number,
    String subject,
    String paper,
    boolean draft,
    Map<String, String> labels,
    Signature signature,
    Optional<Letterhead> house) {

  /**
   * The end of a report.
   *
   * @param by who signs
   * @param orderedBy for whom it was written; empty where nobody is named
   * @param contact how to reach who signs; empty where it was not given
   * @param placeAndDate of the survey
   */
  public record Signature(String by, String orderedBy, String contact, String placeAndDate) {}

  static Frame of(Manuscript m, Options options, Optional<House> house) {
    var words = m.words();
    var occasion = m.survey().occasion();
    var purpose = words.of("purpose", occasion.purpose());
    var boat = m.survey().boat().name();
    return new Frame(
        words.locale().toLanguageTag(),
        words.say("frame.title", boat, m.subject()),
        words.say("frame.number", occasion.id(), m.phrases().date(occasion.date())),
        words.say("frame.subject", boat, purpose),
        options.paper().word(),
        options.draft(),
        words.labels(),
        new Signature(
            PageOne.person(words, occasion.by()),
            occasion.orderedBy().map(p -> PageOne.person(words, p)).orElse(""),
            occasion.by().contact().orElse(""),
            words.say("frame.place-date", occasion.place(), m.phrases().date(occasion.date()))),
        house.map(Letterhead::of));
  }
}

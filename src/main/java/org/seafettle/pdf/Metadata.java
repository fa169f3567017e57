package org.seafettle.pdf;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;

/**
 * What the document says about itself.
 *
 * @param title shown in the title bar of the viewer; not blank
 * @param author who answers for the content; not blank
 * @param subject one line; not blank
 * @param keywords none of them blank, none with a comma
 * @param language the language of the text, such as {@code en-GB}
 * @param date the date of the survey, to the second; also the date of everything attached
 */
public record Metadata(
    String title,
    String author,
    String subject,
    List<String> keywords,
    Locale language,
    OffsetDateTime date) {

  public Metadata {
    if (title.isBlank() || author.isBlank() || subject.isBlank()) {
      throw new IllegalArgumentException("a document needs a title, an author and a subject");
    }
    if (language.toLanguageTag().equals("und")) {
      throw new IllegalArgumentException("a document needs a language");
    }
    if (keywords.stream().anyMatch(word -> word.isBlank() || word.contains(","))) {
      throw new IllegalArgumentException("not keywords: " + keywords);
    }
    keywords = List.copyOf(keywords);
    date = date.withNano(0);
  }
}

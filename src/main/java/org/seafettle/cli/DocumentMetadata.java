package org.seafettle.cli;

import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import org.seafettle.assessment.Assessment;
import org.seafettle.pdf.Metadata;
import org.seafettle.report.Report;
import org.seafettle.report.Words;

/** What a report's file says about itself. */
final class DocumentMetadata {

  private DocumentMetadata() {}

  /** Dated by the survey, at noon UTC: the day is then the same in nearly every zone. */
  static Metadata of(Report report, Assessment assessment, Words words) {
    var occasion = assessment.survey().occasion();
    return new Metadata(
        report.frame().title(),
        occasion.by().name(),
        report.frame().subject(),
        List.of(words.of("purpose", occasion.purpose()), occasion.id().replace(',', ' ')),
        Locale.forLanguageTag(report.frame().language()),
        occasion.date().atTime(LocalTime.NOON).atOffset(ZoneOffset.UTC));
  }
}

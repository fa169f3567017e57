package org.seafettle.cli;

import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import org.seafettle.assessment.Assessment;
import org.seafettle.pdf.Metadata;
import org.seafettle.report.Report;

/** What a report's file says about itself. */
final class DocumentMetadata {

  private DocumentMetadata() {}

  /** Dated by the survey, at noon UTC: the day is then the same in nearly every zone. */
  static Metadata of(Report report, Assessment assessment) {
    var occasion = assessment.survey().occasion();
    return new Metadata(
        report.frame().title(),
        occasion.by().name(),
        report.frame().subject(),
        List.of(occasion.purpose().word(), occasion.id().replace(',', ' ')),
        Locale.ENGLISH,
        occasion.date().atTime(LocalTime.NOON).atOffset(ZoneOffset.UTC));
  }
}

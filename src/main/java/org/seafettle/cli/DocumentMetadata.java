package org.seafettle.cli;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.seafettle.assessment.Assessment;
import org.seafettle.pdf.Metadata;
import org.seafettle.report.Report;
import org.seafettle.report.Words;
import org.seafettle.yard.Fleet;

/** What a report's file says about itself. */
final class DocumentMetadata {

  private static final int MOST_NAMED = 3;

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

  /** Dated by the last survey, which is the oldest that the overview can be. */
  static Metadata of(Fleet fleet, Words words) {
    var by =
        fleet.surveyed().stream()
            .map(s -> s.boat().by())
            .distinct()
            .sorted()
            .limit(MOST_NAMED)
            .collect(Collectors.joining(", "));
    return new Metadata(
        words.say("season.title"),
        by.isEmpty() ? "Seafettle" : by,
        words.say("season.title"),
        List.of(words.say("season.title")),
        words.locale(),
        fleet.to().orElse(LocalDate.EPOCH).atTime(LocalTime.NOON).atOffset(ZoneOffset.UTC));
  }
}

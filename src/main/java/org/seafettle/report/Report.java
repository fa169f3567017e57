package org.seafettle.report;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.seafettle.assessment.Assessment;
import org.seafettle.assessment.Printed;
import org.seafettle.house.House;

/**
 * A report, ready to be set: plain strings throughout.
 *
 * @param purpose whom it is for, which decides how it is set
 * @param frame what stands around it
 * @param first page one
 * @param plan what to do, and what was done
 * @param findings by number
 * @param unseen what was not seen
 * @param annexe how the grade comes about, and what it rests on
 * @param years the earlier years, the log and what falls due
 */
public record Report(
    String purpose,
    Frame frame,
    PageOne first,
    PlanPart plan,
    List<FindingPart> findings,
    UnseenPart unseen,
    Annexe annexe,
    Years years) {

  public Report {
    findings = List.copyOf(findings);
  }

  /**
   * How the grade comes about, and what it rests on.
   *
   * @param ledgers the sums
   * @param method the rule
   * @param evidence photographs and readings
   * @param glossary the words of the trade that are used
   */
  public record Annexe(
      List<LedgerPart> ledgers, MethodPart method, EvidencePart evidence, GlossaryPart glossary) {

    public Annexe {
      ledgers = List.copyOf(ledgers);
    }
  }

  /**
   * Over the years.
   *
   * @param history this year beside earlier ones
   * @param followed the findings of earlier surveys, and what became of them
   * @param log the service log, and what comes next
   */
  public record Years(HistoryPart history, List<FollowedRow> followed, LogPart log) {

    public Years {
      followed = List.copyOf(followed);
    }
  }

  /**
   * Writes the report of an assessment; the same input gives the same report.
   *
   * @param photos what is known of each photograph of the survey, by its id
   * @throws IllegalStateException where a text is missing from the words
   */
  public static Report of(
      Assessment assessment, Words words, Map<String, PhotoFacts> photos, Options options) {
    return of(assessment, words, new Beside(photos, List.of(), Optional.empty()), options);
  }

  /**
   * What a report shows that is not judged.
   *
   * @param photos what is known of each photograph of the survey, by its id
   * @param printed what earlier reports printed
   * @param house the face of the house that it comes from
   */
  public record Beside(
      Map<String, PhotoFacts> photos, List<Printed> printed, Optional<House> house) {

    public Beside {
      printed = List.copyOf(printed);
    }
  }

  /** The same with all that it can show. */
  public static Report of(Assessment assessment, Words words, Beside beside, Options options) {
    var survey = assessment.survey();
    var phrases = new Phrases(words, options.units(), survey);
    var m = new Manuscript(assessment, phrases, new Photographs(survey, phrases, beside.photos()));
    var first = PageOne.of(m);
    var plan = PlanPart.of(m);
    var findings = assessment.findings().stream().map(f -> FindingPart.of(m, f)).toList();
    var unseen = UnseenPart.of(m);
    return new Report(
        survey.occasion().purpose().word(),
        Frame.of(m, options, beside.house()),
        first,
        plan,
        findings,
        unseen,
        new Annexe(
            LedgerPart.all(m),
            MethodPart.of(m),
            EvidencePart.of(m),
            GlossaryPart.of(words, List.of(first, plan, findings, unseen))),
        new Years(HistoryPart.of(m, beside.printed()), FollowedRow.all(m), LogPart.of(m)));
  }
}

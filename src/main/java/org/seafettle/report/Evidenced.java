package org.seafettle.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.seafettle.assessment.Cause;
import org.seafettle.assessment.EngineGrade;
import org.seafettle.assessment.Measured;
import org.seafettle.assessment.Result;
import org.seafettle.assessment.Sighting;
import org.seafettle.catalogue.Citation;
import org.seafettle.catalogue.Outcome;
import org.seafettle.catalogue.Reason;
import org.seafettle.catalogue.Source;
import org.seafettle.survey.Component;
import org.seafettle.survey.Finding;
import org.seafettle.survey.MakersLimit;

/** The lines of a finding: first the facts, then what is made of them. */
final class Evidenced {

  private final Manuscript m;
  private final Result finding;
  private final Sighting.Seen seen;
  private final List<Row> rows = new ArrayList<>();

  private Evidenced(Manuscript m, Result finding) {
    this.m = m;
    this.finding = finding;
    this.seen = finding.seen().orElseThrow();
  }

  static List<Row> found(Manuscript m, Result finding, Optional<ReadingWords> reading) {
    var rows = new Evidenced(m, finding);
    rows.add("observed", seenSentence(finding));
    if (reading.isPresent() && !reading.get().limited()) {
      rows.add("reading", reading.get().caption());
    }
    finding.finding().flatMap(Finding::note).ifPresent(note -> rows.add("note", note));
    finding.finding().flatMap(Finding::begun).ifPresent(what -> rows.add("begun", what));
    rows.seen.partly().ifPresent(why -> rows.add("partly", reason(m, why)));
    return rows.rows;
  }

  static List<Row> judged(Manuscript m, Result finding, Optional<ReadingWords> reading) {
    var rows = new Evidenced(m, finding);
    rows.limit(reading);
    reading
        .filter(r -> !r.isInterval())
        .ifPresent(r -> rows.add("certainty", rows.certainty(r.measured())));
    reading.flatMap(r -> r.measured().hidden()).ifPresent(rows::hidden);
    if (!rows.seen.outcome().saying().means().isEmpty()) {
      rows.add("means", rows.seen.outcome().saying().means());
    }
    rows.raised();
    if (rows.seen.outcome().advice().filter(Outcome.Advice::requiredByLaw).isPresent()) {
      boolean read = rows.seen.outcome().citation().source().rank() != Source.Rank.FROM_MEMORY;
      rows.add(
          "law", read ? m.words().say("law.required") : m.words().say("law.required-from-memory"));
    }
    return rows.rows;
  }

  static List<Row> causes(Manuscript m, Result finding) {
    var rows = new Evidenced(m, finding);
    rows.causes();
    return rows.rows;
  }

  static String seenSentence(Result finding) {
    return Manuscript.outcome(finding).saying().observed();
  }

  private void add(String label, String text) {
    rows.add(Row.of(m.words().say("row." + label), text));
  }

  private void limit(Optional<ReadingWords> reading) {
    var limits = reading.map(r -> m.words().say("limit.all", r.limitsSaid())).orElse("");
    var maker = reading.flatMap(r -> r.measured().measure().maker()).map(MakersLimit::source);
    var source =
        maker
            .map(title -> m.words().say("limit.maker", Phrases.capital(title)))
            .orElseGet(() -> citation(m, seen.outcome().citation()));
    if (limits.isEmpty()) {
      add("source", source);
    } else {
      add("limit", limits + " " + source);
    }
  }

  /** A source with its rank, so that nobody takes a habit for a law. */
  static String citation(Manuscript m, Citation citation) {
    var rank = m.words().of("rank", citation.source().rank());
    return citation.text().isBlank()
        ? m.words().say("citation.rank-only", Phrases.capital(rank))
        : m.words().say("citation", Phrases.pagesKept(citation.text()), rank);
  }

  private String certainty(Measured measured) {
    var missing = ReadingWords.conditions(finding, false);
    var said = compared(measured);
    return missing.isEmpty()
        ? said
        : said + " " + m.words().say("conformity.condition", m.phrases().series(missing));
  }

  private String compared(Measured measured) {
    if (measured.comparison().isEmpty()) {
      boolean known = measured.measure().uncertainty().isPresent();
      return known ? m.words().say("conformity.unmoved") : m.words().say("conformity.unknown");
    }
    var comparison = measured.comparison().get();
    var probability = m.phrases().chance(comparison.conformity());
    var word = comparison.verdict().name().toLowerCase(Locale.ROOT).replace('_', '-');
    var said = m.words().say("conformity." + word, probability);
    return comparison.verdict().isConditional() ? (said + " " + flips(word)).strip() : said;
  }

  /** What the index would be on the other side of the limit. */
  private String flips(String verdict) {
    var key = "flip." + verdict;
    return m.everySubsystem().stream()
        .flatMap(s -> s.flips().stream().map(f -> flip(s, f, key)))
        .flatMap(Optional::stream)
        .distinct()
        .collect(Collectors.joining(" "));
  }

  private Optional<String> flip(
      EngineGrade.SubsystemGrade graded, EngineGrade.Flip flip, String key) {
    var now = m.phrases().indexInSentence(graded.grade(), graded.grade().high());
    var then = m.phrases().indexInSentence(graded.grade(), flip.high());
    return flip.result().equals(finding) && !then.equals(now)
        ? Optional.of(m.words().say(key, SubsystemRow.name(m, graded.subsystem()), then))
        : Optional.empty();
  }

  private void hidden(Outcome hidden) {
    add(
        "hidden",
        m.words().say("hidden", VerdictPart.hides(m, hidden), citation(m, hidden.citation())));
  }

  private void raised() {
    seen.raisedBy()
        .ifPresent(
            pattern ->
                add(
                    "raised",
                    m.words()
                        .say(
                            "raised",
                            m.words().of("class", seen.outcome().findingClass()),
                            m.words().of("class", seen.found()),
                            pattern.cause())));
  }

  /** A cause is told in full with the gravest of its findings; the others refer to it. */
  private void causes() {
    m.assessment().causes().stream()
        .filter(c -> c.explains(finding))
        .map(c -> Row.of(m.words().say(c.settled() ? "row.cause" : "row.question"), told(c)))
        .distinct()
        .forEach(rows::add);
  }

  private String told(Cause cause) {
    var gravest =
        m.assessment().findings().stream().filter(cause::explains).findFirst().orElseThrow();
    return finding.equals(gravest)
        ? cause(m, cause)
        : m.words().say("cause.see", cause.pattern().cause(), Reference.to(m, gravest).number());
  }

  /** A cause with the findings it was inferred from and what would settle it. */
  static String cause(Manuscript m, Cause cause) {
    var from =
        cause.from().stream()
            .flatMap(r -> r.number().stream().boxed())
            .sorted()
            .map(String::valueOf)
            .toList();
    var pattern = cause.pattern();
    var said =
        m.words()
            .count(
                "cause.from",
                from.size(),
                pattern.cause(),
                m.phrases().list(from),
                pattern.confirms(),
                pattern.rulesOut());
    return cause
        .missing()
        .map(need -> missing(m, cause))
        .map(
            looks ->
                said
                    + " "
                    + m.words().count("cause.missing", looks.size(), m.phrases().oneOf(looks)))
        .orElse(said);
  }

  /** What was looked at without showing the sign is not told as if it had not been. */
  private static List<String> missing(Manuscript m, Cause cause) {
    var signs = cause.missing().stream().flatMap(need -> need.anyOf().stream()).toList();
    var unseen = signs.stream().filter(sign -> !seen(m, cause, sign.check())).toList();
    return (unseen.isEmpty() ? signs : unseen)
        .stream()
            .flatMap(sign -> m.assessment().catalogue().check(sign.check()).stream())
            .map(check -> m.phrases().within(check.guidance().title()))
            .distinct()
            .toList();
  }

  private static boolean seen(Manuscript m, Cause cause, String check) {
    var looks =
        m.assessment().results().stream()
            .filter(r -> r.check().id().equals(check))
            .filter(
                r ->
                    r.component().kind() != Component.Kind.ENGINE
                        || r.component().id().equals(cause.engine().id()))
            .toList();
    return !looks.isEmpty()
        && looks.stream().allMatch(r -> r.seen().filter(s -> s.partly().isEmpty()).isPresent());
  }

  static String reason(Manuscript m, Reason reason) {
    var word = reason.kind().name().toLowerCase(Locale.ROOT).replace('_', '-');
    return m.words().say("reason." + word, said(m, reason)).strip();
  }

  private static String said(Manuscript m, Reason reason) {
    return switch (reason.kind()) {
      case READING_MISSING ->
          m.words().find("fact." + reason.text()).orElseGet(() -> m.numberName(reason.text()));
      case CONDITION_NOT_MET -> rule(m, reason);
      default -> reason.text();
    };
  }

  /** A quantity that has no words of its own is still told to lie where the formula ends. */
  private static String rule(Manuscript m, Reason reason) {
    var values = new ArrayList<String>();
    m.words().find("computed." + reason.of()).ifPresent(values::add);
    reason.values().forEach(q -> values.add(m.phrases().value(q.value(), q.unit())));
    boolean known = reason.of().isEmpty() || values.size() > reason.values().size();
    return known
        ? m.words().say("rule." + reason.text(), values.toArray(String[]::new))
        : m.words().say("rule.does-not-hold");
  }
}

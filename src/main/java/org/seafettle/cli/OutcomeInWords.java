package org.seafettle.cli;

import java.util.Optional;
import java.util.stream.Collectors;
import org.seafettle.catalogue.Citation;
import org.seafettle.catalogue.Outcome;

/**
 * An outcome in words.
 *
 * @param name the word for it
 * @param grave its class, and for what it is true
 * @param says the fact, and what it reveals
 * @param brief the fact in a few words
 * @param stop what must not be done, a sentence
 * @param action what to do, a sentence, and after it who may do it and by when
 * @param source where its limit comes from, with its rank
 */
record OutcomeInWords(
    String name,
    String grave,
    String says,
    String brief,
    Optional<String> stop,
    Optional<String> action,
    String source) {

  static OutcomeInWords of(Outcome outcome) {
    var saying = outcome.saying();
    return new OutcomeInWords(
        outcome.name(),
        Spoken.word(outcome.findingClass()) + Spoken.scope(outcome.scope()),
        saying.means().isEmpty() ? saying.observed() : saying.observed() + " " + saying.means(),
        saying.brief(),
        outcome
            .advice()
            .flatMap(Outcome.Advice::stop)
            .map(stop -> Spoken.upper(Spoken.word(stop)) + "."),
        outcome.advice().map(OutcomeInWords::action),
        source(outcome.citation()));
  }

  private static String action(Outcome.Advice advice) {
    return advice.action().does()
        + " ("
        + advice.action().who().stream().map(Spoken::word).collect(Collectors.joining(" or "))
        + "; "
        + Spoken.word(advice.by())
        + (advice.requiredByLaw() ? "; required by law where that law applies" : "")
        + ")";
  }

  private static String source(Citation citation) {
    var rank = Spoken.word(citation.source().rank());
    if (citation.source().title().isEmpty()) {
      return citation.at().isEmpty() ? rank : rank + ", " + citation.at();
    }
    return citation.text() + " (" + rank + ")";
  }
}

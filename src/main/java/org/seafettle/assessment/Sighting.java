package org.seafettle.assessment;

import java.util.Optional;
import org.seafettle.catalogue.Deadline;
import org.seafettle.catalogue.FindingClass;
import org.seafettle.catalogue.Outcome;
import org.seafettle.catalogue.Pattern;
import org.seafettle.catalogue.Reason;
import org.seafettle.catalogue.StopOrder;

/** What became of one check on one component. */
public sealed interface Sighting {

  /** How the scale counts it; empty where it takes no part in the grade. */
  Optional<Scoring.Sight> sight();

  /**
   * It was seen.
   *
   * @param outcome what was found
   * @param measured the number behind it, where there is one
   * @param raisedBy the pattern that makes it graver than it is alone
   * @param settled whether it was put right on the spot
   * @param partly why only a part could be seen, where that is so
   */
  record Seen(
      Outcome outcome,
      Optional<Measured> measured,
      Optional<Pattern> raisedBy,
      boolean settled,
      Optional<Reason> partly)
      implements Sighting {

    @Override
    public Optional<Scoring.Sight> sight() {
      return Optional.of(partly.isPresent() ? Scoring.Sight.PARTLY : Scoring.Sight.SEEN);
    }

    /** How grave it was found, after what patterns add. */
    public FindingClass found() {
      return raisedBy
          .flatMap(Pattern::raise)
          .map(raise -> FindingClass.worse(outcome.findingClass(), raise.to()))
          .orElse(outcome.findingClass());
    }

    /** The class that counts: what was put right on the spot counts as put right. */
    public FindingClass counts() {
      return settled ? FindingClass.OK : found();
    }

    /** By when something has to be done about it, the pattern's word before the finding's own. */
    public Optional<Deadline> by() {
      return raisedBy
          .flatMap(Pattern::raise)
          .flatMap(Pattern.Raise::by)
          .or(() -> outcome.advice().map(Outcome.Advice::by));
    }

    /** What must not be done while it is open. */
    public Optional<StopOrder> stop() {
      return outcome.stop().or(() -> raisedBy.flatMap(Pattern::raise).flatMap(Pattern.Raise::stop));
    }

    Seen putRight() {
      return new Seen(outcome, measured, raisedBy, true, partly);
    }

    Seen raised(Pattern pattern) {
      return new Seen(outcome, measured, Optional.of(pattern), settled, partly);
    }

    Seen withOutcome(Outcome other) {
      return new Seen(other, measured, raisedBy, settled, partly);
    }
  }

  /** It was not seen. */
  record Unseen(Reason reason) implements Sighting {

    @Override
    public Optional<Scoring.Sight> sight() {
      return Optional.of(Scoring.Sight.UNSEEN);
    }
  }

  /** There is no such thing on this boat; takes no part in the grade. */
  record NotApplicable(String reason) implements Sighting {

    @Override
    public Optional<Scoring.Sight> sight() {
      return Optional.empty();
    }
  }
}

package org.seafettle.assessment;

import java.util.List;
import java.util.Optional;
import org.seafettle.catalogue.Pattern;
import org.seafettle.survey.Engine;

/**
 * What several findings together point to. With one of the looks missing it is only a question.
 *
 * @param pattern the pattern
 * @param engine the engine that it is about
 * @param from the findings that it was inferred from
 * @param missing the look that would settle it, where one is missing
 */
public record Cause(
    Pattern pattern, Engine engine, List<Result> from, Optional<Pattern.Need> missing) {

  public Cause {
    from = List.copyOf(from);
  }

  /** Whether it is told at this finding. */
  public boolean explains(Result finding) {
    return from.contains(finding) && pattern.explains(finding.check());
  }

  /** Whether every look that it needs was taken. */
  public boolean settled() {
    return missing.isEmpty();
  }
}

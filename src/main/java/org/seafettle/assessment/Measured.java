package org.seafettle.assessment;

import java.util.Optional;
import org.seafettle.catalogue.Measure;
import org.seafettle.catalogue.Outcome;

/**
 * A number that was held against its limits.
 *
 * @param measure the number and the limits
 * @param comparison with the nearest limit that matters, where the uncertainty is known
 * @param hidden what the catalogue's own limits say, where the maker's limit is looser and would
 *     hide a stop or something that a law requires
 */
public record Measured(Measure measure, Optional<Comparison> comparison, Optional<Outcome> hidden) {

  public boolean tooCloseToCall() {
    return comparison.filter(c -> c.verdict().isConditional()).isPresent();
  }
}

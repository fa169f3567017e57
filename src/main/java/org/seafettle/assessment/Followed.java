package org.seafettle.assessment;

import java.time.LocalDate;
import java.util.Optional;
import org.seafettle.survey.Word;

/**
 * A finding of an earlier survey, and what became of it.
 *
 * @param number which it keeps
 * @param then the finding as it was last reported
 * @param since the day on which it was first reported, or reported again
 * @param now the same check today; empty where the survey says nothing of it
 * @param status what became of it
 */
public record Followed(
    int number, Result then, LocalDate since, Optional<Result> now, Status status) {

  /** What became of a finding. */
  public enum Status implements Word {
    /** It is settled. */
    COMPLETED,
    /** Work has begun. */
    IN_PROGRESS,
    /** It is as it was, or less grave. */
    OUTSTANDING,
    /** It is graver than it was. */
    WORSE,
    /** It had been settled and is there again. */
    BACK,
    /** Nobody looked, so it has to be taken as it was. */
    NOT_LOOKED_AT,
    /** What it was on is no longer aboard. */
    GONE;

    @Override
    public String word() {
      return Word.of(this);
    }
  }
}

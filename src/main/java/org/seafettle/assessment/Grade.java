package org.seafettle.assessment;

/**
 * An index with what is not known about it.
 *
 * @param low the index if all that was not seen were as bad as it can be, 0 to {@code high}
 * @param high the index as far as seen, at most 100
 * @param coverage the share of what the expected checks can reveal that was seen, 0 to 1
 * @param graded whether enough was seen to say the word
 */
public record Grade(double low, double high, double coverage, boolean graded) {

  public Grade {
    if (!(0 <= low && low <= high && high <= 100)) {
      throw new IllegalArgumentException("no range from " + low + " to " + high);
    }
  }

  public ConditionWord word() {
    return ConditionWord.of(high);
  }

  public ConditionWord wordAtWorst() {
    return ConditionWord.of(low);
  }

  /** The index as it is printed: rounded down, so that number and word never disagree. */
  public int printed() {
    return (int) Math.floor(high);
  }

  public int printedAtWorst() {
    return (int) Math.floor(low);
  }

  public boolean certain() {
    return low == high;
  }
}

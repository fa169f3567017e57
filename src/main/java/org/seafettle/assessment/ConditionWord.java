package org.seafettle.assessment;

import java.util.Arrays;
import org.seafettle.survey.Word;

/**
 * The seven words of the REMR condition index, best first, each with the lowest index that earns it
 * and its zone (bands from memory, unverified).
 */
public enum ConditionWord implements Word {
  EXCELLENT(85, 1),
  VERY_GOOD(70, 1),
  GOOD(55, 2),
  FAIR(40, 2),
  POOR(25, 3),
  VERY_POOR(10, 3),
  FAILED(0, 3);

  private final int from;
  private final int zone;

  ConditionWord(int from, int zone) {
    this.from = from;
    this.zone = zone;
  }

  /** The word of an index, 0 to 100, judged unrounded. */
  public static ConditionWord of(double index) {
    if (!(index >= 0 && index <= 100)) {
      throw new IllegalArgumentException("no index of " + index);
    }
    return Arrays.stream(values()).filter(w -> index >= w.from).findFirst().orElseThrow();
  }

  public int from() {
    return from;
  }

  /** 1 no action needed now, 2 weigh repair, 3 look closer before use. */
  public int zone() {
    return zone;
  }

  @Override
  public String word() {
    return Word.of(this);
  }
}

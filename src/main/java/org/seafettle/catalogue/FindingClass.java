package org.seafettle.catalogue;

import org.seafettle.survey.Word;

/**
 * How grave a finding is, mildest first, each with what it takes from the index of its subsystem.
 * Each class weighs twice the one below it, so that any number of findings of one class stays below
 * a single finding of the next; {@code STOP} stands outside that ladder.
 */
public enum FindingClass implements Word {
  OK(0),
  ADVICE(8),
  MONITOR(16),
  TIMELY(32),
  BEFORE_USE(64),
  STOP(96);

  private final int deduct;

  FindingClass(int deduct) {
    this.deduct = deduct;
  }

  /** What a finding of this class takes from the index, 0 to 96. */
  public int deduct() {
    return deduct;
  }

  @Override
  public String word() {
    return Word.of(this);
  }

  public boolean atLeast(FindingClass other) {
    return compareTo(other) >= 0;
  }

  public static FindingClass worse(FindingClass a, FindingClass b) {
    return a.compareTo(b) >= 0 ? a : b;
  }
}

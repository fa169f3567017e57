package org.seafettle.survey;

import java.util.EnumSet;
import java.util.Set;

/** The kinds of engine that the catalogue tells apart. */
public enum EngineType implements Word {
  OUTBOARD_4_STROKE,
  OUTBOARD_2_STROKE_PREMIX,
  OUTBOARD_2_STROKE_INJECTED,
  STERNDRIVE_GASOLINE,
  STERNDRIVE_DIESEL,
  INBOARD_GASOLINE,
  INBOARD_DIESEL;

  private static final Set<EngineType> DIESEL = EnumSet.of(STERNDRIVE_DIESEL, INBOARD_DIESEL);
  private static final Set<EngineType> OUTBOARD =
      EnumSet.of(OUTBOARD_4_STROKE, OUTBOARD_2_STROKE_PREMIX, OUTBOARD_2_STROKE_INJECTED);

  @Override
  public String word() {
    return Word.of(this);
  }

  public boolean burnsDiesel() {
    return DIESEL.contains(this);
  }

  public boolean isOutboard() {
    return OUTBOARD.contains(this);
  }
}

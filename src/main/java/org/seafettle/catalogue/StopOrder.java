package org.seafettle.catalogue;

import java.util.Optional;
import org.seafettle.survey.Word;

/** What must not be done while a finding of the gravest class is open; what kills people, first. */
public enum StopOrder implements Word {
  DO_NOT_GO_BELOW,
  DO_NOT_SWITCH_ON,
  DO_NOT_START,
  DO_NOT_CRANK,
  DO_NOT_CHARGE,
  DO_NOT_FUEL,
  DO_NOT_PLUG_IN,
  DO_NOT_LEAVE_AFLOAT,
  DO_NOT_SWITCH_THE_PUMP_OFF;

  /** The place of what is forbidden; after all of them where nothing is. */
  public static int place(Optional<StopOrder> order) {
    return order.map(Enum::ordinal).orElse(values().length);
  }

  @Override
  public String word() {
    return Word.of(this);
  }
}

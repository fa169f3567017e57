package org.seafettle.formula.fuel;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.seafettle.problem.Refused;

/**
 * The type printed on a fuel hose: 33 CFR 183.540. A types have stood the fire test, B types (SAE
 * J1527) have not; class 1 is for fuel standing in it, class 2 for fill and vent.
 */
public enum HoseType {
  A1(true),
  A2(true),
  B1(false),
  B2(false);

  private static final Pattern MARKING =
      Pattern.compile("(?:.*[^A-Z0-9])?([AB][12])(-15)?(?:[^A-Z0-9].*)?");

  private final boolean fireTested;

  HoseType(boolean fireTested) {
    this.fireTested = fireTested;
  }

  /** Where a hose runs in a gasoline system. */
  public enum Run {
    PUMP_TO_CARBURETTOR,
    TANK_TO_ENGINE,
    FILL_OR_VENT
  }

  /**
   * The type in a marking such as {@code USCG TYPE A1-15}.
   *
   * @throws Refused where the marking names none
   */
  public static HoseType ofMarking(String marking) {
    return valueOf(read(marking).group(1));
  }

  /**
   * Whether the marking is one of low permeation, at most 15 g/m2 in 24 h, required on new US
   * outboards since 1 January 2009 (40 CFR 1060.1).
   */
  public static boolean lowPermeation(String marking) {
    return read(marking).group(2) != null;
  }

  /**
   * Whether the type may run there: 33 CFR 183.558.
   *
   * @param spillsLittle whether at most 5 oz run out in 2.5 min where the hose is cut
   */
  public boolean allowed(Run run, boolean spillsLittle) {
    return switch (run) {
      case PUMP_TO_CARBURETTOR -> this == A1;
      case TANK_TO_ENGINE -> this == A1 || (this == B1 && spillsLittle);
      case FILL_OR_VENT -> fireTested || spillsLittle;
    };
  }

  private static Matcher read(String marking) {
    var matcher = MARKING.matcher(marking.toUpperCase(Locale.ROOT));
    if (!matcher.matches()) {
      throw Refused.because(
          "The marking \"" + marking + "\" names no marine fuel hose type.",
          "Copy it again, such as USCG TYPE A1-15; a hose without one is taken as unmarked.");
    }
    return matcher;
  }
}

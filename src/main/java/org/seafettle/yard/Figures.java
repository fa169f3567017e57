package org.seafettle.yard;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.stream.Collectors;
import org.seafettle.report.Forms;

/** Hours and money as the overview tells them. */
record Figures(Forms forms) {

  private static final char NO_BREAK_SPACE = '\u00A0';

  /** Empty where there are none. */
  String hours(Span hours) {
    var least = tenths(hours.least());
    var most = tenths(hours.most());
    if (hours.none()) {
      return "";
    }
    return least.equals(most)
        ? least
        : forms.words().say("season.from-to", least, most).replace(' ', NO_BREAK_SPACE);
  }

  /** Each currency after the other, in whole units; empty where nothing is priced. */
  String money(Amounts amounts) {
    return amounts.byCurrency().entrySet().stream()
        .map(e -> forms.money(e.getValue().least(), e.getValue().most(), e.getKey()))
        .collect(Collectors.joining(forms.words().say("list.between")));
  }

  private String tenths(BigDecimal number) {
    return forms.exact(number.setScale(1, RoundingMode.HALF_UP));
  }
}

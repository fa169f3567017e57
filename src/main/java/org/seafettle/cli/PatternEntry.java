package org.seafettle.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.seafettle.catalogue.Catalogue;
import org.seafettle.catalogue.Outcome;
import org.seafettle.catalogue.Pattern;

/** A cause that several findings point to, as an entry of a reference page in Markdown. */
record PatternEntry(Catalogue catalogue, Pattern pattern) {

  List<String> lines() {
    var lines = new ArrayList<String>();
    lines.addAll(List.of("### " + pattern.id(), "", Markdown.strong(pattern.cause()), ""));
    var scope = Spoken.scope(pattern.scope());
    if (!scope.isEmpty()) {
      lines.add("- " + Spoken.upper(Markdown.text(scope.substring(2))));
    }
    pattern.needs().forEach(need -> lines.add("- Needs " + need(need)));
    lines.add("- Reasoning: " + Markdown.text(pattern.reasoning()));
    lines.add("- Confirmed by: " + Markdown.text(pattern.confirms()));
    lines.add("- Ruled out by: " + Markdown.text(pattern.rulesOut()));
    pattern.raise().ifPresent(raise -> lines.add("- Raises " + raise(raise)));
    lines.add("");
    return lines;
  }

  private String need(Pattern.Need need) {
    return need.anyOf().stream().map(this::sign).collect(Collectors.joining("; or "))
        + (need.onlyIfSeen() ? " (asked only where it was looked at)" : "");
  }

  private String sign(Pattern.Sign sign) {
    // a sign's outcomes are a set without order; the check has one
    var outcomes =
        catalogue.check(sign.check()).orElseThrow().outcomes().stream()
            .map(Outcome::name)
            .distinct()
            .filter(sign.outcomes()::contains)
            .map(Markdown::code);
    return Markdown.link(sign.check()) + " " + outcomes.collect(Collectors.joining(" or "));
  }

  private static String raise(Pattern.Raise raise) {
    return Markdown.link(raise.check())
        + " to "
        + Spoken.word(raise.to())
        + raise.stop().map(stop -> ": " + Spoken.word(stop)).orElse("")
        + raise.by().map(by -> "; " + Spoken.word(by)).orElse("");
  }
}

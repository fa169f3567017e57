package org.seafettle.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Reads CSS and text for what cannot be printed as asked. The sheet that came last is remembered,
 * because all documents of a run bring the same. Safe for many threads.
 */
final class StyleReader {

  private static final Pattern TRANSPARENT =
      Pattern.compile("(?:^|[;{\\s])(?:fill-|stroke-|stop-)?opacity\\s*:");

  private final Typefaces typefaces;
  private volatile Sheet latest = new Sheet("", List.of());

  private record Sheet(String css, List<String> faults) {}

  StyleReader(Typefaces typefaces) {
    this.typefaces = typefaces;
  }

  List<String> sheet(String css) {
    var sheet = latest;
    if (!sheet.css().equals(css)) {
      sheet = new Sheet(css, style(css));
      latest = sheet;
    }
    return sheet.faults();
  }

  /** Of a sheet or of one element. */
  List<String> style(String css) {
    if (css.isBlank()) {
      return List.of();
    }
    var faults = new ArrayList<String>();
    if (css.contains("@font-face")) {
      faults.add("a style sheet that brings a typeface of its own");
    }
    for (var family : StyleSheet.families(css)) {
      if (!Typefaces.families().contains(family)) {
        faults.add("no such typeface: " + family);
      }
    }
    if (TRANSPARENT.matcher(css).find()) {
      faults.add("a style with opacity, which turns drawings into pictures: use a solid colour");
    }
    faults.addAll(text(StyleSheet.generated(css)));
    return List.copyOf(faults);
  }

  List<String> text(String text) {
    return typefaces.uncovered(text).stream()
        .map(
            codePoint ->
                String.format(
                    Locale.ROOT, "no typeface draws U+%04X, in: %s", codePoint, text.strip()))
        .toList();
  }
}

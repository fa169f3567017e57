package org.seafettle.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** What a proofreader wants to know of CSS: the families it names and the characters it adds. */
final class StyleSheet {

  private static final Pattern COMMENT = Pattern.compile("/\\*.*?\\*/", Pattern.DOTALL);
  private static final Pattern FAMILY =
      Pattern.compile("(?<![\\w-])font-family\\s*:([^;}!]*)", Pattern.CASE_INSENSITIVE);

  /** The families of the short form come after a size with its unit. */
  private static final Pattern SHORT_FORM =
      Pattern.compile(
          "(?<![\\w-])font\\s*:[^;}]*?[\\d.]+(?:pt|px|mm|cm|in|em|rem|%)(?:\\s*/\\s*[\\w.%]+)?\\s+([^;}!]*)",
          Pattern.CASE_INSENSITIVE);

  private static final Pattern ESCAPE = Pattern.compile("\\\\([0-9A-Fa-f]{1,6})\\s?");

  private StyleSheet() {}

  /** Every family named, without quotes; {@code inherit} is none. */
  static List<String> families(String css) {
    var text = COMMENT.matcher(css).replaceAll("");
    var families = new ArrayList<String>();
    for (var pattern : List.of(FAMILY, SHORT_FORM)) {
      pattern
          .matcher(text)
          .results()
          .flatMap(found -> Pattern.compile(",").splitAsStream(found.group(1)))
          .map(family -> family.replaceAll("['\"]", "").strip())
          .filter(family -> !family.isEmpty() && !family.equals("inherit"))
          .forEach(families::add);
    }
    return families;
  }

  /** The sheet with its escapes resolved, so that generated characters can be read. */
  static String generated(String css) {
    return ESCAPE
        .matcher(COMMENT.matcher(css).replaceAll(""))
        .replaceAll(found -> character(Integer.parseInt(found.group(1), 16)));
  }

  private static String character(int codePoint) {
    return Character.isValidCodePoint(codePoint)
        ? java.util.regex.Matcher.quoteReplacement(Character.toString(codePoint))
        : "\uFFFD";
  }
}

package org.seafettle.pdf;

import com.openhtmltopdf.extend.FSTextBreaker;
import com.openhtmltopdf.layout.UrlAwareLineBreakIterator;
import java.text.BreakIterator;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Where a line may end: as usual, yet neither between a number and its unit nor within either, nor
 * within the number of a document, nor after an apostrophe. The text itself stays as it is, so that
 * it is found when searched for.
 */
final class LineEnds implements FSTextBreaker {

  private static final String UNIT =
      "(?:°[CF]|%|[mkµ]?[VAWLgN]|mg/kg|mL/h|L/min|L/h|Ah|[mckµ]?m|m[bB]ar|bar|psi|k?Pa|inHg|ft|hp|h|min|K)"
          + "(?![\\p{L}\\d/])";

  private static final Pattern BEFORE_UNIT = Pattern.compile(UNIT);

  private static final Pattern UNIT_BEFORE_SLASH = Pattern.compile(".*(?<!\\p{L})\\p{L}{1,3}/?");
  private static final Pattern UNIT_AFTER_SLASH = Pattern.compile("/?\\p{L}{1,3}(?![\\p{L}/]).*");

  private final FSTextBreaker usual =
      new UrlAwareLineBreakIterator(BreakIterator.getLineInstance(Locale.US));
  private String text = "";

  @Override
  public void setText(String newText) {
    text = newText;
    usual.setText(newText);
  }

  @Override
  public int next() {
    int end = usual.next();
    while (end > 1 && end < text.length() && isTogether(end)) {
      end = usual.next();
    }
    return end;
  }

  private boolean isTogether(int at) {
    char last = text.charAt(at - 1);
    char next = text.charAt(at);
    return switch (last) {
      case '°', '’' -> Character.isLetter(next);
      case '.', ',' -> Character.isDigit(next) && Character.isDigit(text.charAt(at - 2));
      case '-' -> Character.isDigit(next) && isNumberOrSeries(text.charAt(at - 2));
      case ' ' -> isBeforeUnit(at) || text.charAt(at - 2) == '±';
      case '/' -> isWithinUnit(at);
      default -> next == '/' && isWithinUnit(at);
    };
  }

  private static boolean isNumberOrSeries(char c) {
    return Character.isDigit(c) || Character.isUpperCase(c);
  }

  private boolean isBeforeUnit(int at) {
    return Character.isDigit(text.charAt(at - 2))
        && BEFORE_UNIT.matcher(text).region(at, text.length()).lookingAt();
  }

  private boolean isWithinUnit(int at) {
    return UNIT_BEFORE_SLASH.matcher(text.substring(Math.max(0, at - 5), at)).matches()
        && UNIT_AFTER_SLASH.matcher(text.substring(at, Math.min(text.length(), at + 6))).matches();
  }
}

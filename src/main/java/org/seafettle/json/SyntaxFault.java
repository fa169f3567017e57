package org.seafettle.json;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import org.seafettle.problem.Place;
import org.seafettle.problem.Problem;

/** Says in plain words why a text is no JSON. */
final class SyntaxFault {

  private SyntaxFault() {}

  static Problem empty(String file) {
    return new Problem(
        Place.file(file), "The file is empty.", "Write a survey into it, within { and }.");
  }

  static Problem more(String file, JsonLocation at) {
    return at(
        file, at, "the file goes on after its last }", "Remove what follows, or the } before it.");
  }

  /** What goes beyond the limits of the parser, which cannot tell the place. */
  static Problem beyond(String file, JsonLocation at, StreamConstraintsException e) {
    return e.getOriginalMessage().contains("nesting")
        ? at(file, at, "the brackets are nested too deeply", "Close the brackets that are open.")
        : at(file, at, "a number or name is too long", "Write the digits that were read.");
  }

  static Problem of(String file, String text, JsonProcessingException e) {
    var at = e.getLocation();
    var message = e.getOriginalMessage();
    if (e instanceof JsonEOFException) {
      return at(
          file,
          at,
          "the file ends before everything is closed",
          "Close what is open with \", ] or }.");
    }
    return unexpected(file, at, message, before(text, at));
  }

  /** The last character before the place of the fault that is not blank, or 0. */
  private static char before(String text, JsonLocation at) {
    int i = (int) Math.min(at.getCharOffset(), text.length()) - 1;
    while (i > 0 && Character.isWhitespace(text.charAt(i))) {
      i--;
    }
    return i < 0 ? 0 : text.charAt(i);
  }

  private static Problem unexpected(String file, JsonLocation at, String message, char before) {
    if (message.contains("('/'") || message.contains("('#'")) {
      return at(file, at, "there is a comment", "Remove it; a remark goes into a \"note\".");
    }
    if (message.contains("Non-standard token")
        || message.contains("'NaN'")
        || message.contains("INF")) {
      return at(file, at, "a word stands where a number is wanted", "Leave out what was not read.");
    }
    if (before == ',' && (message.contains("('}'") || message.contains("(']'"))) {
      return at(file, at, "there is a comma after the last entry", "Remove the comma.");
    }
    if (message.contains("comma to separate")) {
      return at(file, at, "a comma is missing between two entries", "Put a comma between them.");
    }
    if (message.contains("a colon to separate")) {
      return at(file, at, "a colon is missing after a name", "Write \"name\": value.");
    }
    return quotes(file, at, message);
  }

  private static Problem quotes(String file, JsonLocation at, String message) {
    if (message.contains("('''")) {
      return at(file, at, "there is a single quotation mark", "Write \" around names and texts.");
    }
    if (message.contains("double-quote")) {
      return at(file, at, "a name without quotation marks", "Write \" around it.");
    }
    if (message.contains("CTRL-CHAR")) {
      return at(
          file,
          at,
          "a text goes on over the end of its line, or has another control character in it",
          "Close it with \" on the same line; a new line within it is written \\n.");
    }
    if (message.contains("escape")) {
      return at(
          file,
          at,
          "a backslash has no meaning here",
          "Write \\\\ for a backslash; between folders write /.");
    }
    if (message.contains("('.'")
        || message.contains("('+'")
        || message.contains("eading zero")
        || message.contains("umeric value")) {
      return at(
          file,
          at,
          "a number is not written as JSON wants it",
          "Write it without leading zeros, with a digit on both sides of the point, such as 0.5.");
    }
    if (message.contains("nrecognized token")) {
      return at(
          file,
          at,
          "a text without quotation marks",
          "Write \" around texts and quantities; true and false go without.");
    }
    return at(
        file,
        at,
        "this character does not belong here",
        "Check the quotation marks, commas and brackets around it.");
  }

  private static Problem at(String file, JsonLocation at, String fault, String remedy) {
    return new Problem(
        Place.line(file, "", Math.max(1, at.getLineNr())),
        "This is not JSON: " + fault + " (column " + Math.max(1, at.getColumnNr()) + ").",
        remedy);
  }
}

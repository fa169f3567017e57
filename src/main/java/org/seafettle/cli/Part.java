package org.seafettle.cli;

import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * One of several parts that a season is divided into.
 *
 * @param number of this part, 1 to {@code of}
 * @param of how many parts there are, at least 1
 */
record Part(int number, int of) {

  static final Part WHOLE = new Part(1, 1);

  private static final Pattern WRITTEN = Pattern.compile("([1-9]\\d{0,5})/([1-9]\\d{0,5})");

  /** Told by the name alone, so that every part knows its own without asking the others. */
  boolean holds(String source) {
    long share = Long.parseLong(Sha256.of(source).substring(0, 8), 16);
    return share % of == number - 1;
  }

  String name() {
    return number + "-of-" + of;
  }

  /** Reads {@code 2/8}. */
  static final class Reader implements ITypeConverter<Part> {

    @Override
    public Part convert(String text) {
      var written = WRITTEN.matcher(text);
      if (!written.matches()) {
        throw new TypeConversionException("'" + text + "' is no part such as 2/8");
      }
      var part = new Part(Integer.parseInt(written.group(1)), Integer.parseInt(written.group(2)));
      if (part.number > part.of) {
        throw new TypeConversionException("there is no part " + part.number + " of " + part.of);
      }
      return part;
    }
  }
}

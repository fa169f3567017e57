package org.seafettle.house;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import org.seafettle.problem.Refused;

/**
 * A colour that can be read on white.
 *
 * @param rgb red, green and blue, eight bits each
 */
public record Accent(int rgb) {

  /** Least contrast of text against its ground (WCAG 2.2, success criterion 1.4.3). */
  public static final double LEAST_CONTRAST = 4.5;

  public Accent {
    if (contrast(rgb) < LEAST_CONTRAST) {
      throw tooPale(rgb);
    }
  }

  /**
   * Reads a colour.
   *
   * @param written {@code #} and six hexadecimal digits
   * @throws Refused where it is none, or too pale; then the nearest darker one that will do is
   *     named
   */
  public static Accent of(String written) {
    if (!written.matches("#[0-9A-Fa-f]{6}")) {
      throw Refused.because(
          "\"" + written + "\" is not a colour as it is written here.",
          "Write # and six hexadecimal digits, such as \"#1F5F7A\".");
    }
    return new Accent(Integer.parseInt(written.substring(1), 16));
  }

  private static Refused tooPale(int rgb) {
    return Refused.because(
        "The colour "
            + written(rgb)
            + " has a contrast of "
            + ratio(contrast(rgb))
            + " to 1 against white; text needs 4.5 to 1 (WCAG 2.2, 1.4.3).",
        "Write a darker one; the nearest of the same hue is \"" + written(darkened(rgb)) + "\".");
  }

  /** As CSS writes it: {@code #1F5F7A}. */
  public String written() {
    return written(rgb);
  }

  private static String written(int rgb) {
    return String.format(Locale.ROOT, "#%06X", rgb);
  }

  /** Rounded down: a ratio that fails must not be told as one that passes. */
  private static String ratio(double contrast) {
    return BigDecimal.valueOf(contrast).setScale(2, RoundingMode.DOWN).toPlainString();
  }

  /** The contrast against white, 1 to 21 (WCAG 2.2, definition of contrast ratio). */
  static double contrast(int rgb) {
    return 1.05 / (luminance(rgb) + 0.05);
  }

  /** The relative luminance, 0 to 1 (WCAG 2.2, definition of relative luminance). */
  private static double luminance(int rgb) {
    return 0.2126 * linear(rgb >> 16) + 0.7152 * linear(rgb >> 8) + 0.0722 * linear(rgb);
  }

  private static double linear(int channel) {
    double share = (channel & 0xFF) / 255.0;
    return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
  }

  /** All channels by the same factor, as little as will do. */
  private static int darkened(int rgb) {
    int parts = 255;
    int darker = rgb;
    while (contrast(darker) < LEAST_CONTRAST) {
      parts--;
      darker = by(rgb >> 16, parts) << 16 | by(rgb >> 8, parts) << 8 | by(rgb, parts);
    }
    return darker;
  }

  private static int by(int channel, int parts) {
    return (channel & 0xFF) * parts / 255;
  }
}

package org.seafettle.pdf;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** One font file that is supplied with the program. */
enum Typeface {
  ROBOTO(Family.ROBOTO, 400, FontStyle.NORMAL, "Roboto-Regular"),
  ROBOTO_ITALIC(Family.ROBOTO, 400, FontStyle.ITALIC, "Roboto-Italic"),
  ROBOTO_LIGHT(Family.ROBOTO, 300, FontStyle.NORMAL, "Roboto-Light"),
  ROBOTO_LIGHT_ITALIC(Family.ROBOTO, 300, FontStyle.ITALIC, "Roboto-LightItalic"),
  ROBOTO_MEDIUM(Family.ROBOTO, 500, FontStyle.NORMAL, "Roboto-Medium"),
  ROBOTO_MEDIUM_ITALIC(Family.ROBOTO, 500, FontStyle.ITALIC, "Roboto-MediumItalic"),
  ROBOTO_BOLD(Family.ROBOTO, 700, FontStyle.NORMAL, "Roboto-Bold"),
  ROBOTO_BOLD_ITALIC(Family.ROBOTO, 700, FontStyle.ITALIC, "Roboto-BoldItalic"),
  DEJAVU(Family.DEJAVU, 400, FontStyle.NORMAL, "DejaVuSans"),
  DEJAVU_OBLIQUE(Family.DEJAVU, 400, FontStyle.ITALIC, "DejaVuSans-Oblique"),
  DEJAVU_BOLD(Family.DEJAVU, 700, FontStyle.NORMAL, "DejaVuSans-Bold"),
  DEJAVU_BOLD_OBLIQUE(Family.DEJAVU, 700, FontStyle.ITALIC, "DejaVuSans-BoldOblique");

  /** A family, by the name that style sheets call it. */
  enum Family {
    ROBOTO("Roboto", "/com/formdev/flatlaf/fonts/roboto/"),
    DEJAVU("DejaVu Sans", "/net/sf/jasperreports/fonts/dejavu/");

    private final String cssName;
    private final String folder;

    Family(String cssName, String folder) {
      this.cssName = cssName;
      this.folder = folder;
    }

    String cssName() {
      return cssName;
    }
  }

  private static final byte[] SUBSTITUTIONS = "GSUB".getBytes(StandardCharsets.US_ASCII);
  private static final int TABLE_DIRECTORY = 12;
  private static final int TABLE_RECORD = 16;

  private final Family family;
  private final int weight;
  private final FontStyle style;
  private final String file;

  Typeface(Family family, int weight, FontStyle style, String file) {
    this.family = family;
    this.weight = weight;
    this.style = style;
    this.file = file;
  }

  Family family() {
    return family;
  }

  /** As in CSS, 100 to 900. */
  int weight() {
    return weight;
  }

  FontStyle style() {
    return style;
  }

  boolean isSlanted() {
    return style != FontStyle.NORMAL;
  }

  /** The font file, read anew, with its ligatures out of the library's sight. */
  byte[] bytes() {
    try (var in = Typeface.class.getResourceAsStream(family.folder + file + ".ttf")) {
      if (in == null) {
        throw new IllegalStateException("the font " + file + " is not on the class path");
      }
      return withoutSubstitutions(in.readAllBytes());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Renames the table of glyph substitutions, so that no one looks for it. The library compiles its
   * rules again for every run of text, which took more than half of the whole time; the reports
   * need none of them.
   */
  private static byte[] withoutSubstitutions(byte[] font) {
    int tables = (font[4] & 0xff) << 8 | font[5] & 0xff;
    for (int at = TABLE_DIRECTORY;
        at < TABLE_DIRECTORY + tables * TABLE_RECORD;
        at += TABLE_RECORD) {
      if (Arrays.equals(font, at, at + 4, SUBSTITUTIONS, 0, 4)) {
        font[at] = 'g';
      }
    }
    return font;
  }
}

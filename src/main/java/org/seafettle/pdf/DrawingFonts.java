package org.seafettle.pdf;

import com.openhtmltopdf.svgsupport.OpenHtmlGvtFont;
import com.openhtmltopdf.svgsupport.PDFTranscoder.OpenHtmlFontResolver;
import java.awt.FontFormatException;
import java.awt.font.TextAttribute;
import java.text.AttributedCharacterIterator;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.Map;
import org.apache.batik.gvt.font.GVTFont;
import org.apache.batik.gvt.font.GVTFontFace;
import org.apache.batik.gvt.font.GVTFontFamily;
import org.jspecify.annotations.Nullable;

/**
 * The supplied typefaces in drawings, by the names of their families in CSS. Reads a font when a
 * drawing first asks for it, and finds the nearest weight, where the library's own registration
 * reads all of them at once and takes any weight when the exact one is missing.
 */
final class DrawingFonts extends OpenHtmlFontResolver {

  private final Typefaces typefaces;
  private final Map<Typeface, GVTFont> fonts = new EnumMap<>(Typeface.class);

  DrawingFonts(Typefaces typefaces) {
    this.typefaces = typefaces;
  }

  @Override
  public @Nullable GVTFontFamily resolve(String name) {
    return Arrays.stream(Typeface.Family.values())
        .filter(family -> family.cssName().equalsIgnoreCase(name))
        .findFirst()
        .map(Family::new)
        .orElse(null);
  }

  private GVTFont font(Typeface typeface) {
    return fonts.computeIfAbsent(
        typeface,
        wanted -> {
          try {
            var family = new Family(wanted.family());
            return new OpenHtmlGvtFont(typefaces.file(wanted), family, 1f, 1f, 0f);
          } catch (FontFormatException e) {
            throw new IllegalStateException("the font " + wanted + " cannot be read", e);
          }
        });
  }

  /** One family, of which the typeface nearest in weight is used. */
  private final class Family implements GVTFontFamily {

    private final Typeface.Family family;

    Family(Typeface.Family family) {
      this.family = family;
    }

    @Override
    public String getFamilyName() {
      return family.cssName();
    }

    @Override
    public GVTFontFace getFontFace() {
      return new GVTFontFace(family.cssName());
    }

    @Override
    public GVTFont deriveFont(float size, AttributedCharacterIterator text) {
      return deriveFont(size, text.getAttributes());
    }

    @Override
    public GVTFont deriveFont(float size, @SuppressWarnings("rawtypes") Map attributes) {
      boolean slanted = number(attributes.get(TextAttribute.POSTURE), 0) > 0;
      int weight = cssWeight(number(attributes.get(TextAttribute.WEIGHT), 1));
      return font(nearest(weight, slanted)).deriveFont(size);
    }

    @Override
    public boolean isComplex() {
      return false;
    }

    private Typeface nearest(int weight, boolean slanted) {
      return Arrays.stream(Typeface.values())
          .filter(typeface -> typeface.family() == family && typeface.isSlanted() == slanted)
          .min(Comparator.comparingInt(typeface -> Math.abs(typeface.weight() - weight)))
          .orElseThrow();
    }
  }

  private static float number(@Nullable Object attribute, float otherwise) {
    return attribute instanceof Float given ? given : otherwise;
  }

  /** Back from the weights of AWT, into which Batik turned those of CSS. */
  private static int cssWeight(float weight) {
    if (weight < TextAttribute.WEIGHT_REGULAR) {
      return 300;
    }
    if (weight < TextAttribute.WEIGHT_SEMIBOLD) {
      return 400;
    }
    return weight < TextAttribute.WEIGHT_BOLD ? 500 : 700;
  }
}

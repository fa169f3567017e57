package org.seafettle.pdf;

import com.openhtmltopdf.css.sheet.FontFaceRule;
import com.openhtmltopdf.css.style.CssContext;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.extend.SVGDrawer;
import com.openhtmltopdf.layout.SharedContext;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.RenderingContext;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.svgsupport.OpenHtmlGvtFont;
import com.openhtmltopdf.svgsupport.PDFTranscoder.OpenHtmlFontResolver;
import java.awt.FontFormatException;
import java.awt.font.TextAttribute;
import java.text.AttributedCharacterIterator;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.batik.gvt.font.GVTFont;
import org.apache.batik.gvt.font.GVTFontFace;
import org.apache.batik.gvt.font.GVTFontFamily;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Draws the SVG of one document, its text in the supplied typefaces only. Reads a font when a
 * drawing first asks for it, and finds the nearest weight, where the library's own registration
 * reads all of them at once and takes any weight when the exact one is missing.
 *
 * <p>Where a drawing names no family that has the character, Batik asks the machine for a font,
 * past the resolver that it was given. So the families are named here, before it can.
 */
final class Drawings extends BatikSVGDrawer {

  private static final String FAMILY = "font-family";
  private static final Set<String> TEXT = Set.of("text", "tspan", "textPath");

  private final Typefaces typefaces;
  private final DrawingMemory memory;
  private final Map<Typeface, GVTFont> fonts = new EnumMap<>(Typeface.class);

  /**
   * @param memory of this thread, see {@link DrawingMemory}
   */
  Drawings(Typefaces typefaces, DrawingMemory memory) {
    this.typefaces = typefaces;
    this.memory = memory;
  }

  @Override
  public void importFontFaceRules(List<FontFaceRule> fontFaces, SharedContext shared) {
    fontResolver = new Resolver();
  }

  @Override
  public SVGDrawer.SVGImage buildSVGImage(
      Element drawing,
      Box box,
      CssContext context,
      double width,
      double height,
      double dotsPerPixel) {
    var parts = drawing.getElementsByTagName("*");
    for (int i = 0; i < parts.getLength(); i++) {
      if (parts.item(i) instanceof Element part && TEXT.contains(part.getTagName())) {
        complete(part);
      }
    }
    var measured = super.buildSVGImage(drawing, box, context, width, height, dotsPerPixel);
    return new SVGDrawer.SVGImage() {
      @Override
      public int getIntrinsicWidth() {
        return measured.getIntrinsicWidth();
      }

      @Override
      public int getIntrinsicHeight() {
        return measured.getIntrinsicHeight();
      }

      @Override
      public void drawSVG(OutputDevice page, RenderingContext rendering, double x, double y) {
        var styles = rendering.getCss().getCSSForAllDescendants(drawing);
        var area = box.getContentAreaEdge(box.getAbsX(), box.getAbsY(), rendering);
        memory
            .drawing(drawing, styles, area.getSize(), dotsPerPixel)
            .draw(page, rendering, fontResolver, x, y);
      }
    };
  }

  /** In the style of the element, because rules of the page reach into drawings. */
  private static void complete(Element part) {
    var families = family(part) + ", '" + Typeface.Family.DEJAVU.cssName() + "'";
    part.setAttribute("style", part.getAttribute("style") + "; font-family: " + families);
  }

  private static String family(Element part) {
    for (Node node = part; node instanceof Element element; node = node.getParentNode()) {
      if (element.hasAttribute(FAMILY)) {
        return element.getAttribute(FAMILY);
      }
    }
    return Typeface.Family.ROBOTO.cssName();
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

  /** Knows the supplied families by their names in CSS. */
  private final class Resolver extends OpenHtmlFontResolver {

    @Override
    public @Nullable GVTFontFamily resolve(String name) {
      return Arrays.stream(Typeface.Family.values())
          .filter(family -> family.cssName().equalsIgnoreCase(name))
          .findFirst()
          .map(Family::new)
          .orElse(null);
    }
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

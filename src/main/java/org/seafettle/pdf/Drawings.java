package org.seafettle.pdf;

import com.openhtmltopdf.css.sheet.FontFaceRule;
import com.openhtmltopdf.css.style.CssContext;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.extend.SVGDrawer;
import com.openhtmltopdf.layout.SharedContext;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.RenderingContext;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import java.util.List;
import java.util.Set;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Draws the SVG of one document, its text in the supplied typefaces only.
 *
 * <p>Where a drawing names no family that has the character, Batik asks the machine for a font,
 * past the resolver that it was given. So the families are named here, before it can.
 */
final class Drawings extends BatikSVGDrawer {

  private static final String FAMILY = "font-family";
  private static final Set<String> TEXT = Set.of("text", "tspan", "textPath");

  private final DrawingMemory memory;

  /**
   * @param memory of this thread
   */
  Drawings(DrawingMemory memory) {
    this.memory = memory;
  }

  @Override
  public void importFontFaceRules(List<FontFaceRule> fontFaces, SharedContext shared) {
    fontResolver = memory.fonts();
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
            .draw(page, rendering, memory.fonts(), x, y);
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
}

package org.seafettle.pdf;

import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.render.RenderingContext;
import com.openhtmltopdf.svgsupport.PDFTranscoder;
import java.awt.Dimension;
import org.apache.batik.anim.dom.SVGDOMImplementation;
import org.apache.batik.transcoder.TranscoderException;
import org.apache.batik.transcoder.TranscoderInput;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** One drawing, built when it is first drawn, that any number of documents can then show. */
final class Drawing extends PDFTranscoder {

  private final Document svg;
  private final boolean hasPictures;

  /**
   * A drawing.
   *
   * @param element in the page; copied, so that the page is not kept
   * @param styles the rules of the page that reach into it
   * @param size on the page, in dots
   */
  Drawing(Element element, String styles, Dimension size, double dotsPerPixel) {
    super(null, dotsPerPixel, size.width / dotsPerPixel, size.height / dotsPerPixel);
    addTranscodingHint(KEY_WIDTH, (float) (size.width / dotsPerPixel));
    addTranscodingHint(KEY_HEIGHT, (float) (size.height / dotsPerPixel));
    addTranscodingHint(KEY_EXECUTE_ONLOAD, false);
    svg = copied(element, styles);
    hasPictures = hasPictures(element);
  }

  static boolean hasPictures(Element svg) {
    return svg.getElementsByTagName("image").getLength() > 0;
  }

  private static Document copied(Element element, String styles) {
    var copy =
        SVGDOMImplementation.getDOMImplementation()
            .createDocument(SVGDOMImplementation.SVG_NAMESPACE_URI, "svg", null);
    var root = copy.getDocumentElement();
    var attributes = element.getAttributes();
    for (int i = 0; i < attributes.getLength(); i++) {
      root.setAttribute(attributes.item(i).getNodeName(), attributes.item(i).getNodeValue());
    }
    var style = copy.createElementNS(SVGDOMImplementation.SVG_NAMESPACE_URI, "style");
    style.setTextContent(styles);
    root.appendChild(style);
    for (var child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
      root.appendChild(copy.importNode(child, true));
    }
    return copy;
  }

  /** At this place of a page; nothing of the page is kept. */
  void draw(
      OutputDevice page,
      RenderingContext rendering,
      OpenHtmlFontResolver fonts,
      double x,
      double y) {
    // what is built keeps hold of whoever fetches pictures, and that one of the whole document
    var pictures = hasPictures ? rendering.getUac() : null;
    setRenderingParameters(page, rendering, x, y, fonts, pictures);
    try {
      if (hasGraphicsNode()) {
        paintGraphicsNode();
      } else {
        build();
      }
    } finally {
      setRenderingParameters(null, null, 0, 0, fonts, null);
    }
  }

  private void build() {
    try {
      transcode(new TranscoderInput(svg), null);
    } catch (TranscoderException e) {
      throw new IllegalStateException("an SVG cannot be drawn: " + reason(e), e);
    }
  }

  /** Batik says why in the last line, after where and in what. */
  private static String reason(TranscoderException e) {
    return e.getMessage().lines().reduce((before, last) -> last).orElse("");
  }
}

package org.seafettle.pdf;

import java.awt.Dimension;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * The drawings that were built last, by what they say and how large they are: nearly every report
 * of a run carries the same scales, and building one costs more than painting it. For one thread,
 * because what Batik builds is changed while it is painted.
 */
final class DrawingMemory {

  /** A run has some twenty; a house of its own brings a few more. */
  private static final int MOST = 64;

  private final Map<Key, Drawing> drawings =
      new LinkedHashMap<>(MOST, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Key, Drawing> eldest) {
          return size() > MOST;
        }
      };

  private final DrawingFonts fonts;

  DrawingMemory(Typefaces typefaces) {
    this.fonts = new DrawingFonts(typefaces);
  }

  DrawingFonts fonts() {
    return fonts;
  }

  private record Key(String source, String styles, Dimension size, double dotsPerPixel) {}

  /**
   * Built already, or ready to be. One with a picture in it is new each time, for a picture of the
   * same name is another one in the next document.
   *
   * @param styles the rules of the page that reach into the drawing
   * @param size on the page, in dots
   */
  Drawing drawing(Element svg, @Nullable String styles, Dimension size, double dotsPerPixel) {
    var rules = styles == null ? "" : styles;
    if (Drawing.hasPictures(svg)) {
      return new Drawing(svg, rules, size, dotsPerPixel);
    }
    return drawings.computeIfAbsent(
        new Key(source(svg, new StringBuilder()).toString(), rules, size, dotsPerPixel),
        key -> new Drawing(svg, rules, size, dotsPerPixel));
  }

  /** What is drawn; the alternative text is not. */
  private static StringBuilder source(Node node, StringBuilder source) {
    if (node instanceof Element element) {
      source.append('<').append(element.getTagName());
      var attributes = element.getAttributes();
      for (int i = 0; i < attributes.getLength(); i++) {
        var attribute = attributes.item(i);
        if (!attribute.getNodeName().equals("alt")) {
          source.append(' ').append(attribute.getNodeName()).append('=');
          source.append(attribute.getNodeValue()).append('\0');
        }
      }
      source.append('>');
    } else if (node.getNodeValue() != null) {
      source.append(node.getNodeValue());
    }
    for (Node child = node.getFirstChild(); child != null; child = child.getNextSibling()) {
      source(child, source);
    }
    return source.append('\0');
  }
}

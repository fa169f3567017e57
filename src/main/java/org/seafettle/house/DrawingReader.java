package org.seafettle.house;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.seafettle.house.Logo.Attribute;
import org.seafettle.house.Logo.Drawing;
import org.seafettle.house.Logo.Shape;
import org.seafettle.problem.Problem;
import org.seafettle.problem.Refused;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/**
 * Reads an SVG that is nothing but shapes, paths and text (W3C SVG 1.1). What draws nothing is left
 * out; what draws in another way, refers to anything, runs or animates is refused, and never passed
 * on.
 */
final class DrawingReader {

  private static final String SVG = "http://www.w3.org/2000/svg";
  private static final int MOST_BYTES = 200_000;
  private static final int MOST_SHAPES = 2000;
  private static final int DEEPEST = 20;

  private static final Set<String> DRAWING =
      Set.of(
          "g", "path", "rect", "circle", "ellipse", "line", "polyline", "polygon", "text", "tspan");
  private static final Set<String> DRAWING_NOTHING = Set.of("title", "desc", "metadata", "defs");
  private static final Set<String> OF_THE_ROOT =
      Set.of("width", "height", "viewBox", "preserveAspectRatio", "x", "y");

  private final Map<String, Problem> problems = new LinkedHashMap<>();
  private int shapes;

  Drawing read(byte[] bytes) {
    if (bytes.length > MOST_BYTES) {
      throw Refused.because(
          "The drawing has " + bytes.length / 1000 + " kB; at most 200 kB are read.",
          "Simplify its paths, or save it as PNG.");
    }
    var root = parsed(bytes);
    if (!SVG.equals(root.getNamespaceURI()) || !root.getLocalName().equals("svg")) {
      throw Refused.because("The logo is neither a PNG nor an SVG.", "Save it as PNG or SVG.");
    }
    var box = box(root);
    var inherited = attributes(root, true);
    var drawing = new Drawing(box, List.of(new Shape("g", inherited, parts(root, 1), "")));
    Refused.ifAny(List.copyOf(problems.values()));
    return drawing;
  }

  private static Element parsed(byte[] bytes) {
    try {
      return builder().parse(new InputSource(new ByteArrayInputStream(bytes))).getDocumentElement();
    } catch (SAXException e) {
      throw Refused.because(
          "The logo cannot be read as PNG or SVG: "
              + String.valueOf(e.getMessage()).replaceAll("[.\\s]*$", "."),
          "Save it anew as plain SVG, without a document type.");
    } catch (IOException | ParserConfigurationException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Without document types there are no entities, and nothing is fetched. */
  private static DocumentBuilder builder() throws ParserConfigurationException {
    var factory = DocumentBuilderFactory.newInstance();
    factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
    factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
    factory.setXIncludeAware(false);
    factory.setNamespaceAware(true);
    var builder = factory.newDocumentBuilder();
    // the default one writes to the console
    builder.setErrorHandler(new DefaultHandler());
    return builder;
  }

  private static List<Double> box(Element root) {
    var written =
        root.getAttribute("viewBox").isBlank() ? size(root) : root.getAttribute("viewBox");
    var numbers =
        Stream.of(written.strip().split("[\\s,]+"))
            .filter(DrawingValues::isNumber)
            .map(Double::valueOf)
            .toList();
    if (numbers.size() != 4 || numbers.get(2) <= 0 || numbers.get(3) <= 0) {
      throw Refused.because(
          "The drawing does not say which part of the plane it shows.",
          "Give its root a viewBox, such as \"0 0 240 80\".");
    }
    return numbers;
  }

  private static String size(Element root) {
    return ("0 0 " + root.getAttribute("width") + " " + root.getAttribute("height"))
        .replace("px", "");
  }

  private List<Shape> parts(Element parent, int depth) {
    var parts = new ArrayList<Shape>();
    boolean text = Set.of("text", "tspan").contains(parent.getLocalName());
    for (Node node = parent.getFirstChild(); node != null; node = node.getNextSibling()) {
      if (node instanceof Element child && SVG.equals(child.getNamespaceURI())) {
        shape(child, depth, parts);
      } else if (text && node.getNodeType() == Node.TEXT_NODE) {
        parts.add(new Shape("", List.of(), List.of(), node.getNodeValue()));
      }
    }
    return parts;
  }

  private void shape(Element element, int depth, List<Shape> parts) {
    var name = element.getLocalName();
    if (DRAWING_NOTHING.contains(name)) {
      return;
    }
    if (!DRAWING.contains(name)) {
      blame(
          "<" + name + "> has no place in a logo.",
          "Leave nothing but shapes, paths and text; a drawing program can turn the rest into"
              + " paths.");
    } else if (++shapes > MOST_SHAPES || depth > DEEPEST) {
      blame("The drawing has too many parts, or parts within parts.", "Simplify it.");
    } else {
      parts.add(new Shape(name, attributes(element, false), parts(element, depth + 1), ""));
    }
  }

  private List<Attribute> attributes(Element element, boolean root) {
    var attributes = new LinkedHashMap<String, String>();
    var given = element.getAttributes();
    for (int i = 0; i < given.getLength(); i++) {
      var name = given.item(i).getNodeName();
      if (name.equals("style")) {
        DrawingValues.declarations(given.item(i).getNodeValue())
            .forEach((key, value) -> take(element, key, value, attributes));
      } else if (!(root && OF_THE_ROOT.contains(name))) {
        take(element, name, given.item(i).getNodeValue(), attributes);
      }
    }
    return attributes.entrySet().stream()
        .sorted(Map.Entry.comparingByKey())
        .map(entry -> new Attribute(entry.getKey(), entry.getValue()))
        .toList();
  }

  private void take(Element element, String name, String value, Map<String, String> attributes) {
    if (DrawingValues.saysNothing(name, value)) {
      return;
    }
    if (DrawingValues.allows(name, value.strip())) {
      attributes.put(name, value.strip());
    } else if (name.equals("font-family")) {
      blame(
          "The drawing has text in a typeface of its own.",
          "Turn the text into paths, or write font-family=\"Roboto\".");
    } else {
      var shown = value.length() > 40 ? value.substring(0, 40) + "…" : value;
      blame(
          "<" + element.getLocalName() + "> has " + name + "=\"" + shown + "\".",
          "Leave it out: a logo is drawn in plain solid colours, with numbers, and refers to"
              + " nothing.");
    }
  }

  private void blame(String fault, String remedy) {
    problems.putIfAbsent(fault, Problem.of(fault, remedy));
  }
}

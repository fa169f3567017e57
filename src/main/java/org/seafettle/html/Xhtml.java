package org.seafettle.html;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** Reads set pages, and asks what is in them. */
final class Xhtml {

  private Xhtml() {}

  /** The printer has refused what is not well-formed before. */
  static Document parse(String xhtml) {
    try {
      return factory().newDocumentBuilder().parse(new InputSource(new StringReader(xhtml)));
    } catch (ParserConfigurationException | SAXException | IOException e) {
      throw new IllegalStateException("the pages were printed and cannot be read", e);
    }
  }

  /** One that fetches nothing and knows no entity of a page's own. */
  private static DocumentBuilderFactory factory() throws ParserConfigurationException {
    var factory = DocumentBuilderFactory.newInstance();
    factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
    factory.setFeature("http://xml.org/sax/features/external-general-entities", false);
    factory.setFeature("http://xml.org/sax/features/external-parameter-entities", false);
    factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
    factory.setXIncludeAware(false);
    return factory;
  }

  static List<Element> all(Document document, String name) {
    var nodes = document.getElementsByTagName(name);
    var all = new ArrayList<Element>();
    for (int i = 0; i < nodes.getLength(); i++) {
      all.add((Element) nodes.item(i));
    }
    return all;
  }

  static List<Element> children(Element parent) {
    var children = new ArrayList<Element>();
    for (Node node = parent.getFirstChild(); node != null; node = node.getNextSibling()) {
      if (node instanceof Element child) {
        children.add(child);
      }
    }
    return children;
  }

  static List<String> classes(Element element) {
    return Arrays.asList(element.getAttribute("class").split("\\s+"));
  }

  static boolean hasClassLike(Element element, String pattern) {
    return classes(element).stream().anyMatch(name -> name.matches(pattern));
  }

  /** Whether it, or something in it, has the class. */
  static boolean holds(Element element, String name) {
    return classes(element).contains(name)
        || children(element).stream().anyMatch(child -> holds(child, name));
  }
}

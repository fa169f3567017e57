package org.seafettle.pdf;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Reads a document before it is laid out, for what the library would lose or spoil without a word:
 * characters that no typeface draws, families that do not exist, pictures without alternative text,
 * headings out of order, transparency in drawings and links to the machine.
 */
final class Proofreader {

  /** Elements that the library leaves out, with all they show. */
  private static final Set<String> UNPRINTABLE =
      Set.of(
          "audio",
          "base",
          "button",
          "canvas",
          "embed",
          "form",
          "iframe",
          "input",
          "math",
          "object",
          "picture",
          "script",
          "select",
          "textarea",
          "video");

  private static final Set<String> TRANSPARENCY =
      Set.of("opacity", "fill-opacity", "stroke-opacity", "stop-opacity");
  private static final Pattern LINK = Pattern.compile("(?:#|https?://|mailto:|tel:).+");
  private static final Pattern HEADING = Pattern.compile("h[1-6]");

  private final StyleReader styles;
  private final List<String> faults = new ArrayList<>();
  private int level;

  Proofreader(StyleReader styles) {
    this.styles = styles;
  }

  /** Everything found, in the order of the document. */
  List<String> read(Document document) {
    var sheets = document.getElementsByTagName("style");
    for (int i = 0; i < sheets.getLength(); i++) {
      faults.addAll(styles.sheet(sheets.item(i).getTextContent()));
    }
    readElement(document.getDocumentElement(), false);
    return List.copyOf(faults);
  }

  private void readElement(Element element, boolean drawing) {
    var name = element.getTagName().toLowerCase(Locale.ROOT);
    boolean drawn = drawing || name.equals("svg");
    faults.addAll(styles.style(element.getAttribute("style")));
    if (drawn) {
      readDrawn(element, name);
    }
    if ((name.equals("svg") && !drawing || name.equals("img"))
        && element.getAttribute("alt").isBlank()) {
      faults.add("<" + name + "> without alternative text: " + source(element));
    }
    if (HEADING.matcher(name).matches()) {
      readHeading(name, element);
    }
    if (UNPRINTABLE.contains(name)) {
      faults.add("<" + name + "> cannot be printed");
    }
    switch (name) {
      case "a" -> readLink(element.getAttribute("href"));
      case "table" -> readTable(element);
      case "th" -> readTableHead(element);
      default -> {}
    }
    if (!name.equals("head") && !name.equals("style")) {
      readChildren(element, drawn);
    }
  }

  private void readChildren(Element element, boolean drawing) {
    for (Node node = element.getFirstChild(); node != null; node = node.getNextSibling()) {
      if (node instanceof Element child) {
        readElement(child, drawing);
      } else if (node.getNodeType() == Node.TEXT_NODE
          || node.getNodeType() == Node.CDATA_SECTION_NODE) {
        faults.addAll(styles.text(node.getNodeValue()));
      }
    }
  }

  private void readDrawn(Element element, String name) {
    if (element.hasAttribute("font-family")) {
      faults.addAll(styles.style("font-family:" + element.getAttribute("font-family")));
    }
    if (name.equals("style") || !StyleSheet.families(element.getAttribute("style")).isEmpty()) {
      faults.add("<" + name + "> in a drawing: name the family in the attribute font-family");
    }
    for (var attribute : TRANSPARENCY) {
      if (element.hasAttribute(attribute)) {
        faults.add("<" + name + "> in a drawing has " + attribute + ": use a solid colour");
      }
    }
  }

  private void readHeading(String name, Element element) {
    int next = name.charAt(1) - '0';
    if (next > level + 1) {
      faults.add("<" + name + "> skips a level: " + element.getTextContent().strip());
    }
    level = next;
  }

  private void readLink(String href) {
    if (!href.isEmpty() && !LINK.matcher(href).matches()) {
      faults.add("a link that cannot be followed from paper: " + href);
    }
  }

  private void readTable(Element table) {
    var widths = Grid.widths(table);
    if (new HashSet<>(widths).size() > 1) {
      faults.add("a table whose rows differ in their number of cells: " + widths);
    }
  }

  private void readTableHead(Element head) {
    if (!head.hasAttribute("scope")) {
      faults.add("<th> without its scope: " + head.getTextContent().strip());
    }
  }

  private static String source(Element element) {
    var source = element.getAttribute("src");
    return source.isEmpty() ? "inline" : source;
  }
}

package org.seafettle.html;

import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Writes elements of the printed pages as HTML (WHATWG HTML, 13.3): page numbers become links,
 * pictures are put inside, and what assistive technology reads from a PDF is told to it as ARIA.
 */
final class Markup {

  private static final Set<String> WITHOUT_END =
      Set.of("area", "br", "col", "hr", "img", "link", "meta", "source", "track", "wbr");

  /** A base, a script or an object has no place on paper either; a style holds for paper alone. */
  private static final Set<String> LEFT_OUT =
      Set.of("base", "bookmarks", "embed", "iframe", "link", "object", "script", "style");

  private static final String PICTURE = "photo:";

  private final Map<String, byte[]> pictures;
  private final StringBuilder out = new StringBuilder();

  Markup(Map<String, byte[]> pictures) {
    this.pictures = pictures;
  }

  String text() {
    return out.toString();
  }

  /** Markup as it stands, and a line end. */
  void line(String markup) {
    out.append(markup).append('\n');
  }

  void open(String name, Map<String, String> attributes) {
    out.append('<').append(name);
    attributes.forEach(
        (key, value) ->
            out.append(' ').append(key).append("=\"").append(quoted(value)).append('"'));
    out.append('>');
  }

  /** With attributes as names and values in turn. */
  void open(String name, String... attributes) {
    var map = new LinkedHashMap<String, String>();
    for (int i = 0; i < attributes.length; i += 2) {
      map.put(attributes[i], attributes[i + 1]);
    }
    out.append('\n');
    open(name, map);
  }

  void close(String name) {
    out.append("</").append(name).append('>').append(name.equals("html") ? "\n" : "");
  }

  void words(String text) {
    out.append(escaped(text));
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }

  private static String quoted(String text) {
    return escaped(text).replace("\"", "&quot;");
  }

  /** An element and all in it. */
  void write(Element element) {
    var name = element.getTagName();
    if (LEFT_OUT.contains(name)) {
      return;
    }
    if (name.equals("table")) {
      // a table that is still too wide scrolls by itself, and not the page
      open("div", Map.of("class", "scroll"));
      table(element);
      close("div");
    } else {
      plain(element, attributes(element));
    }
  }

  private void table(Element table) {
    var heads = ColumnHeads.of(table);
    var attributes = attributes(table);
    if (heads.isThere()) {
      attributes.merge("class", "cards", (given, own) -> given + " " + own);
    }
    heads.label();
    plain(table, attributes);
  }

  private void plain(Element element, Map<String, String> attributes) {
    var name = element.getTagName();
    open(name, attributes);
    if (WITHOUT_END.contains(name)) {
      return;
    }
    if (Xhtml.classes(element).contains("page-of")) {
      words(element.getAttribute("title"));
    } else {
      inside(element);
    }
    close(name);
  }

  private void inside(Element element) {
    for (Node node = element.getFirstChild(); node != null; node = node.getNextSibling()) {
      if (node instanceof Element child) {
        write(child);
      } else if (node.getNodeType() == Node.TEXT_NODE
          || node.getNodeType() == Node.CDATA_SECTION_NODE) {
        words(node.getNodeValue());
      }
    }
  }

  private Map<String, String> attributes(Element element) {
    var attributes = new LinkedHashMap<String, String>();
    var given = element.getAttributes();
    for (int i = 0; i < given.getLength(); i++) {
      var name = given.item(i).getNodeName();
      if (!name.startsWith("on") && !name.startsWith("xmlns")) {
        attributes.put(name, given.item(i).getNodeValue());
      }
    }
    told(element, attributes);
    return attributes;
  }

  private void told(Element element, Map<String, String> attributes) {
    switch (element.getTagName()) {
      case "svg" -> {
        attributes.put("role", "img");
        attributes.put("aria-label", element.getAttribute("alt"));
        attributes.remove("alt");
      }
      case "img" -> attributes.computeIfPresent("src", (key, source) -> inlined(source));
      // a style that lays rows out as blocks would take their meaning from them
      case "table" -> attributes.put("role", "table");
      case "thead", "tbody", "tfoot" -> attributes.put("role", "rowgroup");
      case "tr" -> attributes.put("role", "row");
      case "td" -> attributes.put("role", "cell");
      case "th" -> attributes.put("role", role(element.getAttribute("scope")));
      default -> {}
    }
  }

  private static String role(String scope) {
    return List.of("row", "rowgroup").contains(scope) ? "rowheader" : "columnheader";
  }

  private String inlined(String source) {
    var picture = source.startsWith(PICTURE) ? pictures.get(source.substring(6)) : null;
    if (picture == null) {
      throw new IllegalStateException("the printed pages show no picture " + source);
    }
    // the only two formats that photographs are printed in; PNG begins with a byte above 127
    var type = picture[0] == (byte) 0x89 ? "image/png" : "image/jpeg";
    return "data:" + type + ";base64," + Base64.getEncoder().encodeToString(picture);
  }
}

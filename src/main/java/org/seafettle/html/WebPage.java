package org.seafettle.html;

import java.util.List;
import java.util.Map;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/**
 * The printed pages as one page for a browser: the same words in the same order, its pictures and
 * its style inside, and nothing that a browser would have to fetch or run. The same input gives the
 * same text. Safe for many threads.
 */
public final class WebPage {

  private static final String MAY_LOAD =
      "default-src 'none'; style-src 'unsafe-inline'; img-src data:; base-uri 'none';"
          + " form-action 'none'";

  private final String style;

  public WebPage(Templates templates) {
    this.style = templates.text("screen.css");
  }

  /**
   * @param xhtml the pages as they were printed
   * @param pictures by name, as the pages ask for them with {@code photo:name}
   */
  public String of(String xhtml, Map<String, byte[]> pictures) {
    var document = Xhtml.parse(xhtml);
    var page = new Markup(pictures);
    page.line("<!DOCTYPE html>");
    page.open("html", Map.of("lang", document.getDocumentElement().getAttribute("lang")));
    head(document, page);
    page.open("body", Map.of());
    body(document, page);
    page.close("body");
    page.close("html");
    return page.text();
  }

  private void head(Document document, Markup page) {
    page.line("\n<head>\n<meta charset=\"utf-8\">");
    page.open("meta", "http-equiv", "Content-Security-Policy", "content", MAY_LOAD);
    page.open("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
    page.open("meta", "name", "color-scheme", "content", "light");
    page.open("meta", "name", "referrer", "content", "no-referrer");
    // a telephone would make links of serial numbers
    page.open("meta", "name", "format-detection", "content", "telephone=no");
    Xhtml.all(document, "title").forEach(page::write);
    Xhtml.all(document, "meta").stream().filter(m -> m.hasAttribute("name")).forEach(page::write);
    page.line("\n<style>");
    page.line(style.strip());
    accent(document).forEach(page::line);
    page.line("</style>\n</head>");
  }

  /** The colour of the house, which a page announces as its theme. */
  private static List<String> accent(Document document) {
    return Xhtml.all(document, "meta").stream()
        .filter(meta -> meta.getAttribute("name").equals("theme-color"))
        .map(meta -> meta.getAttribute("content"))
        .filter(colour -> colour.matches("#[0-9A-Fa-f]{6}"))
        .map(colour -> ":root { --accent: " + colour + "; }")
        .toList();
  }

  /** What stands around every printed page stands once around this one. */
  private static void body(Document document, Markup page) {
    var parts = Xhtml.children(Xhtml.all(document, "body").get(0));
    page.open("header", "class", "page-head");
    parts.stream().filter(part -> Xhtml.hasClassLike(part, "head-.*")).forEach(page::write);
    page.close("header");
    contents(document, page);
    page.line("\n<main>");
    parts.stream().filter(part -> !isAround(part)).forEach(page::write);
    page.line("</main>");
    page.open("footer", "class", "page-foot");
    parts.stream()
        .filter(part -> Xhtml.hasClassLike(part, "foot-.*") && !Xhtml.holds(part, "this-page"))
        .forEach(page::write);
    page.close("footer");
  }

  private static boolean isAround(Element part) {
    return Xhtml.hasClassLike(part, "(head|foot)-.*");
  }

  /** The bookmarks of the document, without those below others. */
  private static void contents(Document document, Markup page) {
    var marks =
        Xhtml.all(document, "bookmarks").stream().flatMap(b -> Xhtml.children(b).stream()).toList();
    if (!marks.isEmpty()) {
      page.open("nav", "class", "contents", "aria-label", marks.get(0).getAttribute("name"));
      page.line("<ul>");
      for (var mark : marks) {
        page.open("li", Map.of());
        page.open("a", "href", mark.getAttribute("href"));
        page.words(mark.getAttribute("name"));
        page.close("a");
        page.line("</li>");
      }
      page.line("</ul>");
      page.close("nav");
    }
  }
}

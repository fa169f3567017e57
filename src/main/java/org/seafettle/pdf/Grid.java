package org.seafettle.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Counts the columns of a table. Accessible tables have the same number in every row, cells that
 * span several counted as often.
 */
final class Grid {

  private static final Set<String> GROUPS = Set.of("thead", "tbody", "tfoot");

  /** Of the row reached so far and those below: how many columns cells from above fill. */
  private final List<Integer> filled = new ArrayList<>();

  private final List<Integer> widths = new ArrayList<>();

  private Grid() {}

  /** The number of columns of each row, in the order of the document. */
  static List<Integer> widths(Element table) {
    var grid = new Grid();
    for (var part : children(table)) {
      if (part.getTagName().equals("tr")) {
        grid.add(part);
      } else if (GROUPS.contains(part.getTagName())) {
        children(part).forEach(grid::add);
      }
    }
    return grid.widths;
  }

  private void add(Element row) {
    int width = filled.isEmpty() ? 0 : filled.remove(0);
    for (var cell : children(row)) {
      int columns = span(cell, "colspan");
      width += columns;
      for (int below = 0; below < span(cell, "rowspan") - 1; below++) {
        if (filled.size() == below) {
          filled.add(0);
        }
        filled.set(below, filled.get(below) + columns);
      }
    }
    widths.add(width);
  }

  private static int span(Element cell, String attribute) {
    var span = cell.getAttribute(attribute);
    return span.isEmpty() ? 1 : Integer.parseInt(span);
  }

  private static List<Element> children(Element parent) {
    var children = new ArrayList<Element>();
    for (Node node = parent.getFirstChild(); node != null; node = node.getNextSibling()) {
      if (node instanceof Element element) {
        children.add(element);
      }
    }
    return children;
  }
}

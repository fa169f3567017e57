package org.seafettle.html;

import java.util.ArrayList;
import java.util.List;
import org.w3c.dom.Element;

/** The heads of a table's columns, so that each cell can carry its own where columns do not fit. */
record ColumnHeads(Element table, List<String> heads) {

  static ColumnHeads of(Element table) {
    var rows =
        Xhtml.children(table).stream()
            .filter(part -> part.getTagName().equals("thead"))
            .flatMap(head -> Xhtml.children(head).stream())
            .toList();
    if (rows.size() != 1) {
      return new ColumnHeads(table, List.of());
    }
    var heads = new ArrayList<String>();
    for (var cell : Xhtml.children(rows.get(0))) {
      heads.add(cell.getElementsByTagName("svg").getLength() > 0 ? "" : words(cell));
      for (int i = 1; i < columns(cell); i++) {
        heads.add("");
      }
    }
    return new ColumnHeads(table, heads);
  }

  private static String words(Element cell) {
    return cell.getTextContent().strip();
  }

  boolean isThere() {
    return !heads.isEmpty();
  }

  /** Gives every cell that says something the head of its column. */
  void label() {
    for (var part : Xhtml.children(table)) {
      if (!part.getTagName().equals("thead")) {
        Xhtml.children(part).forEach(this::labelRow);
      }
    }
  }

  private void labelRow(Element row) {
    int column = 0;
    for (var cell : Xhtml.children(row)) {
      boolean fits = columns(cell) == 1 && column < heads.size();
      if (fits && cell.getTagName().equals("td") && !heads.get(column).isEmpty()) {
        cell.setAttribute("data-label", heads.get(column));
      }
      column += columns(cell);
    }
  }

  private static int columns(Element cell) {
    var span = cell.getAttribute("colspan");
    return span.matches("[1-9][0-9]?") ? Integer.parseInt(span) : 1;
  }
}

package org.seafettle.formula;

/**
 * A published table of two columns, read by straight lines between its rows and never beyond them.
 *
 * @param what the first column's quantity with its article, for the refusal
 * @param unit the first column's unit
 * @param cells pairs of first and second column, the first rising
 */
public record Rows(String what, String unit, double... cells) {

  public Rows {
    cells = cells.clone();
    for (int i = 2; i < cells.length; i += 2) {
      if (cells[i] <= cells[i - 2]) {
        throw new IllegalArgumentException("the first column must rise");
      }
    }
  }

  @Override
  public double[] cells() {
    return cells.clone();
  }

  /**
   * The second column at a value of the first.
   *
   * @throws org.seafettle.problem.Refused before the first row and after the last
   */
  public double at(double x) {
    Validity.within(what, x, cells[0], cells[cells.length - 2], unit);
    int i = 2;
    while (x > cells[i]) {
      i += 2;
    }
    return between(x, cells[i - 2], cells[i - 1], cells[i], cells[i + 1]);
  }

  /** Exact on the rows themselves. */
  private static double between(double x, double x1, double y1, double x2, double y2) {
    if (x == x1 || x == x2) {
      return x == x1 ? y1 : y2;
    }
    return y1 + (y2 - y1) * (x - x1) / (x2 - x1);
  }

  /** At least the first row's and at most the last row's second column. */
  public double atOrNearestEnd(double x) {
    return at(Math.min(Math.max(x, cells[0]), cells[cells.length - 2]));
  }
}

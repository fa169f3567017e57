package org.seafettle.catalogue;

import java.util.List;
import java.util.stream.IntStream;

/**
 * A number line cut into outcomes, without gap or overlap by construction: {@code names} has one
 * entry more than {@code edges}. A value that lies on an edge belongs to whichever side the caller
 * ranks milder, since a published limit is itself still allowed.
 *
 * @param names of the outcomes, from the lowest values to the highest
 * @param edges between them, strictly rising
 */
public record Steps(List<String> names, List<Double> edges) {

  public Steps {
    names = List.copyOf(names);
    edges = List.copyOf(edges);
    if (names.size() != edges.size() + 1) {
      throw new IllegalArgumentException(names + " do not fit between " + edges);
    }
    for (int i = 1; i < edges.size(); i++) {
      if (!(edges.get(i - 1) < edges.get(i))) {
        throw new IllegalArgumentException("edges do not rise: " + edges);
      }
    }
  }

  /** Binary fractions: what is meant to lie on an edge may be computed a hair beside it. */
  private static final double HAIR = 1e-9;

  /** The index in {@code names} below the first edge that is not less than the value. */
  public int below(double value) {
    return (int) edges.stream().filter(edge -> edge < value && !on(edge, value)).count();
  }

  /** Whether the value lies exactly on the edge above the step. */
  public boolean onEdge(double value, int step) {
    return step < edges.size() && on(edges.get(step), value);
  }

  private static boolean on(double edge, double value) {
    return Math.abs(value - edge) <= HAIR * Math.max(1, Math.abs(edge));
  }

  /** The index in {@code edges} of the edge nearest to the value, the lower of two equally near. */
  public int nearestEdge(double value) {
    return IntStream.range(0, edges.size())
        .boxed()
        .min(java.util.Comparator.comparingDouble(i -> Math.abs(edges.get(i) - value)))
        .orElseThrow(() -> new IllegalStateException("a scale without an edge"));
  }
}

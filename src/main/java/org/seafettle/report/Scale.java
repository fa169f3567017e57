package org.seafettle.report;

import java.util.List;
import java.util.Optional;

/**
 * A drawn scale. Places are in the drawing's own units, 0 at the left edge, {@link #WIDTH} at the
 * right.
 *
 * @param bands the stretches, from left to right
 * @param ticks the limits that are named
 * @param mark where the index or reading lies
 * @param ring where the index would lie at worst, if elsewhere
 * @param bar how far the reading is uncertain
 * @param says the same in words
 */
public record Scale(
    List<Band> bands,
    List<Tick> ticks,
    String mark,
    Optional<String> ring,
    Optional<Bar> bar,
    String says) {

  /** Of every scale's drawing. */
  static final double WIDTH = 300;

  static final double MARGIN = 8;

  public Scale {
    bands = List.copyOf(bands);
    ticks = List.copyOf(ticks);
  }

  /** How a stretch is tinted. */
  public enum Tint {
    GRAVE,
    MIDDLE,
    SOUND
  }

  /**
   * A stretch.
   *
   * @param x its left end
   * @param middle half way
   * @param width its length
   * @param tint one of {@link Tint}, in lower case
   * @param label what lying there means; empty where there is no room
   */
  public record Band(String x, String middle, String width, String tint, String label) {}

  /**
   * A limit.
   *
   * @param x where
   * @param middle of its label, which stays within the drawing
   * @param label its value; empty where there is no room
   */
  public record Tick(String x, String middle, String label) {}

  /**
   * The stretch within which the true value lies.
   *
   * @param from left end
   * @param to right end
   */
  public record Bar(String from, String to) {}
}

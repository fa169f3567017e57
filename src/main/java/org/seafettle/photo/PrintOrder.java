package org.seafettle.photo;

import java.util.List;

/**
 * How a picture is to be printed.
 *
 * @param longestEdge the most pixels along the longer edge, at least 1; smaller pictures are not
 *     enlarged
 * @param marks drawn in this order
 * @param keepMetadata whether the camera's notes (time, place, camera) go into the print; false
 *     unless the owner of the picture asked for it
 */
public record PrintOrder(int longestEdge, List<Mark> marks, boolean keepMetadata) {

  public PrintOrder {
    if (longestEdge < 1) {
      throw new IllegalArgumentException("an edge of " + longestEdge + " pixels");
    }
    marks = List.copyOf(marks);
  }

  /** Without marks and without metadata. */
  public static PrintOrder upTo(int longestEdge) {
    return new PrintOrder(longestEdge, List.of(), false);
  }

  public PrintOrder with(Mark... more) {
    return new PrintOrder(longestEdge, List.of(more), keepMetadata);
  }

  public PrintOrder keepingMetadata() {
    return new PrintOrder(longestEdge, marks, true);
  }
}
